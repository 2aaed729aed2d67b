using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using Microsoft.Extensions.DependencyInjection;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Exchange;

/// <summary>GET /export/{kind}.csv and POST /import/{kind}, as programs see them.</summary>
public sealed class ExchangeEndpointTests : IAsyncLifetime
{
    private const string Table = "number,maker,title,status,power\nN-1,Quennor,a new one,current,1/2 hp\nN-2,Quennor,a bad one,current,1 banana\n";

    private TestService _service = null!;

    public async ValueTask InitializeAsync() => _service = await TestService.StartAsync();

    public ValueTask DisposeAsync() => _service.DisposeAsync();

    [Fact]
    public async Task An_export_is_a_file_of_its_tables_name_in_the_order_of_numbers()
    {
        var answer = await GetAsync("/export/motor.csv");
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.Headers["Content-Type"].ShouldBe("text/csv; charset=utf-8; header=present");
        answer.Headers["Content-Disposition"].ShouldBe("attachment; filename=motors.csv");
        answer.Body.Split('\n').Select(line => line.Split(',')[0]).ShouldBe(["number", "QN-100", "QN-200", "QN-300", "ZV-7", "ZV-8", "ZV-9", ""]);
        (await GetAsync("/export/motor.csv")).Body.ShouldBe(answer.Body);
        (await GetAsync("/export/stock.csv")).Body.ShouldBe("number,price,currency,onHand\nQN-100,84.50,USD,3\nQN-300,91,USD,0\n");
        (await GetAsync("/export/supersessions.csv")).Body.ShouldBe("number,supersededBy,saidBy,on\nZV-7,QN-100,maker,2021-04-30\n");
    }

    [Fact]
    public async Task A_preview_needs_no_key_where_reading_needs_none_and_tells_counts_and_bad_rows()
    {
        var answer = await PostAsync("/import/motor", Table);
        answer.Status.ShouldBe(HttpStatusCode.OK);
        answer.MediaType.ShouldBe("application/json");
        (answer.Text("isTaken"), answer.Text("rows"), answer.Text("new"), answer.Text("bad")).ShouldBe(("False", "2", "1", "1"));
        (answer.Text("told.1.row"), answer.Text("told.1.state"), answer.Text("told.1.wrong.0.column"), answer.Text("told.1.wrong.0.code")).ShouldBe(("3", "bad", "power", Codes.Unreadable));
        (await _service.AskAsync("{part(number:\"N-1\"){number}}")).Text("data.part").ShouldBeEmpty();
    }

    [Fact]
    public async Task Taking_writes_under_the_keys_label_and_the_part_is_offered_at_once()
    {
        var answer = await PostAsync("/import/motor?take=true", Table, key: _service.Key);
        (answer.Text("isTaken"), answer.Text("new"), answer.Text("bad")).ShouldBe(("True", "1", "1"));
        (await _service.AskAsync("{part(number:\"N-1\"){version}}")).Text("data.part.version").ShouldBe("1");
        (await PostAsync("/import/motor?take=true", Table, key: _service.Key)).Text("same").ShouldBe("1");
    }

    [Theory]
    [InlineData("/import/motor?take=true", null, HttpStatusCode.Unauthorized, Codes.KeyNeeded)]
    [InlineData("/import/motor?take=true", "partsmatch_wrong", HttpStatusCode.Unauthorized, Codes.KeyWrong)]
    [InlineData("/import/motor?take=yes", null, HttpStatusCode.BadRequest, Codes.RequestMalformed)]
    [InlineData("/import/motor?seen=-1", null, HttpStatusCode.BadRequest, Codes.RequestMalformed)]
    [InlineData("/import/banana", null, HttpStatusCode.NotFound, Codes.NoSuchPage)]
    public async Task What_cannot_be_answered_is_problem_details(string address, string? key, HttpStatusCode status, string code)
    {
        var answer = await PostAsync(address, Table, key);
        (answer.Status, answer.MediaType, answer.Text("code")).ShouldBe((status, "application/problem+json", code));
        if (status == HttpStatusCode.Unauthorized) answer.Headers["WWW-Authenticate"].ShouldBe("Bearer");
    }

    [Fact]
    public async Task A_cookie_alone_never_takes()
    {
        var request = Request("/import/motor?take=true", Table);
        request.Headers.Add("Cookie", $"key={_service.Key}; session={_service.Key}");
        (await _service.SendAsync(request)).Text("code").ShouldBe(Codes.KeyNeeded);
    }

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/csv; charset=iso-8859-1")]
    public async Task Another_media_type_is_refused(string type)
    {
        var request = Request("/import/motor", Table);
        request.Content!.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
        var answer = await _service.SendAsync(request);
        (answer.Status, answer.Text("code")).ShouldBe((HttpStatusCode.UnsupportedMediaType, Codes.MediaTypeUnsupported));
    }

    [Fact]
    public async Task A_file_that_is_no_table_is_refused_with_all_that_is_wrong_and_its_columns()
    {
        var answer = await PostAsync("/import/motor", "maker,pwoer\n");
        (answer.Status, answer.MediaType).ShouldBe((HttpStatusCode.UnprocessableEntity, "application/problem+json"));
        answer.All("errors", "column").ShouldBe(["pwoer", "number"]);
        answer.All("errors", "code").ShouldBe([Codes.UnknownField, Codes.ColumnMissing]);
    }

    [Fact]
    public async Task A_file_beyond_the_limit_is_refused_before_it_is_read()
    {
        await using var narrow = await TestService.StartAsync("--Exchange:Bytes=50");
        var answer = await narrow.SendAsync(Request("/import/motor", Table));
        (answer.Status, answer.Text("code")).ShouldBe((HttpStatusCode.RequestEntityTooLarge, Codes.RequestTooLarge));
    }

    [Fact]
    public async Task In_lines_it_tells_how_far_it_has_come_and_the_report_last()
    {
        var request = Request("/import/motor?take=true", Table, _service.Key);
        request.Headers.Accept.ParseAdd(ExchangeJson.Lines);
        var answer = await _service.SendAsync(request);
        answer.MediaType.ShouldBe(ExchangeJson.Lines);
        var lines = answer.Body.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement).ToList();
        lines.Count.ShouldBeGreaterThan(1);
        lines[..^1].ShouldAllBe(line => line.GetProperty("rows").GetInt32() == 2 && line.GetProperty("read").GetInt32() <= 2);
        lines[^1].GetProperty("new").GetInt32().ShouldBe(1);
    }

    [Fact]
    public async Task Asked_for_it_tells_every_refused_row_by_itself_however_few_the_report_lists()
    {
        await using var narrow = await TestService.StartAsync("--Exchange:RowsTold=1");
        var request = Request("/import/motor?refused=true", "number,maker,title,status\n" + string.Concat(Enumerable.Range(1, 4_200).Select(at => FormattableString.Invariant($"N-{at},Quennor,t,sold\n"))));
        request.Headers.Accept.ParseAdd(ExchangeJson.Lines);
        var lines = (await narrow.SendAsync(request)).Body.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonDocument.Parse(line).RootElement).ToList();
        var refused = lines.Where(line => line.TryGetProperty("state", out _)).ToList();
        refused.Select(line => line.GetProperty("row").GetInt32()).ShouldBe(Enumerable.Range(2, 4_200));
        refused.ShouldAllBe(line => line.GetProperty("wrong")[0].GetProperty("column").GetString() == "status");
        (lines[^1].GetProperty("bad").GetInt32(), lines[^1].GetProperty("told").GetArrayLength()).ShouldBe((4_200, 1));
    }

    [Fact]
    public async Task More_files_than_are_read_at_once_are_refused_and_every_answer_leaves_its_place()
    {
        await using var narrow = await TestService.StartAsync("--Exchange:AtOnce=1");
        // Taken here, as another request would: two requests at once meet or miss each other by chance.
        using (narrow.Services.GetRequiredService<ImportPlaces>().Take().ShouldNotBeNull())
        {
            var refused = await narrow.SendAsync(Request("/import/motor", Table));
            (refused.Status, refused.Text("code"), refused.Headers["Retry-After"]).ShouldBe((HttpStatusCode.ServiceUnavailable, Codes.TooSlow, "30"));
            refused.Text("detail").ShouldBe("As many files are being read at the moment as are read at once (1). Nothing was done: send it again in half a minute.");
        }

        foreach (var (table, status) in new[] { (Table, HttpStatusCode.OK), ("no,table\n", HttpStatusCode.UnprocessableEntity), (Table, HttpStatusCode.OK) })
            (await narrow.SendAsync(Request("/import/motor", table))).Status.ShouldBe(status);
    }

    [Fact]
    public async Task A_table_that_is_not_there_is_told_with_those_that_are()
    {
        var answer = await GetAsync("/export/motors.csv");
        (answer.Status, answer.Text("code")).ShouldBe((HttpStatusCode.NotFound, Codes.NoSuchPage));
        answer.Text("detail").ShouldStartWith("There is no table “motors”. The tables are: motor, ");
    }

    [Fact]
    public async Task From_another_machine_both_need_a_key()
    {
        var preview = Request("/import/motor", Table);
        preview.Headers.Add(TestService.FromHeader, "192.0.2.7");
        (await _service.SendAsync(preview)).Text("code").ShouldBe(Codes.KeyNeeded);
        (await _service.SendAsync(new(HttpMethod.Get, "/export/motor.csv") { Headers = { { TestService.FromHeader, "192.0.2.7" } } })).Status.ShouldBe(HttpStatusCode.Unauthorized);
    }

    private Task<Answered> GetAsync(string address) => _service.SendAsync(new(HttpMethod.Get, address));

    private Task<Answered> PostAsync(string address, string table, string? key = null) => _service.SendAsync(Request(address, table, key));

    private static HttpRequestMessage Request(string address, string table, string? key = null)
    {
        var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = new StringContent(table, Encoding.UTF8, "text/csv") };
        if (key is not null) request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", key);
        return request;
    }
}
