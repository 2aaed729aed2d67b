using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>What is carried is held to judging every part in full for every known machine.</summary>
public sealed class CarrySetPropertyTests
{
    [Property(MaxTest = 60)]
    public Property A_part_is_carried_for_the_machines_that_it_surely_fits_and_all_together_reach_what_any_choice_does() => Prop.ForAll(CompletionsPropertyTests.Asked.ToArbitrary(), asked =>
    {
        var (family, parts, need, weights, stock) = asked;
        var completions = KnownMachines.Of(family, parts).Complete(need, Completions.Most);
        if (completions.IsNone) return;
        var set = CarrySet.Of(Catalogue.Of(family, parts).WithStock(stock), weights, need, completions);
        var whole = completions.All.Sum(one => (double)one.Weight);
        var fits = parts.ToDictionary(part => part.Number, part => completions.All.Where(one => Fits(family, need, one.Need, part.Spec)).ToHashSet());

        foreach (var part in set.Parts)
        {
            part.Share.ShouldBe(fits[part.Number].Sum(one => one.Weight) / whole, 1e-9, part.Number);
            part.For.ShouldBe(fits[part.Number].Select(one => one.Need), ignoreOrder: true);
        }

        set.Reached.ShouldBe(Reached(set.Parts.Select(part => part.Number)), 1e-9);
        var most = Reached(fits.Keys);
        set.Reached.ShouldBeGreaterThanOrEqualTo(Math.Min(CarrySet.UsualShare, most) - 1e-9);
        if (set.IsSmallest && set.Parts.Count > 1) fits.Values.Max(fitting => fitting.Sum(one => one.Weight) / whole).ShouldBeLessThan(Math.Min(CarrySet.UsualShare, most) - 1e-9);

        double Reached(IEnumerable<string> numbers) => numbers.SelectMany(number => fits[number]).Distinct().Sum(one => one.Weight) / whole;
    });

    /// <summary>It fails neither as far as the need is known nor with the machine's plate, and what decides is met, or can be told of the machine's own part as little and by the same facet.</summary>
    private static bool Fits(Family family, Need need, Need completed, Spec part)
    {
        if (family.Judge(need, part).Fit == PartFit.DoesntFit) return false;
        var sheet = family.Judge(completed, part);
        return sheet.Fit != PartFit.DoesntFit && sheet.Findings.All(one => !one.Aspect.IsDeciding || one.Finding.Verdict != Verdict.Unknown || Gist(one.Aspect, family.Deduce(part).Spec).Equals(Gist(one.Aspect, completed.Plate)));
    }

    private static object Gist(Aspect aspect, Spec spec) => aspect.GistOf(aspect.FacetOf(spec));
}
