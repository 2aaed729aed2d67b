namespace PartsMatch.Service.Pages;

/// <summary>Back to where one was.</summary>
internal static class Back
{
    /// <summary>Only ever to a page of this service: an address of another server is not followed, nor one that a browser might take for one.</summary>
    public static IResult To(string? address) => new SeeOther(address is not null && IsOurs(address) ? address : "/");

    /// <summary>The form that was sent is sent on to another page, by the browser (307 keeps method and content): nothing that was typed is lost on the way.</summary>
    public static IResult Onward(string address) => IsOurs(address) ? Results.Redirect(address, permanent: false, preserveMethod: true) : To("/");

    /// <summary>Browsers read a backslash as a slash, and leave out tabs and line ends: "/\t/host" leads to host (URL standard).</summary>
    private static bool IsOurs(string address) =>
        address.All(letter => letter is > ' ' and < '\x7f') && address.StartsWith('/') && (address.Length == 1 || address[1] is not ('/' or '\\'));
}
