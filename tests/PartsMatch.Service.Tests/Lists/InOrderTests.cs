using FsCheck.Xunit;
using PartsMatch.Service.Counter.Lists;

namespace PartsMatch.Service.Tests.Lists;

/// <summary>A list is worked out on all cores, and still comes in its order, each entry once.</summary>
public sealed class InOrderTests
{
    [Property(MaxTest = 50)]
    public async Task Answers_come_in_the_order_of_the_list_and_equal_entries_are_worked_out_once(byte[] entries)
    {
        var worked = new System.Collections.Concurrent.ConcurrentBag<byte>();
        var come = await AllAsync(InOrder.AnswerAsync(
            entries,
            entry => FormattableString.Invariant($"{entry % 7}"),
            entry =>
            {
                if (entry % 3 == 0) Thread.Yield();
                worked.Add((byte)(entry % 7));
                return entry % 7;
            },
            TestContext.Current.CancellationToken));
        come.ShouldBe(entries.Select(entry => (entry, entry % 7)));
        worked.Order().ShouldBe(entries.Select(entry => (byte)(entry % 7)).Distinct().Order());
    }

    [Fact]
    public async Task A_row_comes_as_soon_as_it_is_known_while_those_behind_it_are_waited_for()
    {
        using var gate = new ManualResetEventSlim();
        await using var rows = InOrder.AnswerAsync([1, 2], entry => $"{entry}", entry =>
        {
            if (entry == 2) gate.Wait(TestContext.Current.CancellationToken);
            return entry;
        }, TestContext.Current.CancellationToken).GetAsyncEnumerator(TestContext.Current.CancellationToken);
        (await rows.MoveNextAsync()).ShouldBeTrue();
        rows.Current.Answer.ShouldBe(1);
        var next = rows.MoveNextAsync();
        next.IsCompleted.ShouldBeFalse();
        gate.Set();
        (await next).ShouldBeTrue();
        rows.Current.Answer.ShouldBe(2);
    }

    [Fact]
    public async Task A_long_list_is_never_far_ahead_of_what_was_taken_of_it()
    {
        var (begun, most) = (0, 0);
        var taken = 0;
        await foreach (var _ in InOrder.AnswerAsync(Enumerable.Range(0, 5_000), entry => $"{entry}", entry =>
        {
            Interlocked.Increment(ref begun);
            return entry;
        }, TestContext.Current.CancellationToken))
        {
            most = Math.Max(most, Volatile.Read(ref begun) - ++taken);
        }

        (begun, taken).ShouldBe((5_000, 5_000));
        most.ShouldBeLessThanOrEqualTo(16 * Environment.ProcessorCount);
    }

    [Fact]
    public async Task When_nobody_waits_any_more_the_rest_is_not_worked_out()
    {
        using var stop = new CancellationTokenSource();
        var begun = 0;
        var taken = 0;
        await Should.ThrowAsync<OperationCanceledException>(async () =>
        {
            await foreach (var _ in InOrder.AnswerAsync(Enumerable.Range(0, 100_000), entry => $"{entry}", entry =>
            {
                Interlocked.Increment(ref begun);
                return entry;
            }, stop.Token))
            {
                if (++taken == 10) await stop.CancelAsync();
            }
        });
        begun.ShouldBeInRange(10, 10 + (17 * Environment.ProcessorCount));
    }

    private static async Task<List<T>> AllAsync<T>(IAsyncEnumerable<T> rows)
    {
        var all = new List<T>();
        await foreach (var row in rows) all.Add(row);
        return all;
    }
}
