using Microsoft.AspNetCore.WebUtilities;

namespace PartsMatch.Service.Access;

/// <summary>Where one signs in.</summary>
internal static class SignInLink
{
    public const string Path = "/sign-in";
    public const string OncePath = "/sign-in/once";
    public const string OutPath = "/sign-out";

    /// <summary>The input that holds where to go afterwards.</summary>
    public const string Back = "back";

    /// <summary>The input that holds a one-time code.</summary>
    public const string Code = "code";

    /// <summary>Signs in, and comes back to an address of this service.</summary>
    public static string For(string back) => QueryHelpers.AddQueryString(Path, Back, back);

    /// <summary>Signs in by a one-time code.</summary>
    public static string Once(string code) => QueryHelpers.AddQueryString(OncePath, Code, code);
}
