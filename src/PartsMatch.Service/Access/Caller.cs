namespace PartsMatch.Service.Access;

/// <summary>Who makes a request, as far as it matters here.</summary>
/// <param name="Bearer">The label of the key that came with the request itself, as programs send it; null when none did.</param>
/// <param name="SignedIn">The label of the key that was signed in with; null when none was. A browser sends its cookie by itself, also for another site's page: only a page that asks for its form's token writes by it.</param>
public sealed record Caller(string? Bearer, string? SignedIn)
{
    /// <summary>Whose key it is, however it came; null for nobody's.</summary>
    public string? KeyLabel => Bearer ?? SignedIn;

    public static Caller Of(HttpContext context) => context.Features.Get<Caller>() ?? new Caller(Bearer: null, SignedIn: null);
}

/// <summary>On an endpoint that tells nothing worth a key: is the service up?</summary>
internal sealed class OpenToAll;

/// <summary>On an endpoint that writes, or leads there: not even this machine gets in without a key.</summary>
internal sealed class NeedsKey;

/// <summary>On an endpoint that programs ask: what goes wrong there is never told as a page.</summary>
internal sealed class ForPrograms;

/// <summary>How an endpoint words a refusal, where it is not problem details.</summary>
internal sealed record RefusalWriter(Func<HttpContext, int, string, string, Task> WriteAsync);
