using System.Diagnostics;
using System.Globalization;
using System.Text;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>Who stops a command or a service is told so in a sentence, and what was begun ends in order.</summary>
public sealed class StoppedTests : IDisposable
{
    /// <summary>Each row another plate that leaves something open: more than a minute's work.</summary>
    private static readonly string List = "text\n" + string.Concat(Enumerable.Range(0, 90_000).Select(row => string.Create(CultureInfo.InvariantCulture, $"HP 1/4 RPM {600 + (row % 3000)} A {1 + (row / 3000)}.{row % 10} V 230\n")));

    private readonly TestFolder _data = new();
    private readonly TestFolder _seed = new();

    public StoppedTests() => Seed.WriteTo(_seed);

    public void Dispose()
    {
        _data.Dispose();
        _seed.Dispose();
    }

    [Fact]
    public async Task A_list_with_a_service_of_its_own_that_is_stopped_says_so_and_keeps_the_rows_that_came()
    {
        var (list, into) = (_seed.Write("old.csv", List), Path.Combine(_seed.Path, "new.csv"));
        using var process = Child.Start(key: null, "cross-reference", list, "--resume", into, "--data", _data.Path);
        var errors = process.StandardError.ReadToEndAsync(Stop);
        while (!File.Exists(into) || new FileInfo(into).Length == 0) await Task.Delay(50, Stop);
        (await EndedAsync(process)).ShouldBe(ExitCode.Stopped);

        var said = await errors;
        said.ShouldContain("cross-reference was stopped before it was done.");
        said.ShouldNotContain("   at ");
        new FileInfo(into).Length.ShouldBeGreaterThan(0);
    }

    [Fact]
    public async Task A_service_that_is_stopped_while_it_answers_a_list_cuts_it_off_and_ends_in_order()
    {
        using var process = Child.Start(key: null, "--data", _data.Path, "--urls", "http://127.0.0.1:0", "--Data:SeedFolder=" + _seed.Path);
        var errors = process.StandardError.ReadToEndAsync(Stop);
        var line = await process.StandardOutput.ReadLineAsync(Stop);
        using var client = new HttpClient { BaseAddress = new(line!["PartsMatch listens at ".Length..].Split(';')[0]), Timeout = Timeout.InfiniteTimeSpan };
        using var request = new HttpRequestMessage(HttpMethod.Post, "cross-reference") { Content = new ByteArrayContent(Encoding.UTF8.GetBytes(List)) { Headers = { ContentType = new("text/csv", "utf-8") } } };
        using var answer = await client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, Stop);
        await using var rows = await answer.Content.ReadAsStreamAsync(Stop);
        (await rows.ReadAsync(new byte[100], Stop)).ShouldBeGreaterThan(0);

        var ended = EndedAsync(process);
        await Should.ThrowAsync<IOException>(() => rows.CopyToAsync(Stream.Null, Stop));
        (await ended).ShouldBe(ExitCode.Success);
        (await errors).ShouldNotContain("   at ");
        File.Exists(Path.Combine(_data.Path, "partsmatch.end")).ShouldBeTrue();
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    private static async Task<int> EndedAsync(Process process)
    {
        using (var kill = Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)])) await kill.WaitForExitAsync(Stop);
        await process.WaitForExitAsync(Stop);
        return process.ExitCode;
    }
}
