namespace PartsMatch.Service.Pages;

/// <summary>Sends a browser on after a form, by GET (303): going back or reloading never sends the form again.</summary>
internal sealed class SeeOther(string address) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.StatusCode = StatusCodes.Status303SeeOther;
        httpContext.Response.Headers.Location = address;
        return Task.CompletedTask;
    }
}
