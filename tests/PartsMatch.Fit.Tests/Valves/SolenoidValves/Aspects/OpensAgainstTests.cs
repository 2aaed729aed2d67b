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

    /// <summary>A body that comes with a coil for alternating current, and takes one for direct current; and the other way about.</summary>
    private const string Alternating = "coilVolts=24 V; coilFrequency=60 Hz; furtherCoils=24 V DC = QC-24D";
    private const string Direct = "coilVolts=24 V; coilCurrent=DC; furtherCoils=24 V 60 Hz = QC-24";
    private const string OnDirect = "coilSupplyVolts=24 V; coilSupplyCurrent=DC";
    private const string OnAlternating = "coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz";
    private const string Needs200 = "inletMost=250 psi; outletLeast=50 psi";

    /// <summary>On one body direct current lifts less: practice.</summary>
    [Theory]
    [InlineData(OnAlternating, $"openingDifferential=200 psi; {Alternating}", "Meets")]
    [InlineData(OnDirect, $"openingDifferential=200 psi; {Alternating}", "Unknown Part directDifferential")] // enough with the coil that stays out
    [InlineData(OnDirect, $"openingDifferential=199 psi; {Alternating}", "Fails")] // too little even with that
    [InlineData(OnDirect, $"openingDifferential=300 psi; directDifferential=200 psi; {Alternating}", "Meets")]
    [InlineData(OnDirect, $"openingDifferential=300 psi; directDifferential=199 psi; {Alternating}", "Fails")]
    [InlineData(OnAlternating, $"openingDifferential=200 psi; directDifferential=150 psi; {Alternating}", "Meets")]
    [InlineData(OnDirect, $"openingDifferential=200 psi; {Direct}", "Meets")]
    [InlineData(OnDirect, $"openingDifferential=199 psi; {Direct}", "Fails")]
    [InlineData(OnAlternating, $"openingDifferential=200 psi; {Direct}", "Meets")] // alternating current lifts no less
    [InlineData(OnAlternating, $"openingDifferential=199 psi; {Direct}", "Unknown Part openingDifferential")]
    [InlineData(OnAlternating, $"openingDifferential=200 psi; directDifferential=150 psi; {Direct}", "Meets")]
    [InlineData(OnAlternating, $"openingDifferential=199 psi; directDifferential=150 psi; {Direct}", "Fails")]
    [InlineData(OnDirect, $"openingDifferential=250 psi; directDifferential=199 psi; {Direct}", "Fails")]
    [InlineData("", $"openingDifferential=200 psi; {Alternating}", "Unknown Site coilSupplyVolts")] // which of its coils goes in
    [InlineData("", $"openingDifferential=199 psi; {Alternating}", "Fails")] // too little with either
    [InlineData(OnDirect, "openingDifferential=200 psi; coilVolts=120 V; furtherCoils=24 V DC = QC-24D", "Unknown Part coilCurrent")]
    [InlineData(OnDirect, "openingDifferential=200 psi; coilVolts=24 V; coilFrequency=60 Hz", "Meets")] // that no coil of it runs is said elsewhere
    public void It_is_held_against_the_coil_that_goes_in(string site, string part, string answer) => Answer("", $"{Needs200}; {site}", part).ShouldBe(answer);

    /// <summary>Two figures stand for two kinds of coil, and of which kind the one is that comes on it is not given.</summary>
    [Theory]
    [InlineData("openingDifferential=300 psi; directDifferential=250 psi", "Meets")] // enough with either
    [InlineData("openingDifferential=300 psi; directDifferential=200 psi", "Unknown Part coilCurrent")]
    [InlineData("openingDifferential=249 psi; directDifferential=200 psi", "Fails")] // too little with either
    [InlineData("directDifferential=250 psi", "Unknown Part openingDifferential")]
    [InlineData("openingDifferential=300 psi; directDifferential=200 psi; coilCurrent=DC", "Fails")]
    [InlineData("openingDifferential=300 psi; directDifferential=200 psi; coilFrequency=60 Hz", "Meets")] // that it does not run there is said elsewhere
    [InlineData("openingDifferential=300 psi", "Meets")] // given for the coil that comes on it
    public void Of_two_figures_neither_is_taken_for_a_coil_of_which_the_kind_is_not_given(string part, string answer) =>
        Answer("", $"inletMost=300 psi; outletLeast=50 psi; {OnDirect}", $"coilVolts=24 V; {part}").ShouldBe(answer);

    /// <summary>One for direct current does not run there, which is said elsewhere.</summary>
    [Theory]
    [InlineData(OnAlternating, "openingDifferential=300 psi; directDifferential=200 psi", "Meets")]
    [InlineData("coilSupplyVolts=24 V; coilSupplyCurrent=AC", "openingDifferential=300 psi; directDifferential=200 psi", "Meets")]
    [InlineData(OnAlternating, "openingDifferential=249 psi; directDifferential=200 psi", "Fails")]
    [InlineData("coilSupplyVolts=24 V", "openingDifferential=300 psi; directDifferential=200 psi", "Unknown Part coilCurrent")]
    [InlineData(OnAlternating, "openingDifferential=300 psi; directDifferential=200 psi; coilCurrent=DC", "Fails")]
    public void On_alternating_current_the_figure_for_that_is_taken_of_a_coil_of_which_the_kind_is_not_given(string supply, string part, string answer) =>
        Answer("", $"inletMost=300 psi; outletLeast=50 psi; {supply}", $"coilVolts=24 V; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("openingDifferential=200 psi; coilCurrent=DC; coilVolts=24 V", $"openingDifferential=200 psi; {Alternating}", "Unknown Part directDifferential")]
    [InlineData("openingDifferential=200 psi; coilCurrent=DC; coilVolts=24 V", $"openingDifferential=199 psi; {Alternating}", "Unknown Site inletMost")]
    [InlineData("openingDifferential=200 psi; coilCurrent=DC; coilVolts=24 V", $"openingDifferential=300 psi; directDifferential=200 psi; {Alternating}", "Meets")]
    [InlineData("openingDifferential=300 psi; directDifferential=200 psi; coilCurrent=DC; coilVolts=24 V", $"openingDifferential=300 psi; directDifferential=200 psi; {Alternating}", "Meets")]
    [InlineData("openingDifferential=200 psi; coilFrequency=60 Hz; coilVolts=24 V", $"openingDifferential=200 psi; {Direct}", "Meets")]
    [InlineData("openingDifferential=200 psi; coilFrequency=60 Hz; coilVolts=24 V", $"openingDifferential=199 psi; {Direct}", "Unknown Part openingDifferential")]
    public void Against_the_old_one_as_well(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void More_with_direct_current_than_with_alternating_current_is_misread()
    {
        var family = Families.Find("solenoidValve")!;
        family.ReadNeed(new(null, [new("openingDifferential", "200 psi"), new("directDifferential", "201 psi")], [])).Contradictions.Single().Fields.ShouldBe(["openingDifferential", "directDifferential"]);
        family.ReadNeed(new(null, [new("openingDifferential", "200 psi"), new("directDifferential", "200 psi")], [])).Contradictions.ShouldBeEmpty();
    }

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
