namespace PartsMatch.Service.Access;

/// <summary>Who makes a request, as far as it matters here.</summary>
/// <param name="KeyLabel">The label of the key that was shown; null when none was.</param>
public sealed record Caller(string? KeyLabel)
{
    public static Caller Of(HttpContext context) => context.Features.Get<Caller>() ?? new Caller(KeyLabel: null);
}

/// <summary>On an endpoint that tells nothing worth a key: is the service up?</summary>
internal sealed class OpenToAll;

/// <summary>How an endpoint words a refusal, where it is not problem details.</summary>
internal sealed record RefusalWriter(Func<HttpContext, int, string, string, Task> WriteAsync);
