using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;
using PartsMatch.Ranking.Tests.Unknowns;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Engine;

/// <summary>What is known of parts that begin alike, taken up again in any order, is what entering their facets once more tells.</summary>
public sealed class CompletedPrefixTests
{
    private static readonly Family Motor = Families.All[0];
    private static readonly List<CataloguePart> Parts = [.. Machines.Demo(Motor).Where((_, index) => index % 40 == 0)];
    private static readonly Catalogue Catalogue = Catalogue.Of(Motor, Parts);
    private static readonly Weights Weights = Weights.HandSet(Motor);

    /// <summary>A step: enter the facets of a row to a depth and keep what is known, or take up what was kept so many steps ago and go on to a depth.</summary>
    private static Gen<(bool TakesUp, int Row, int Depth)> Step { get; } =
        from takesUp in Gen.Elements(true, true, false)
        from row in Gen.Choose(0, Parts.Count - 1)
        from depth in Gen.Choose(0, Catalogue.Rows.Aspects.Count)
        select (takesUp, row, depth);

    [Property(MaxTest = 100)]
    public Property What_was_kept_is_taken_up_as_it_was() => Prop.ForAll(Step.ListOf(60).ToArbitrary(), steps =>
    {
        // Of every third part's plate little is known: enough that most facets pass some completions and not others.
        var need = Motor.ReadNeed(new(null, [.. Motor.SpecShape.Write(Parts[7].Spec).Where((_, index) => index % 3 == 0)], [])).Need;
        var completions = KnownMachines.Of(Motor, Parts).Complete(need);
        completions.All.Count.ShouldBeGreaterThan(10);
        var answers = completions.AnswersIn(Catalogue, Weights, need);
        using var keptSums = new KeptSums(completions.All.Count);
        var prefix = new CompletedPrefix(answers, Weights, Catalogue.Facets.Length, keptSums);
        List<(int Row, int Depth, Begun Known)> kept = [];
        foreach (var (takesUp, row, depth) in steps)
        {
            var from = takesUp && kept.Count > 0 ? kept[row % kept.Count] : (Row: row, Depth: 0, Known: default);
            prefix.TakeUp(from.Depth, from.Known).ShouldBeTrue();
            IsKnown(from.Row, from.Depth);
            var entered = Enter(prefix, from.Row, from.Depth, depth);
            IsKnown(from.Row, entered);
            kept.Add((from.Row, entered, prefix.At(entered)));
        }

        void IsKnown(int row, int depth)
        {
            using var afresh = new KeptSums(completions.All.Count);
            var entered = new CompletedPrefix(answers, Weights, Catalogue.Facets.Length, afresh);
            Enter(entered, row, 0, depth).ShouldBe(depth);
            (prefix.PercentAt(depth), prefix.At(depth).Fit).ShouldBe((entered.PercentAt(depth), entered.At(depth).Fit));
        }
    });

    /// <summary>Enters a row's facets; how many of them stand: up to the first that no completion passes.</summary>
    private static int Enter(CompletedPrefix prefix, int row, int from, int to)
    {
        for (var depth = from; depth < to; depth++)
        {
            var aspect = Catalogue.Rows.Aspects[depth];
            if (prefix.Enter(depth, aspect, Catalogue.CodeAt(row, aspect)) == PartFit.DoesntFit) return depth;
        }

        return Math.Max(from, to);
    }
}
