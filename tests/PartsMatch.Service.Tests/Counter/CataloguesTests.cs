using PartsMatch.Fit.Motors;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Counter;

/// <summary>What ranking is made from lies in files from one start to the next, and says what the store says.</summary>
public sealed class CataloguesTests : IDisposable
{
    private readonly TestFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task A_second_start_reads_its_columns_and_ranks_alike()
    {
        var first = await RunAsync(_ => Task.CompletedTask, wasRead: false);
        var second = await RunAsync(_ => Task.CompletedTask, wasRead: true);
        second.ShouldBe(first);
        first.ShouldNotBeEmpty();
    }

    [Fact]
    public async Task What_was_written_is_in_the_columns_of_the_next_start()
    {
        var best = (await RunAsync(_ => Task.CompletedTask, wasRead: false))[0];
        var without = await RunAsync(store => store.RetireAsync(best, 1, "the test"), wasRead: true);
        without.ShouldNotContain(best);
        (await RunAsync(_ => Task.CompletedTask, wasRead: true)).ShouldBe(without);
    }

    [Fact]
    public async Task Columns_of_what_a_back_up_does_not_hold_are_not_used()
    {
        var backUp = Path.Combine(_data.Path, "back-up.db");
        var whole = await RunAsync(store => store.BackUpAsync(backUp), wasRead: false);
        await RunAsync(store => store.RetireAsync(whole[0], 1, "the test"), wasRead: true);
        File.Move(backUp, Path.Combine(_data.Path, "partsmatch.db"), overwrite: true);
        (await RunAsync(_ => Task.CompletedTask, wasRead: false)).ShouldBe(whole);
    }

    [Fact]
    public async Task Damaged_columns_are_made_anew()
    {
        var whole = await RunAsync(_ => Task.CompletedTask, wasRead: false);
        var columns = Path.Combine(_data.Path, "partsmatch.motor.columns");
        var bytes = await File.ReadAllBytesAsync(columns, TestContext.Current.CancellationToken);
        bytes[bytes.Length / 2] ^= 1;
        await File.WriteAllBytesAsync(columns, bytes, TestContext.Current.CancellationToken);
        (await RunAsync(_ => Task.CompletedTask, wasRead: false)).ShouldBe(whole);
    }

    [Fact]
    public async Task A_price_beyond_all_measure_is_a_price()
    {
        var ranked = await RunAsync(async store => (await store.SetStockAsync(new("V1U45-C7", decimal.MaxValue, "USD", 1))).ShouldBeOfType<WriteResult.Written>(), wasRead: false);
        (await RunAsync(_ => Task.CompletedTask, wasRead: true)).ShouldBe(ranked);
    }

    [Fact]
    public async Task What_known_machines_say_is_kept_once_a_need_has_asked_for_it_and_used_for_the_same_parts_alone()
    {
        var machines = Path.Combine(_data.Path, "partsmatch.motor.machines");
        var first = await RunAsync(_ => Task.CompletedTask, wasRead: false);
        File.Exists(machines).ShouldBeTrue();
        File.Exists(Path.Combine(_data.Path, "partsmatch.contactor.machines")).ShouldBeFalse("nobody asked for one");

        var written = await File.ReadAllBytesAsync(machines, TestContext.Current.CancellationToken);
        (await RunAsync(_ => Task.CompletedTask, wasRead: true)).ShouldBe(first);
        Machines(first[0]).AreAsWritten.ShouldBeTrue();

        await RunAsync(store => store.RetireAsync(first[0], 1, "the test"), wasRead: true);
        (await File.ReadAllBytesAsync(machines, TestContext.Current.CancellationToken)).ShouldNotBe(written);
        Machines(first[0]).AreAsWritten.ShouldBeTrue();
        await File.WriteAllBytesAsync(machines, written, TestContext.Current.CancellationToken);
        Machines(first[0]).AreAsWritten.ShouldBeFalse("they are of the parts as they were");

        KnownMachines Machines(string number)
        {
            using var store = PartStore.Open(new(_data.Path), TimeProvider.System, () => SeedCatalogue.Read(null));
            store.Catalogue.Find(number).ShouldNotBeNull();
            return Shelf.Of(store.Catalogue, new ColumnFiles(_data.Path)).Shelf.MachinesOf(MotorFamily.Motor);
        }
    }

    /// <summary>Starts, writes, and tells the numbers of what fits.</summary>
    private async Task<IReadOnlyList<string>> RunAsync(Func<PartStore, Task> write, bool wasRead)
    {
        using var store = PartStore.Open(new(_data.Path), TimeProvider.System, () => SeedCatalogue.Read(null));
        Shelf.Of(store.Catalogue, new ColumnFiles(_data.Path)).IsRead.ShouldBe(wasRead);
        using var catalogues = new Catalogues(store);
        await write(store);
        var judgements = new Judgements(catalogues, new(new DataFolder(_data.Path, SeedFolder: null)));
        var asked = judgements.Replacements(new(MotorFamily.Motor, [], "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60 FR 48Y", OldPartNumber: null, []), first: 30, after: null, include: null);
        return [.. asked.Value.ShouldNotBeNull().Parts.Select(one => one.Part.Stored.Number)];
    }
}
