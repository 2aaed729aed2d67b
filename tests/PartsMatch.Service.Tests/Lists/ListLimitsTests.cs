using System.Net;
using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Lists;

/// <summary>How much a list may hold, and how many are answered at once.</summary>
public sealed class ListLimitsTests
{
    [Fact]
    public void The_operations_page_lists_every_limit_with_its_default()
    {
        var listed = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "operations.md"))
            .Where(line => line.StartsWith("| `CrossReference:", StringComparison.Ordinal))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .ToDictionary(cells => cells[0].Trim('`'), cells => cells[1].Trim('`'));
        var defaults = new ListLimits();
        listed.ShouldBe(typeof(ListLimits).GetProperties().ToDictionary(property => $"CrossReference:{property.Name}", property => FormattableString.Invariant($"{property.GetValue(defaults):#,0}")), ignoreOrder: true);
    }

    [Theory]
    [InlineData("--CrossReference:Rows=2", "number\nA\nB\n", "number\nA\nB\nC\n")]
    [InlineData("--CrossReference:Bytes=11", "number\nA\nB\n", "number\nA\nBB\n")]
    public async Task What_is_just_inside_is_answered_and_what_is_just_outside_refused(string setting, string inside, string outside)
    {
        await using var narrow = await TestService.StartAsync(setting);
        (await narrow.SendAsync(inside)).Status.ShouldBe(HttpStatusCode.OK);
        var refused = await narrow.SendAsync(outside);
        (refused.Status, refused.Text("code")).ShouldBe((HttpStatusCode.RequestEntityTooLarge, Codes.RequestTooLarge));
    }

    [Fact]
    public async Task More_lists_than_are_answered_at_once_are_refused_and_every_answer_leaves_its_place()
    {
        await using var narrow = await TestService.StartAsync("--CrossReference:AtOnce=1");
        var slow = new SlowList();
        var first = narrow.SendAsync(new(HttpMethod.Post, "/cross-reference") { Content = slow });
        await slow.Begun.Task;
        var second = await narrow.SendAsync("number\n");
        (second.Status, second.Text("code"), second.Headers["Retry-After"]).ShouldBe((HttpStatusCode.ServiceUnavailable, Codes.TooSlow, "30"));
        slow.Rest.SetResult();
        (await first).Rows().ShouldHaveSingleItem().Of(1, "number").ShouldBe("QN-100");
        (await narrow.SendAsync("no,list\n")).Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        (await narrow.SendAsync("number\n")).Status.ShouldBe(HttpStatusCode.OK);
    }

    /// <summary>More rows than are answered before anyone can read their beginning, each another, so that none shares its work.</summary>
    [Fact]
    public async Task A_client_that_hangs_up_in_the_middle_leaves_its_place_and_nothing_in_the_log()
    {
        await using var narrow = await TestService.StartAsync("--CrossReference:AtOnce=1");
        var list = "number,site.volts\n" + string.Concat(Enumerable.Range(0, 20_000).Select(row => FormattableString.Invariant($"QN-100,{100 + (row / 100m)} V\n")));
        var request = new HttpRequestMessage(HttpMethod.Post, "/cross-reference") { Content = new StringContent(list, Encoding.UTF8, "text/csv") };
        using (var response = await narrow.Client.SendAsync(request, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken))
        {
            await using var answer = await response.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken);
            await answer.ReadExactlyAsync(new byte[1000], TestContext.Current.CancellationToken);
            (await narrow.SendAsync("number\n")).Status.ShouldBe(HttpStatusCode.ServiceUnavailable, "the list is still being answered");
        }

        while ((await narrow.SendAsync("number\n")).Status != HttpStatusCode.OK) await Task.Delay(20, TestContext.Current.CancellationToken);
        narrow.Log.Text.ShouldNotContain("Error ");
        narrow.Log.Text.ShouldNotContain("Warning ");
    }

    /// <summary>A list whose sender stops in the middle until told to go on.</summary>
    private sealed class SlowList : HttpContent
    {
        /// <summary>So much is not all taken in before somebody reads it: once it is written, its list has its place.</summary>
        private const int MoreThanWaits = 200_000;

        public SlowList() => Headers.ContentType = new("text/csv");

        public TaskCompletionSource Begun { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public TaskCompletionSource Rest { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        protected override async Task SerializeToStreamAsync(Stream stream, TransportContext? context)
        {
            await stream.WriteAsync(Encoding.UTF8.GetBytes($"number,{new string('x', MoreThanWaits)}\nQN-"));
            await stream.FlushAsync();
            Begun.SetResult();
            await Rest.Task;
            await stream.WriteAsync("100,\n"u8.ToArray());
        }

        protected override bool TryComputeLength(out long length)
        {
            length = 0;
            return false;
        }
    }
}
