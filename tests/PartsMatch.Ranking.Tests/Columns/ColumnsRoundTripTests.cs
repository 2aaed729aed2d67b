using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Columns;
using PartsMatch.Ranking.Tests.Unknowns;

namespace PartsMatch.Ranking.Tests.Columns;

/// <summary>A catalogue that was written and read is the same catalogue. That it goes on like one is held by <see cref="EnginePropertyTests"/>, where writing and reading is one of the deeds.</summary>
public sealed class ColumnsRoundTripTests
{
    [Property(MaxTest = 200)]
    public Property It_answers_every_question_as_before_and_is_written_alike() => Prop.ForAll(
        (from one in Cases.All
         from deeds in Deeds.All
         from pageSize in Gen.Choose(1, 9)
         from asOf in Gen.Elements(0L, 1L, -7L, long.MaxValue)
         select (one, deeds, pageSize, asOf)).ToArbitrary(),
        given =>
        {
            var (written, plain) = Deeds.Done(given.one, given.deeds);
            var bytes = Deeds.Written(written, given.asOf);

            var (read, asOf) = Read(bytes, plain.Family);

            asOf.ShouldBe(given.asOf);
            Deeds.Written(read, asOf).SequenceEqual(bytes).ShouldBeTrue();
            (read.Offered, read.WantsSorting, read.Figures.Sorted, read.Figures.Tail, read.Figures.RowBytes).ShouldBe((written.Offered, written.WantsSorting, written.Figures.Sorted, written.Figures.Tail, written.Figures.RowBytes));
            read.Figures.Facets.ShouldBe(written.Figures.Facets);
            Deeds.Pages(read, plain, given.pageSize).Select(Shown).ShouldBe(Deeds.Pages(written, plain, given.pageSize).Select(Shown));
            Ranker.CountByFit(read, plain.Need).ShouldBe(Ranker.CountByFit(written, plain.Need));
            Ranker.NearestMisses(read, plain.Weights, plain.Need, given.pageSize).Select(miss => (miss.Number, miss.Stock, miss.Explained.Score))
                .ShouldBe(Ranker.NearestMisses(written, plain.Weights, plain.Need, given.pageSize).Select(miss => (miss.Number, miss.Stock, miss.Explained.Score)));
            foreach (var part in plain.Parts) read.IsOffered(part.Number).ShouldBe(written.IsOffered(part.Number));
            read.IsOffered("never there").ShouldBeNull();
        });

    [Fact]
    public void A_large_catalogue_with_wide_codes_and_many_chunks_is_the_same_again()
    {
        var family = Gaskets.Family();
        var random = new Random(20261129);
        var parts = Enumerable.Range(0, 70_000).Select(index => Gaskets.Part($"G{index}", random.Next(14), random.Next(14), random.Next(14), colour: index)).ToList();
        var written = Catalogue.Of(family, parts).WithStock(parts.Select(part => KeyValuePair.Create(part.Number, new Stock(random.Next(3), random.Next(40)))));

        var (read, _) = Read(Deeds.Written(written), family);

        for (var plate = 0; plate < 14; plate += 3)
        {
            RankingQuery query = new(Gaskets.Need(plate, plate, 13 - plate), null, 30, null);
            Listed(read, query).Select(Shown).ShouldBe(Listed(written, query).Select(Shown));
        }

        IReadOnlyList<RankedPart> Listed(Catalogue catalogue, RankingQuery query) => Ranker.Rank(catalogue, Weights.HandSet(family), query).ShouldBeOfType<RankingPage.Listed>().Parts;
    }

    [Theory]
    [InlineData("motor", "outputPower", "fanLoad")]
    public void Aspects_that_read_the_same_of_every_part_share_a_table_in_memory_and_in_the_file(string kind, string one, string other)
    {
        var family = Families.Find(kind)!;
        var written = Catalogue.Of(family, Machines.Demo(family));
        var (read, _) = Read(Deeds.Written(written), family);

        foreach (var catalogue in (Catalogue[])[written, read]) Table(catalogue, one).ShouldBeSameAs(Table(catalogue, other));
        Table(read, one).ShouldNotBeSameAs(Table(read, "runningCurrent"));

        object Table(Catalogue catalogue, string name) => catalogue.Facets[family.Aspects.Index().Single(aspect => aspect.Item.Name == name).Index];
    }

    [Theory]
    [InlineData("motor")]
    [InlineData("capacitor")]
    public void A_demo_catalogue_explains_its_parts_as_before(string kind)
    {
        var family = Families.Find(kind)!;
        var (parts, weights) = (Machines.Demo(family), Weights.HandSet(family));
        var written = Catalogue.Of(family, parts);
        var (read, _) = Read(Deeds.Written(written), family);
        foreach (var old in parts.Where((_, index) => index % (parts.Count / 12) == 0))
        {
            var need = family.ReadNeed(new(null, family.SpecShape.Write(old.Spec), [])).Need;
            Rank(read).Select(part => (Shown(part), Sentences(part))).ShouldBe(Rank(written).Select(part => (Shown(part), Sentences(part))));

            IReadOnlyList<RankedPart> Rank(Catalogue catalogue) => Ranker.Rank(catalogue, weights, new(need, null, 15, null)).ShouldBeOfType<RankingPage.Listed>().Parts;
        }

        static string Sentences(RankedPart part) => string.Join(' ', part.Explained.Sheet.Findings.Select(one => one.Finding.Sentence));
    }

    private static (string Number, Stock Stock, Likelihood Likelihood, string Cursor, Score Score) Shown(RankedPart part) => (part.Number, part.Stock, part.Likelihood, part.Cursor, part.Explained.Score);

    private static ColumnsReading.Read Read(byte[] bytes, Family family)
    {
        using var from = new MemoryStream(bytes);
        return Catalogue.ReadFrom(from, family).ShouldBeOfType<ColumnsReading.Read>();
    }
}
