using System.Net.Http.Json;
using System.Text;
using PartsMatch.Ranking;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Hosting;

/// <summary>Starting and stopping, on a real port.</summary>
public sealed class ServingTests : IDisposable
{
    private readonly TestFolder _data = new();
    private readonly TestFolder _seed = new();

    public ServingTests() => Seed.WriteTo(_seed);

    public void Dispose()
    {
        _data.Dispose();
        _seed.Dispose();
    }

    [Fact]
    public async Task The_first_start_tells_where_it_listens_and_the_key_and_later_starts_tell_no_key()
    {
        string key;
        await using (var first = await RunningService.StartAsync(Arguments()))
        {
            first.Output.ShouldContain(first.Address);
            first.Output.ShouldContain(_data.Path);
            key = first.Output.Split('\n').Single(line => line.Contains("key", StringComparison.Ordinal)).Split(' ')[^1].Trim();
            PartStore.WhoHolds(_data.Path)!.Address.ShouldBe(first.Address);
            using var client = Client(first, key);
            using var added = await client.PostAsJsonAsync("/graphql", new { query = "mutation{retirePart(number:\"QN-100\", version:1){__typename}}" }, TestContext.Current.CancellationToken);
            (await added.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).ShouldContain("PartWritten");
            first.Output.Split(key).Length.ShouldBe(2, "the key is told once");
        }

        foreach (var file in Directory.EnumerateFiles(_data.Path, "*", SearchOption.AllDirectories))
        {
            Encoding.Latin1.GetString(await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken)).ShouldNotContain(key, customMessage: $"only its hash is kept, and {file} holds it");
        }

        await using var second = await RunningService.StartAsync(Arguments());
        second.Output.ShouldNotContain("key");
        using var again = Client(second, key);
        using var read = await again.PostAsJsonAsync("/graphql", new { query = "{part(number:\"QN-100\"){status}}" }, TestContext.Current.CancellationToken);
        (await read.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).ShouldContain("RETIRED");
    }

    [Fact]
    public async Task The_first_start_tells_a_link_that_signs_in_once_and_later_starts_tell_none()
    {
        await using (var first = await RunningService.StartAsync(Arguments()))
        {
            var link = first.Output.Split('\n').Single(line => line.Contains("/sign-in/once?code=", StringComparison.Ordinal)).Split(' ')[^1].Trim();
            link.ShouldStartWith(first.Address);
            (await PressAsync(first, link)).ShouldContain("Sign out");
            (await PressAsync(first, link)).ShouldContain("This link was used already");
        }

        await using var second = await RunningService.StartAsync(Arguments());
        second.Output.ShouldNotContain("/sign-in");
    }

    [Fact]
    public async Task This_machine_reads_without_a_key_on_a_real_port()
    {
        await using var service = await RunningService.StartAsync(Arguments());
        using var client = Client(service, key: null);
        (await client.GetStringAsync("/graphql?query={__typename}", TestContext.Current.CancellationToken)).ShouldContain("Query");
        (await client.GetStringAsync("/health/ready", TestContext.Current.CancellationToken)).ShouldContain("ready");
    }

    /// <summary>By itself the server breaks off at 8 kB, without a word.</summary>
    [Theory]
    [InlineData(7_900, 200)]
    [InlineData(8_100, 414)]
    [InlineData(60_000, 414)]
    public async Task An_address_that_is_too_long_is_answered_with_what_to_do(int length, int status)
    {
        await using var service = await RunningService.StartAsync(Arguments());
        using var client = Client(service, key: null);
        client.DefaultRequestHeaders.Add("Accept", "text/html");
        using var answer = await client.GetAsync($"/parts?text={new string('x', length)}", TestContext.Current.CancellationToken);
        ((int)answer.StatusCode).ShouldBe(status);
        var body = await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        if (status == 414) body.ShouldContain("A link of this service has at most 2000 characters");
        body.ShouldContain("href=\"/compare\"");
    }

    [Fact]
    public async Task A_second_service_on_the_same_folder_says_who_has_it_and_stops()
    {
        await using var first = await RunningService.StartAsync(Arguments());
        var (code, told) = await RefusedAsync(Arguments());
        code.ShouldBe(ExitCode.StoreRefused);
        told.ShouldContain(first.Address);
        told.ShouldNotContain("   at ");
    }

    [Fact]
    public async Task An_address_that_is_taken_is_told()
    {
        await using var first = await RunningService.StartAsync(Arguments());
        using var other = new TestFolder();
        var (code, told) = await RefusedAsync([$"--data={other.Path}", $"--Data:SeedFolder={_seed.Path}", $"--urls={first.Address}"]);
        code.ShouldBe(ExitCode.AddressRefused);
        told.ShouldContain("--urls");
    }

    [Fact]
    public async Task A_file_that_is_no_store_is_refused_and_left_alone()
    {
        _data.Write("partsmatch.db", "not a store");
        var (code, _) = await RefusedAsync(Arguments());
        code.ShouldBe(ExitCode.StoreRefused);
        (await File.ReadAllTextAsync(Path.Combine(_data.Path, "partsmatch.db"), TestContext.Current.CancellationToken)).ShouldBe("not a store");
    }

    [Fact]
    public async Task Settings_that_contradict_each_other_are_told()
    {
        var (code, told) = await RefusedAsync([.. Arguments(), "--Access:OpenReads=true", "--Access:KeysForAllReads=true"]);
        code.ShouldBe(ExitCode.SettingsRefused);
        told.ShouldContain("Access:OpenReads");
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("")]
    [InlineData("no weights")]
    public async Task Weights_that_cannot_be_read_are_told_with_their_file(string text)
    {
        Directory.CreateDirectory(Path.Combine(_data.Path, "weights"));
        _data.Write("weights/motor.json", text);
        var (code, told) = await RefusedAsync(Arguments());
        code.ShouldBe(ExitCode.WeightsRefused);
        told.ShouldContain("motor.json");
        told.ShouldNotContain("   at ");
    }

    [Fact]
    public async Task The_first_start_writes_each_familys_weights_to_look_at_and_edit()
    {
        await using var service = await RunningService.StartAsync(Arguments());
        foreach (var family in Fit.Families.All)
        {
            var text = await File.ReadAllTextAsync(Path.Combine(_data.Path, "weights", $"{family.Kind}.json"), TestContext.Current.CancellationToken);
            WeightsFile.Read(text, family).Weights!.IsHandSet.ShouldBeTrue();
        }
    }

    private string[] Arguments() => [$"--data={_data.Path}", $"--Data:SeedFolder={_seed.Path}", "--urls=http://127.0.0.1:0"];

    private static HttpClient Client(RunningService service, string? key)
    {
        var client = new HttpClient { BaseAddress = new(service.Address) };
        if (key is not null) client.DefaultRequestHeaders.Authorization = new("Bearer", key);
        return client;
    }

    /// <summary>Opens a sign-in link in a browser of its own, and presses its button.</summary>
    private static async Task<string> PressAsync(RunningService service, string link)
    {
        using var client = Client(service, key: null);
        var page = await client.GetStringAsync(link, TestContext.Current.CancellationToken);
        var form = new Dictionary<string, string> { ["token"] = page.Split("name=\"token\" value=\"")[1].Split('"')[0], ["code"] = link.Split('=')[^1] };
        using var answer = await client.PostAsync("/sign-in/once", new FormUrlEncodedContent(form), TestContext.Current.CancellationToken);
        return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    private static async Task<(int Code, string Told)> RefusedAsync(string[] args)
    {
        var error = new StringWriter();
        var code = await Serving.RunAsync(args, TextWriter.Null, error, TestContext.Current.CancellationToken);
        return (code, error.ToString());
    }
}
