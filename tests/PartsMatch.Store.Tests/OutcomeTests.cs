namespace PartsMatch.Store.Tests;

/// <summary>What became of parts that were put in.</summary>
public sealed class OutcomeTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_record_is_there_again_after_a_restart_word_for_word()
    {
        using (var store = _folder.Open(() => A.Seed(), new StoppedClock(A.Noon)))
        {
            var recorded = A.Recorded(await store.Outcomes.RecordAsync(A.Outcome("one", note: " as typed "), "the counter"));
            (recorded.Sequence, recorded.At, recorded.By, recorded.CorrectedBy).ShouldBe((1, A.Noon, "the counter", null));
        }

        using var again = _folder.Open();
        var there = again.Outcomes.All(OutcomeRange.All).ShouldHaveSingleItem();
        var said = A.Outcome("one", note: " as typed ");
        (there.Said with { Plate = said.Plate, Site = said.Site }).ShouldBe(said);
        there.Said.Plate.ShouldBe(said.Plate);
        there.Said.Site.ShouldBe(said.Site);
        (there.Sequence, there.At, there.By).ShouldBe((1, A.Noon, "the counter"));
    }

    [Fact]
    public async Task The_same_id_with_the_same_content_is_one_record_and_is_answered_as_before()
    {
        using var store = _folder.Open(() => A.Seed());
        var first = A.Recorded(await store.Outcomes.RecordAsync(A.Outcome("one"), "the counter"));
        var second = A.Recorded(await store.Outcomes.RecordAsync(A.Outcome("one", part: "demo 1"), "somebody else"));
        (second.Sequence, second.At, second.By, second.Said.Part).ShouldBe((first.Sequence, first.At, "the counter", "DEMO-1"));
        store.Outcomes.All(OutcomeRange.All).ShouldHaveSingleItem();
    }

    [Fact]
    public async Task The_same_id_with_other_content_is_refused_with_what_is_there()
    {
        using var store = _folder.Open(() => A.Seed());
        await store.Outcomes.RecordAsync(A.Outcome("one"), "the counter");
        (await store.Outcomes.RecordAsync(A.Outcome("one", note: "other"), "the counter")).ShouldBeOfType<WriteResult.OtherOutcome>().Present.Said.Note.ShouldBeEmpty();
        (await store.Outcomes.RecordAsync(A.Outcome("one") with { Site = [] }, "the counter")).ShouldBeOfType<WriteResult.OtherOutcome>();
        store.Outcomes.All(OutcomeRange.All).ShouldHaveSingleItem().Said.Note.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_correction_takes_the_place_of_a_record_that_is_kept_and_of_a_chain_only_the_last_counts()
    {
        using var store = _folder.Open(() => A.Seed());
        await store.Outcomes.RecordAsync(A.Outcome("one"), "a");
        await store.Outcomes.RecordAsync(A.Outcome("two", corrects: "one"), "a");
        A.Recorded(await store.Outcomes.RecordAsync(A.Outcome("three", corrects: "two"), "b")).CorrectedBy.ShouldBeNull();

        store.Outcomes.All(OutcomeRange.All).Select(one => (one.Said.Id, one.CorrectedBy)).ShouldBe([("one", "two"), ("two", "three"), ("three", null)]);
        (await store.Outcomes.NewestAsync(OutcomeRange.All, before: null, 10)).Select(one => (one.Said.Id, one.CorrectedBy)).ShouldBe([("three", null), ("two", "three"), ("one", "two")]);
        A.Recorded(await store.Outcomes.RecordAsync(A.Outcome("two", corrects: "one"), "a")).CorrectedBy.ShouldBe("three", "sent again, it is what it was");
    }

    [Fact]
    public async Task Correcting_what_is_not_there_or_was_corrected_before_is_refused()
    {
        using var store = _folder.Open(() => A.Seed());
        (await store.Outcomes.RecordAsync(A.Outcome("two", corrects: "one"), "a")).ShouldBe(new WriteResult.NothingToCorrect("one"));
        (await store.Outcomes.RecordAsync(A.Outcome("self", corrects: "self"), "a")).ShouldBe(new WriteResult.NothingToCorrect("self"));
        await store.Outcomes.RecordAsync(A.Outcome("one"), "a");
        await store.Outcomes.RecordAsync(A.Outcome("two", corrects: "one"), "a");
        (await store.Outcomes.RecordAsync(A.Outcome("three", corrects: "one"), "a")).ShouldBeOfType<WriteResult.CorrectedBefore>().Present.CorrectedBy.ShouldBe("two");
        (await store.Outcomes.RecordAsync(A.Outcome("other", corrects: "two") with { Kind = "capacitor" }, "a")).ShouldBeOfType<WriteResult.OfOtherKind>().Present.Said.Id.ShouldBe("two");
        store.Outcomes.All(OutcomeRange.All).Count().ShouldBe(2);
    }

    [Fact]
    public async Task Of_a_group_each_is_judged_against_the_ones_before_it()
    {
        using var store = _folder.Open(() => A.Seed());
        var results = await store.WriteAllAsync(
            [
                new AskedWrite.Record(A.Outcome("one")),
                new AskedWrite.Record(A.Outcome("one")),
                new AskedWrite.Record(A.Outcome("one", note: "other")),
                new AskedWrite.Record(A.Outcome("two", corrects: "one")),
                new AskedWrite.Record(A.Outcome("three", corrects: "one")),
                new AskedWrite.Record(A.Outcome("four", corrects: "two")),
            ],
            "the importer");
        results.Select(result => result.GetType()).ShouldBe(
            [typeof(WriteResult.Recorded), typeof(WriteResult.Recorded), typeof(WriteResult.OtherOutcome), typeof(WriteResult.Recorded), typeof(WriteResult.CorrectedBefore), typeof(WriteResult.Recorded)]);
        store.Outcomes.All(OutcomeRange.All).Select(one => (one.Sequence, one.Said.Id, one.CorrectedBy)).ShouldBe([(1, "one", "two"), (2, "two", "four"), (3, "four", null)]);
    }

    [Fact]
    public async Task They_are_found_by_kind_by_part_and_by_id_some_at_a_time()
    {
        using var store = _folder.Open(() => A.Seed());
        var all = Enumerable.Range(1, 4_100).Select(at => A.Outcome(FormattableString.Invariant($"id-{at}"), part: FormattableString.Invariant($"DEMO-{1 + (at % 3)}")) with { Kind = at % 2 == 0 ? "motor" : "motor2" }).ToList();
        await store.WriteAllAsync([.. all.Select(one => new AskedWrite.Record(one))], "a");

        store.Outcomes.All(OutcomeRange.All).Select(one => one.Sequence).ShouldBe(Enumerable.Range(1, 4_100).Select(at => (long)at));
        store.Outcomes.All(OutcomeRange.OfKind("motor")).Select(one => one.Said.Id).ShouldBe(all.Where(one => one.Kind == "motor").Select(one => one.Id));
        store.Outcomes.All(OutcomeRange.OfPart("demo3")).Select(one => one.Said.Id).ShouldBe(all.Where(one => one.Part == "DEMO-3").Select(one => one.Id));
        store.Outcomes.All(OutcomeRange.OfKind("mot")).ShouldBeEmpty();

        var newest = await store.Outcomes.NewestAsync(OutcomeRange.OfPart("DEMO-1"), before: null, 2);
        newest.Select(one => one.Sequence).ShouldBe([4_098, 4_095]);
        (await store.Outcomes.NewestAsync(OutcomeRange.OfPart("DEMO-1"), newest[^1].Sequence, 2)).Select(one => one.Sequence).ShouldBe([4_092, 4_089]);
        (await store.Outcomes.NewestAsync(OutcomeRange.All, before: 3, 5)).Select(one => one.Sequence).ShouldBe([2, 1]);

        (await store.Outcomes.FindAsync(["id-7", "no-such", "id-7"])).Keys.ShouldBe(["id-7"]);
    }

    [Fact]
    public async Task What_is_recorded_while_all_are_read_is_left_out()
    {
        using var store = _folder.Open(() => A.Seed());
        await store.Outcomes.RecordAsync(A.Outcome("one"), "a");
        var read = new List<string>();
        foreach (var outcome in store.Outcomes.All(OutcomeRange.All))
        {
            read.Add(outcome.Said.Id);
            await store.Outcomes.RecordAsync(A.Outcome("two"), "a");
        }

        read.ShouldBe(["one"]);
    }

    [Fact]
    public async Task Recording_leaves_the_catalogue_and_its_followers_as_they_are()
    {
        using var store = _folder.Open(() => A.Seed());
        var (before, told) = (store.Catalogue, 0);
        store.Changed += (_, _) => told++;
        await store.Outcomes.RecordAsync(A.Outcome("one"), "a");
        store.Catalogue.ShouldBeSameAs(before);
        told.ShouldBe(0);
    }

    [Fact]
    public void A_new_store_begins_with_those_of_its_seed_in_their_order()
    {
        using var store = _folder.Open(() => A.Seed() with { Outcomes = [A.Outcome("one"), A.Outcome("two", corrects: "one")] });
        store.Outcomes.All(OutcomeRange.All).Select(one => (one.Said.Id, one.By, one.CorrectedBy)).ShouldBe([("one", "the demo catalogue", "two"), ("two", "the demo catalogue", null)]);
    }

    [Fact]
    public async Task A_store_from_before_there_were_outcomes_takes_them()
    {
        PartStore.Open(new StoreOptions(_folder.Path), TimeProvider.System, () => A.Seed(), []).Dispose();
        // As that version made it: it knew nothing of them.
        using (var database = new LiteDB.LiteDatabase(_folder.Data)) database.DropCollection("outcomes").ShouldBeTrue();

        using var store = _folder.Open();
        store.Parts.Count().ShouldBe(3);
        store.Outcomes.All(OutcomeRange.All).ShouldBeEmpty();
        A.Recorded(await store.Outcomes.RecordAsync(A.Outcome("one"), "a"));
        store.Outcomes.All(OutcomeRange.OfKind("motor")).ShouldHaveSingleItem();
    }
}
