namespace PartsMatch.Service.Pages.SignIn;

/// <summary>Signing in with a key, and what kept it from going on.</summary>
/// <param name="Back">Where to go afterwards.</param>
/// <param name="Wrong">What was wrong; null before anything was sent. The key itself is never shown again.</param>
public sealed record SignInModel(string Back, string? Wrong = null)
{
    public const string Key = "key";

    public IReadOnlyList<string> Complaints => Wrong is null ? [] : [Wrong];

    /// <summary>How long that is, rounded up: who waits so long need not wait again.</summary>
    public static string Words(TimeSpan wait) => wait > TimeSpan.FromMinutes(1)
        ? FormattableString.Invariant($"{Math.Ceiling(wait.TotalMinutes)} minutes")
        : FormattableString.Invariant($"{Math.Ceiling(wait.TotalSeconds)} seconds");
}

/// <summary>Signing in by a link that works once.</summary>
/// <param name="Code">What stands in the link; it is spent only by the button.</param>
public sealed record OnceModel(string Code);
