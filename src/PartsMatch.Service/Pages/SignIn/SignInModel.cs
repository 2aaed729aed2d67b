using PartsMatch.Fit.Judging;
using PartsMatch.Service.Access;

namespace PartsMatch.Service.Pages.SignIn;

/// <summary>Signing in with a key, and what kept it from going on.</summary>
/// <param name="Carried">Where to go afterwards, and the form that came along: it is sent on once the key is right.</param>
/// <param name="Wrong">What was wrong; null before anything was sent. The key itself is never shown again.</param>
public sealed record SignInModel(IReadOnlyList<NamedText> Carried, string? Wrong = null)
{
    public const string Key = "key";

    /// <summary>Why a key is asked for, where something was to be done; null where someone came to sign in.</summary>
    public string? Why { get; init; }

    public IReadOnlyList<string> Complaints => Wrong is null ? [] : [Wrong];

    /// <summary>What was typed elsewhere, and is kept meanwhile.</summary>
    public bool HasForm => Carried.Any(text => text.Name == SignInLink.Onward);

    /// <summary>Someone who comes back by GET.</summary>
    public static SignInModel To(string back) => new([new(SignInLink.Back, back)]);

    /// <summary>Someone with a form in hand.</summary>
    /// <param name="form">What is typed in it. Its token is not carried: one is made for each who signs in.</param>
    /// <param name="onward">Where it belongs.</param>
    public static SignInModel With(Typed form, string onward) => new([new(SignInLink.Onward, onward), .. form.Except(AccessSetup.FormToken, Key, SignInLink.Back, SignInLink.Onward)]);

    /// <summary>How long that is, rounded up: who waits so long need not wait again.</summary>
    public static string Words(TimeSpan wait) => wait > TimeSpan.FromMinutes(1)
        ? FormattableString.Invariant($"{Math.Ceiling(wait.TotalMinutes)} minutes")
        : FormattableString.Invariant($"{Math.Ceiling(wait.TotalSeconds)} seconds");
}

/// <summary>Signing in by a link that works once.</summary>
/// <param name="Code">What stands in the link; it is spent only by the button.</param>
public sealed record OnceModel(string Code);
