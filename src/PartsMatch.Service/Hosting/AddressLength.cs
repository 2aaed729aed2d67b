namespace PartsMatch.Service.Hosting;

/// <summary>How long an address may be. One that is longer is answered by the service itself, in words; the server below it would only break off.</summary>
internal static class AddressLength
{
    /// <summary>Bytes of a request line that are read at all: what browsers send is shorter.</summary>
    public const int ReadAtMost = 64 * 1024;

    /// <summary>Characters: as many as web servers usually take (RFC 9110, 4.1).</summary>
    public const int Most = 8000;

    public static void UseAddressLength(this WebApplication app) => app.Use((context, next) =>
    {
        if (context.Request.Path.Value!.Length + context.Request.QueryString.Value!.Length <= Most) return next(context);
        context.Response.StatusCode = StatusCodes.Status414UriTooLong;
        return Task.CompletedTask;
    });
}
