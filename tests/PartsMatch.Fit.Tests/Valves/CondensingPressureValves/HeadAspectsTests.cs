using PartsMatch.Fit.Valves;
using PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Tests.Valves.CondensingPressureValves;

/// <summary>The same arrangement, else it fails: practice.</summary>
[Trait("Source", "condensingPressureValve.sameArrangement")]
public sealed class SameArrangementTests : HeadAspectTests<SameArrangement, ArrangementFacet>
{
    [Theory]
    [InlineData("arrangement=three-way", "", "arrangement=three-way", "Meets")]
    [InlineData("arrangement=three-way", "", "arrangement=inlet regulator", "Fails")]
    [InlineData("", "", "arrangement=three-way", "Unknown Site needsArrangement")]
    [InlineData("arrangement=three-way", "", "", "Unknown Part arrangement")]
    public void The_pipes_are_laid_for_one(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>Listed meets, unlisted is unknown: practice.</summary>
[Trait("Source", "condensingPressureValve.headRefrigerant")]
public sealed class HeadRefrigerantTests : HeadAspectTests<HeadRefrigerant, HeadRefrigerantFacet>
{
    [Theory]
    [InlineData("refrigerant=R-404A", "refrigerants=R-404A, R-507A", "Meets")]
    [InlineData("refrigerant=R-410A", "refrigerants=R-404A, R-507A", "Unknown Part refrigerants")]
    [InlineData("", "refrigerants=R-404A", "Unknown Site refrigerant")]
    [InlineData("refrigerant=R-404A", "", "Unknown Part refrigerants")]
    public void A_valve_is_used_with_what_it_lists(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}

/// <summary>Within 10 psi; lower only while the expansion valves still get their drop: practice.</summary>
[Trait("Source", "condensingPressureValve.headSetting")]
public sealed class HeadSettingTests : HeadAspectTests<HeadSetting, SettingFacet>
{
    [Theory]
    [InlineData("settingNeeded=180 psi", "setting=190 psi", "Meets")]
    [InlineData("settingNeeded=180 psi", "setting=170 psi", "Meets")]
    [InlineData("settingNeeded=180 psi", "setting=191 psi", "MeetsWithChanges checkHead")]
    [InlineData("settingNeeded=180 psi", "setting=169 psi", "Unknown Site leastHead")]
    [InlineData("settingNeeded=180 psi; leastHead=160 psi", "setting=160 psi", "MeetsWithChanges checkHead")]
    [InlineData("settingNeeded=180 psi; leastHead=160 psi", "setting=159 psi", "Fails")]
    [InlineData("settingNeeded=180 psi", "setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "MeetsWithChanges setPressure")]
    [InlineData("settingNeeded=181 psi", "setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "Unknown Site leastHead")]
    [InlineData("", "setting=180 psi", "Unknown Site settingNeeded")]
    [InlineData("settingNeeded=180 psi", "", "Unknown Part setting")]
    public void It_holds_the_pressure_that_is_needed(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    /// <summary>A differential check valve is set to a difference: no head is held against it.</summary>
    [Theory]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi; leastHead=150 psi", "arrangement=differential check; setting=20 psi", "Meets")]
    [InlineData("needsArrangement=differential check; settingNeeded=35 psi; leastHead=150 psi", "arrangement=differential check; setting=20 psi", "MeetsWithChanges checkHead")]
    [InlineData("needsArrangement=differential check; settingNeeded=35 psi", "arrangement=differential check; setting=20 psi", "MeetsWithChanges checkHead")]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi", "arrangement=differential check; setting=35 psi", "MeetsWithChanges checkHead")]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi", "setting=20 psi", "Unknown Part arrangement")]
    [InlineData("settingNeeded=20 psi", "arrangement=differential check; setting=20 psi", "Unknown Site needsArrangement")]
    [InlineData("needsArrangement=three-way; settingNeeded=20 psi", "arrangement=differential check; setting=20 psi", "Fails")]
    public void A_difference_is_not_a_head(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}

/// <summary>Capacity at least the load: practice.</summary>
[Trait("Source", "condensingPressureValve.headCapacity")]
public sealed class HeadCapacityTests : HeadAspectTests<HeadCapacity, HeadCapacityFacet>
{
    private const string Rated = "ratedWith=R-404A; ratedDrop=2 psi";

    [Theory]
    [InlineData("", "refrigerant=R-404A; load=20 kW", $"ratedCapacity=20 kW; {Rated}", "Meets")]
    [InlineData("", "refrigerant=R-404A; load=20.01 kW", $"ratedCapacity=20 kW; {Rated}", "Fails")]
    [InlineData("", "refrigerant=R-134a; load=10 kW", $"ratedCapacity=20 kW; {Rated}", "Unknown Part ratedWith")]
    [InlineData("", "load=10 kW", $"ratedCapacity=20 kW; {Rated}", "Unknown Site refrigerant")]
    [InlineData("", "refrigerant=R-404A; load=10 kW", "ratedCapacity=20 kW; ratedWith=R-404A", "Unknown Part ratedDrop")]
    [InlineData($"ratedCapacity=20 kW; {Rated}", "", $"ratedCapacity=20 kW; {Rated}", "Meets")]
    [InlineData($"ratedCapacity=20 kW; {Rated}", "", $"ratedCapacity=19 kW; {Rated}", "Unknown Site load")]
    [InlineData("", "", "", "Unknown Part ratedCapacity")]
    public void It_passes_the_load(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>Practice: half of log2 of the ratio, so that four times the load counts 1.</summary>
    [Theory]
    [InlineData("10 kW", 0)]
    [InlineData("20 kW", 0.5)]
    [InlineData("40 kW", 1)]
    [InlineData("80 kW", 1)]
    public void The_more_it_is_too_large_the_more_it_costs(string capacity, double shortfall) =>
        Judge("", "refrigerant=R-404A; load=10 kW", $"ratedCapacity={capacity}; {Rated}").Shortfall.ShouldBe(shortfall, 0.001);
}

/// <summary>As for other valves: ASHRAE 15, from memory.</summary>
[Trait("Source", "condensingPressureValve.headBodyPressure")]
public sealed class HeadBodyPressureTests : HeadAspectTests<HeadBodyPressure, PressureFacet>
{
    [Theory]
    [InlineData("designPressure=450 psi", "workingPressure=450 psi", "Meets")]
    [InlineData("designPressure=450 psi", "workingPressure=449 psi", "Fails")]
    [InlineData("designPressure=450 psi", "", "Unknown Part workingPressure")]
    public void Its_body_holds_the_design_pressure(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}

/// <summary>A receiver holds the flooding charge: practice.</summary>
[Trait("Source", "condensingPressureValve.floodingCharge")]
public sealed class FloodingChargeTests : HeadAspectTests<FloodingCharge, FloodsFacet>
{
    [Theory]
    [InlineData("receiverHoldsFlooding=yes", "arrangement=three-way", "Meets")]
    [InlineData("receiverHoldsFlooding=no", "arrangement=three-way", "Fails")]
    [InlineData("", "arrangement=inlet regulator", "Unknown Site receiverHoldsFlooding")]
    [InlineData("receiverHoldsFlooding=no", "arrangement=differential check", "Meets")]
    [InlineData("", "", "Unknown Part arrangement")]
    public void The_receiver_holds_what_floods(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}

/// <summary>Reducers and joints: practice.</summary>
[Trait("Source", "condensingPressureValve.portsByFunction")]
public sealed class PortsByFunctionTests : HeadAspectTests<PortsByFunction, ConnectionsFacet>
{
    [Theory]
    [InlineData("joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "Meets")]
    [InlineData("joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "joint=ODF; condenserPort=7/8 in; receiverPort=5/8 in", "MeetsWithChanges fitReducers")]
    [InlineData("", "joint=ODF; condenserPort=7/8 in; receiverPort=5/8 in", "Unknown Site condenserPipe")]
    [InlineData("", "joint=ODF; condenserPort=7/8 in", "Unknown Part receiverPort")]
    [InlineData("joint=ODF; condenserPort=5/8 in", "joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "Unknown Site receiverPipe")]
    public void Ports_and_pipes_are_joined(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
