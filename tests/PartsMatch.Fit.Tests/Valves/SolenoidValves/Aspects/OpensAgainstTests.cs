using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>250 psi before it and 50 psi behind it need 200 psi: published worked example.</summary>
[Trait("Source", "solenoidValve.opensAgainst")]
public sealed class OpensAgainstTests : SolenoidAspectTests<OpensAgainst, OpeningFacet>
{
    [Theory]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "openingDifferential=200 psi", "Meets")]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "openingDifferential=199 psi", "Fails")]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "openingDifferential=201 psi", "Meets")]
    [InlineData("", "inletMost=17.24 bar; outletLeast=3.45 bar", "openingDifferential=14 bar", "Meets")]
    [InlineData("", "inletMost=250 psi; outletLeast=-14 psi", "openingDifferential=250 psi", "Fails")] // down in a vacuum there is more to open against
    [InlineData("", "inletMost=250 psi", "openingDifferential=300 psi", "Unknown Site outletLeast")]
    [InlineData("", "", "openingDifferential=300 psi", "Unknown Site inletMost")]
    [InlineData("openingDifferential=300 psi", "", "openingDifferential=300 psi", "Meets")]
    [InlineData("openingDifferential=300 psi", "", "openingDifferential=299 psi", "Unknown Site inletMost")]
    [InlineData("", "inletMost=250 psi; outletLeast=50 psi", "", "Unknown Part openingDifferential")]
    public void It_opens_against_the_largest_difference(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>Whole psi are no whole tenths of a kPa: 310 less 10 psi are 300 psi whatever their kPa are rounded to.</summary>
    [Theory]
    [InlineData(310, 10)]
    [InlineData(330, 30)]
    [InlineData(350, 50)]
    [InlineData(160, 10)]
    [InlineData(410, 10)]
    public void What_is_needed_to_the_very_psi_meets(int inlet, int outlet) => Edge(inlet, outlet);

    [Property(MaxTest = 500)]
    public Property Of_whole_psi_the_edge_meets_and_one_psi_less_fails() => Prop.ForAll(
        (from outlet in Gen.Choose(-14, 150)
         from difference in Gen.Choose(2, 500)
         select (inlet: outlet + difference, outlet)).ToArbitrary(),
        pressures => Edge(pressures.inlet, pressures.outlet));

    private static void Edge(int inlet, int outlet)
    {
        var site = FormattableString.Invariant($"inletMost={inlet} psi; outletLeast={outlet} psi");
        var met = Judge("", site, FormattableString.Invariant($"openingDifferential={inlet - outlet} psi"));
        met.Verdict.ShouldBe(Fit.Judging.Verdict.Meets, site);
        met.Margin!.Value.Value.ShouldBeGreaterThanOrEqualTo(0);
        Answer("", site, FormattableString.Invariant($"openingDifferential={inlet - outlet - 1} psi")).ShouldBe("Fails", site);
    }
}
