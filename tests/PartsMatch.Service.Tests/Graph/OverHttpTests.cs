using System.Net;
using System.Net.Http.Headers;
using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>What the GraphQL over HTTP specification (https://graphql.github.io/graphql-over-http/draft/, published) asks of a server.</summary>
public sealed class OverHttpTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Newer = "application/graphql-response+json";
    private const string Plain = "application/json";
    private const string Typename = "{\"query\":\"{__typename}\"}";
    private readonly TestService _service = shared.Service;

    [Theory]
    [InlineData(null, Plain)]
    [InlineData("*/*", Plain)]
    [InlineData("application/*", Plain)]
    [InlineData(Plain, Plain)]
    [InlineData(Newer, Newer)]
    [InlineData($"{Newer}, {Plain}", Newer)]
    [InlineData($"{Plain}, {Newer}", Newer)]
    [InlineData($"{Plain}, {Newer};q=0.5", Plain)]
    [InlineData($"{Newer};q=0.9, {Plain};q=0.1", Newer)]
    [InlineData($"text/html, */*;q=0.1", Plain)]
    [InlineData($"{Newer}; charset=utf-8", Newer)]
    public async Task The_answer_comes_in_the_media_type_that_is_liked_best(string? accept, string expected)
    {
        var answer = await PostAsync(Typename, accept);
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.MediaType.ShouldBe(expected);
        answer.Headers["Content-Type"].ShouldEndWith("charset=utf-8");
        answer.Text("data.__typename").ShouldBe("Query");
    }

    [Fact]
    public async Task An_answer_says_how_long_it_is()
    {
        var answer = await PostAsync(Typename, Newer);
        answer.Headers["Content-Length"].ShouldBe("{\"data\":{\"__typename\":\"Query\"}}".Length.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("text/html")]
    [InlineData($"{Plain};q=0, {Newer};q=0")]
    [InlineData("not a media type")]
    public async Task Other_media_types_are_answered_by_406(string accept)
    {
        var answer = await PostAsync(Typename, accept);
        answer.Status.ShouldBe(HttpStatusCode.NotAcceptable);
        answer.MediaType.ShouldBe("application/problem+json");
        answer.Text("code").ShouldBe(Codes.NotAcceptable);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/x-www-form-urlencoded")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData(null)]
    public async Task A_body_that_is_not_JSON_in_UTF8_is_answered_by_415(string? contentType)
    {
        var answer = await PostAsync(Typename, Newer, contentType);
        answer.Status.ShouldBe(HttpStatusCode.UnsupportedMediaType);
        answer.Codes.ShouldBe([Codes.MediaTypeUnsupported]);
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("application/json; charset=utf-8")]
    [InlineData("application/json; charset=\"UTF-8\"")]
    public async Task JSON_in_UTF8_is_taken(string contentType) => (await PostAsync(Typename, Newer, contentType)).Status.ShouldBe(HttpStatusCode.OK);

    [Theory]
    [InlineData("NotJson")]
    [InlineData("")]
    [InlineData("[{\"query\":\"{__typename}\"}]")]
    [InlineData("\"{__typename}\"")]
    [InlineData("{}")]
    [InlineData("{\"qeury\":\"{__typename}\"}")]
    [InlineData("{\"query\":null}")]
    [InlineData("{\"query\":{}}")]
    [InlineData("{\"query\":0}")]
    [InlineData("{\"query\":\" \"}")]
    [InlineData("{\"query\":\"{__typename}\",\"operationName\":0}")]
    [InlineData("{\"query\":\"{__typename}\",\"variables\":0}")]
    [InlineData("{\"query\":\"{__typename}\",\"variables\":\"{}\"}")]
    [InlineData("{\"query\":\"{__typename}\",\"variables\":[]}")]
    [InlineData("{\"query\":\"{__typename}\",\"extensions\":0}")]
    [InlineData("{\"query\":\"{__typename}\",\"variables\":{\"a\":1,\"a\":2}}")]
    [InlineData("{\"query\":\"{__typename}\",\"variables\":{\"a\":[{\"b\":1,\"b\":1}]}}")]
    [InlineData("{\"query\":\"{__typename}\",\"query\":\"{__typename}\"}")]
    public async Task What_is_no_request_is_answered_by_400_under_either_media_type(string body)
    {
        foreach (var accept in (string[])[Newer, Plain])
        {
            var answer = await PostAsync(body, accept);
            answer.Status.ShouldBe(HttpStatusCode.BadRequest);
            answer.MediaType.ShouldBe(accept);
            answer.Codes.ShouldBe([Codes.RequestMalformed]);
            answer.Has("data").ShouldBeFalse();
        }
    }

    [Theory]
    [InlineData("{\"a\":1,\"a\":2}")]
    [InlineData("{\"\\ud800\":1}")]
    [InlineData("{\"a\":\"\\ud800\"}")]
    [InlineData("[]")]
    public async Task Variables_that_are_no_object_of_names_and_values_are_answered_by_400_in_an_address_and_in_a_body(string variables)
    {
        var asked = await _service.SendAsync(new(HttpMethod.Get, $"/graphql?query={{__typename}}&variables={Uri.EscapeDataString(variables)}"));
        foreach (var answer in (Answered[])[asked, await PostAsync($"{{\"query\":\"{{__typename}}\",\"variables\":{variables}}}", Newer)])
        {
            answer.Status.ShouldBe(HttpStatusCode.BadRequest);
            answer.Codes.ShouldBe([Codes.RequestMalformed]);
        }
    }

    [Theory]
    [InlineData("{\"query\":\"{__typename}\",\"operationName\":null,\"variables\":null,\"extensions\":null}")]
    [InlineData("{\"query\":\"{__typename}\",\"variables\":{}}")]
    [InlineData("{\"query\":\"{__typename}\",\"extensions\":{\"any\":true}}")]
    [InlineData("{\"query\":\"query A{__typename}\",\"operationName\":\"A\"}")]
    [InlineData("{\"query\":\"query A{__typename} query B{parts{pageInfo{hasNextPage}}}\",\"operationName\":\"A\"}")]
    [InlineData("{\"query\":\"{__typename}\",\"operationName\":\"\"}")]
    [InlineData("{\"query\":\"{__typename}\",\"nonsense\":1}")]
    public async Task Optional_members_may_be_null_or_left_out(string body) => (await PostAsync(body, Newer)).Text("data.__typename").ShouldBe("Query");

    [Theory]
    [InlineData("{", Codes.QueryUnreadable)]
    [InlineData("{ nothing }", Codes.QueryInvalid)]
    [InlineData("query A{__typename} query B{__typename}", Codes.QueryInvalid)]
    [InlineData("query($n: Int!){parts(first: $n){pageInfo{hasNextPage}}}", Codes.VariablesInvalid)]
    [InlineData("subscription{__typename}", Codes.QueryInvalid)]
    public async Task What_was_not_executed_is_400_under_the_newer_type_and_200_under_the_older(string query, string code)
    {
        var body = System.Text.Json.JsonSerializer.Serialize(new { query });
        var newer = await PostAsync(body, Newer);
        newer.Status.ShouldBe(HttpStatusCode.BadRequest);
        newer.Codes.ShouldContain(code);
        newer.Has("data").ShouldBeFalse();
        var plain = await PostAsync(body, Plain);
        plain.Status.ShouldBe(HttpStatusCode.OK);
        plain.Codes.ShouldContain(code);
        plain.Has("data").ShouldBeFalse();
    }

    [Fact]
    public async Task What_was_executed_and_failed_in_part_is_200()
    {
        var answer = await PostAsync("{\"query\":\"{part(number:\\\"QN-100\\\"){number} parts(first:0){pageInfo{hasNextPage}}}\"}", Newer);
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.Has("data").ShouldBeTrue();
        answer.Codes.ShouldBe([Codes.FirstOutOfRange]);
    }

    [Fact]
    public async Task GET_takes_the_query_its_variables_and_its_operation_from_the_address()
    {
        var answer = await GetAsync("query A($n: ID!){part(number:$n){number}} query B{__typename}", "{\"n\":\"qn100\"}", "A");
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.Text("data.part.number").ShouldBe("QN-100");
    }

    [Theory]
    [InlineData("{not json")]
    [InlineData("[]")]
    [InlineData("0")]
    public async Task GET_with_wrong_variables_is_400(string variables) => (await GetAsync("{__typename}", variables)).Status.ShouldBe(HttpStatusCode.BadRequest);

    [Fact]
    public async Task GET_without_a_query_is_400()
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/graphql");
        (await _service.SendAsync(request)).Status.ShouldBe(HttpStatusCode.BadRequest);
    }

    [Theory]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("PATCH")]
    [InlineData("HEAD")]
    [InlineData("OPTIONS")]
    public async Task Other_methods_are_answered_by_405_that_says_which_are_allowed(string method)
    {
        using var request = new HttpRequestMessage(new HttpMethod(method), "/graphql?query={__typename}");
        var answer = await _service.SendAsync(request);
        answer.Status.ShouldBe(HttpStatusCode.MethodNotAllowed);
        answer.Headers["Allow"].ShouldBe("GET, POST");
    }

    private Task<Answered> GetAsync(string query, string? variables = null, string? operationName = null)
    {
        var address = new StringBuilder("/graphql?query=").Append(Uri.EscapeDataString(query));
        if (variables is not null) address.Append("&variables=").Append(Uri.EscapeDataString(variables));
        if (operationName is not null) address.Append("&operationName=").Append(operationName);
        return _service.SendAsync(new(HttpMethod.Get, address.ToString()) { Headers = { { "Accept", Newer } } });
    }

    private Task<Answered> PostAsync(string body, string? accept, string? contentType = Plain)
    {
        var content = new ByteArrayContent(Encoding.UTF8.GetBytes(body));
        if (contentType is not null) content.Headers.ContentType = MediaTypeHeaderValue.Parse(contentType);
        var request = new HttpRequestMessage(HttpMethod.Post, "/graphql") { Content = content };
        if (accept is not null) request.Headers.TryAddWithoutValidation("Accept", accept);
        return _service.SendAsync(request);
    }
}
