using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Net.Http.Headers;

namespace PartsMatch.Service.Tests.Support;

/// <summary>Someone at a browser: accepts pages, keeps cookies, and sends forms with what stands hidden in them.</summary>
internal sealed partial class Visitor(TestService service)
{
    private readonly Dictionary<string, string> _cookies = new(StringComparer.Ordinal);
    private (string Name, string Text)[] _sent = [];

    /// <summary>Where the requests come from; null for this machine.</summary>
    public string? From { get; init; }

    /// <summary>Headers that a proxy adds.</summary>
    public IReadOnlyDictionary<string, string> Headers { get; init; } = new Dictionary<string, string>();

    /// <summary>The page that was shown last.</summary>
    public Answered Page { get; private set; } = null!;

    /// <summary>What was said of cookies in the last answer.</summary>
    public IReadOnlyList<SetCookieHeaderValue> SetCookies { get; private set; } = [];

    public IReadOnlyDictionary<string, string> Cookies => _cookies;

    public void Carry(string cookie, string value) => _cookies[cookie] = value;

    /// <summary>Signs in with the service's key.</summary>
    public static async Task<Visitor> SignedInAsync(TestService service)
    {
        var visitor = new Visitor(service);
        await visitor.GetAsync("/sign-in");
        (await visitor.SendAsync("/sign-in", ("key", service.Key))).Status.ShouldBe(HttpStatusCode.SeeOther);
        return visitor;
    }

    public Task<Answered> GetAsync(string address) => AskAsync(new(HttpMethod.Get, address));

    /// <summary>Follows a redirect that came last as browsers do: by GET, or with the same form once more where it says so (307).</summary>
    public Task<Answered> FollowAsync() => Page.Status == HttpStatusCode.TemporaryRedirect ? PostAsync(Page.Headers["Location"], _sent) : GetAsync(Page.Headers["Location"]);

    /// <summary>Sends the shown page's form to an address: its token, and what else is typed.</summary>
    public Task<Answered> SendAsync(string address, params (string Name, string Text)[] typed) => PostAsync(address, [("token", Hidden("token")), .. typed]);

    /// <summary>Sends the shown page's form as it stands, with what is typed anew in place of what stood there.</summary>
    public Task<Answered> ResendAsync(string address, params (string Name, string Text)[] typed)
    {
        var form = Page.Body[Page.Body.IndexOf($"action=\"{address}\"", StringComparison.Ordinal)..];
        var stands = Inputs().Matches(form[..form.IndexOf("</form>", StringComparison.Ordinal)]).Select(input => (WebUtility.HtmlDecode(input.Groups["name"].Value), WebUtility.HtmlDecode(input.Groups["value"].Value)))
            .Concat(Chosen().Matches(form[..form.IndexOf("</form>", StringComparison.Ordinal)]).Select(select => (select.Groups["name"].Value, WebUtility.HtmlDecode(select.Groups["value"].Value))));
        return PostAsync(address, [.. stands.Where(one => !typed.Any(other => other.Name == one.Item1)), .. typed]);
    }

    public Task<Answered> PostAsync(string address, params (string Name, string Text)[] form)
    {
        _sent = form;
        return AskAsync(new(HttpMethod.Post, address) { Content = new FormUrlEncodedContent(form.Select(one => KeyValuePair.Create(one.Name, one.Text))) });
    }

    /// <summary>Sends the shown page's form with a file.</summary>
    public Task<Answered> UploadAsync(string address, string file, string text, params (string Name, string Text)[] typed)
    {
        var form = new MultipartFormDataContent { { new StringContent(Hidden("token")), "token" }, { new StringContent(text), file, "table.csv" } };
        foreach (var (name, value) in typed) form.Add(new StringContent(value), name);
        return AskAsync(new(HttpMethod.Post, address) { Content = form });
    }

    /// <summary>The value of a hidden input of the shown page.</summary>
    public string Hidden(string name) => WebUtility.HtmlDecode(Regex.Match(Page.Body, $"type=\"hidden\" name=\"{name}\" value=\"(?<value>[^\"]*)\"", RegexOptions.None, TimeSpan.FromSeconds(1)).Groups["value"].Value);

    private async Task<Answered> AskAsync(HttpRequestMessage request)
    {
        request.Headers.TryAddWithoutValidation("Accept", "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8");
        if (From is not null) request.Headers.Add(TestService.FromHeader, From);
        foreach (var (name, value) in Headers) request.Headers.TryAddWithoutValidation(name, value);
        if (_cookies.Count > 0) request.Headers.Add("Cookie", string.Join("; ", _cookies.Select(cookie => $"{cookie.Key}={cookie.Value}")));
        using var response = await service.Client.SendAsync(request, TestContext.Current.CancellationToken);
        SetCookies = response.Headers.TryGetValues("Set-Cookie", out var said) ? [.. SetCookieHeaderValue.ParseList([.. said])] : [];
        foreach (var cookie in SetCookies)
        {
            if (cookie.Value.Length == 0) _cookies.Remove(cookie.Name.ToString());
            else _cookies[cookie.Name.ToString()] = cookie.Value.ToString();
        }

        return Page = await Answered.OfAsync(response);
    }

    [GeneratedRegex("<input (?:id=\"[^\"]*\" )?(?:type=\"hidden\" )?name=\"(?<name>[^\"]*)\" value=\"(?<value>[^\"]*)\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Inputs();

    [GeneratedRegex("<select id=\"[^\"]*\" name=\"(?<name>[^\"]*)\"(?:(?!</select>).)*?<option value=\"(?<value>[^\"]*)\" selected", RegexOptions.ExplicitCapture | RegexOptions.Singleline, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Chosen();
}
