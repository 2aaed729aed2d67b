using Microsoft.AspNetCore.WebUtilities;

namespace PartsMatch.Service.Access;

/// <summary>Where one signs in.</summary>
internal static class SignInLink
{
    public const string Path = "/sign-in";
    public const string OncePath = "/sign-in/once";
    public const string OutPath = "/sign-out";

    /// <summary>Where a form goes whose page is left for signing in: it comes along.</summary>
    public const string FirstPath = "/sign-in/first";

    /// <summary>The input that holds where to go afterwards.</summary>
    public const string Back = "back";

    /// <summary>The input that holds where the form that came along is sent afterwards.</summary>
    public const string Onward = "onward";

    /// <summary>The input that holds a one-time code.</summary>
    public const string Code = "code";

    /// <summary>Signs in, and comes back to an address of this service. Where that is too long for a link, the browser's word on where one came from has to do.</summary>
    public static string For(string back) => QueryHelpers.AddQueryString(Path, Back, back) is { Length: <= Pages.Link.Longest } link ? link : Path;

    /// <summary>Signs in by a one-time code.</summary>
    public static string Once(string code) => QueryHelpers.AddQueryString(OncePath, Code, code);
}
