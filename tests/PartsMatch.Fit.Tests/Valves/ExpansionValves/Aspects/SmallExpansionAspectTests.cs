using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Valves;
using PartsMatch.Fit.Valves.ExpansionValves.Aspects;
using PartsMatch.Fit.Valves.Pipes;

namespace PartsMatch.Fit.Tests.Valves.ExpansionValves.Aspects;

/// <summary>The same refrigerant, else it fails: practice.</summary>
[Trait("Source", "expansionValve.sameRefrigerant")]
public sealed class SameRefrigerantTests : ExpansionAspectTests<SameRefrigerant, MadeForFacet>
{
    [Theory]
    [InlineData("", "refrigerant=R-404A", "refrigerants=R-404A, R-507A", "Meets")]
    [InlineData("", "refrigerant=R-448A", "refrigerants=R-404A, R-507A", "Fails")]
    [InlineData("refrigerants=R-22", "", "refrigerants=R-22", "Meets")]
    [InlineData("", "", "refrigerants=R-22", "Unknown Site refrigerant")]
    [InlineData("", "refrigerant=R-22", "", "Unknown Part refrigerants")]
    [InlineData("", "refrigerant=R-717", "refrigerants=R-717; joint=butt weld", "Meets")]
    [InlineData("", "refrigerant=R-717", "refrigerants=R-717; joint=ODF", "Fails")] // ammonia attacks copper
    [InlineData("", "refrigerant=R-717", "joint=SAE", "Fails")]
    [InlineData("", "refrigerant=R-717", "refrigerants=R-717", "Unknown Part joint")]
    [InlineData("", "refrigerant=R-717", "refrigerants=R-22", "Fails")]
    public void The_refrigerant_is_the_one_it_is_made_for(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>A bulb made for none of what the old one was made for is wrong whichever is there: practice.</summary>
    [Theory]
    [InlineData("refrigerants=R-404A, R-507A", "", "refrigerants=R-404A, R-507A", "Meets")]
    [InlineData("refrigerants=R-404A, R-507A", "", "refrigerants=R-448A", "Fails")]
    [InlineData("refrigerants=R-404A, R-507A", "", "refrigerants=R-404A", "Unknown Site refrigerant")]
    [InlineData("refrigerants=R-404A, R-507A", "", "", "Unknown Part refrigerants")]
    [InlineData("refrigerants=R-404A, R-507A", "refrigerant=R-448A", "refrigerants=R-448A", "Meets")] // what was read outranks the list
    public void Where_the_refrigerant_was_not_read_the_old_valves_list_stands_for_it(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>The same charge, else it fails: practice.</summary>
[Trait("Source", "expansionValve.sameCharge")]
public sealed class SameChargeTests : ExpansionAspectTests<SameCharge, ChargeFacet>
{
    [Theory]
    [InlineData("charge=cross charge", "", "charge=cross charge", "Meets")]
    [InlineData("charge=cross charge", "", "charge=liquid charge", "Fails")]
    [InlineData("charge=cross charge", "needsCharge=liquid charge", "charge=liquid charge", "Meets")]
    [InlineData("limitsAt=35 °F", "", "limitsAt=40 °F", "Meets")] // a limit tells a pressure-limited charge
    [InlineData("", "", "charge=liquid charge", "Unknown Site needsCharge")]
    [InlineData("charge=cross charge", "", "", "Unknown Part charge")]
    public void The_charge_is_the_one_needed(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>Internal only where the evaporator loses less than 2 °F of saturation: UFGS 15652A 2.21.4, published.</summary>
[Trait("Source", "expansionValve.equaliserLine")]
public sealed class EqualiserLineTests : ExpansionAspectTests<EqualiserLine, EqualiserFacet>
{
    [Theory]
    [InlineData("equaliser=external", "", "equaliser=external", "Meets")]
    [InlineData("equaliser=internal", "", "equaliser=external", "MeetsWithChanges fitEqualiserTap")]
    [InlineData("", "hasEqualiserTap=no", "equaliser=external", "MeetsWithChanges fitEqualiserTap")]
    [InlineData("", "", "equaliser=external", "Unknown Site hasEqualiserTap")]
    [InlineData("", "hasDistributor=yes", "equaliser=internal", "Fails")]
    [InlineData("equaliser=external", "hasDistributor=yes", "equaliser=internal", "Fails")]
    [InlineData("equaliser=external", "", "equaliser=internal", "Unknown Site hasDistributor")]
    [InlineData("equaliser=external", "hasDistributor=no", "equaliser=internal", "MeetsWithChanges checkCoilDrop")]
    [InlineData("equaliser=internal", "", "equaliser=internal", "Meets")]
    [InlineData("", "hasDistributor=no", "equaliser=internal", "MeetsWithChanges checkCoilDrop")]
    [InlineData("equaliser=internal", "", "", "Unknown Part equaliser")]
    public void The_diaphragm_gets_its_pressure_from_where_it_has_to(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>A limit at least 5 °F over the design: practice.</summary>
[Trait("Source", "expansionValve.chargeRange")]
public sealed class ChargeRangeTests : ExpansionAspectTests<ChargeRange, ChargeRangeFacet>
{
    private const string Range = "evaporatingLeast=-40 °F; evaporatingMost=50 °F";

    [Theory]
    [InlineData("", "evaporatingAt=-40 °F", Range, "Meets")]
    [InlineData("", "evaporatingAt=-41 °F", Range, "Fails")]
    [InlineData("", "evaporatingAt=50 °F", Range, "Meets")]
    [InlineData("", "evaporatingAt=51 °F", Range, "Fails")]
    [InlineData("", "evaporatingAt=30 °F", $"{Range}; limitsAt=35 °F", "Meets")]
    [InlineData("", "evaporatingAt=31 °F", $"{Range}; limitsAt=35 °F", "Fails")]
    [InlineData("", "evaporatingAt=29 °F", $"{Range}; limitsAt=35 °F", "Meets")]
    [InlineData("", "evaporatingAt=20 °F", $"{Range}; charge=MOP CHARGE", "Unknown Part limitsAt")]
    [InlineData("limitsAt=35 °F", "evaporatingAt=20 °F", $"{Range}; charge=cross charge", "MeetsWithChanges checkWarmStart")]
    [InlineData("", "evaporatingAt=20 °F", "", "Unknown Part evaporatingLeast")]
    [InlineData("", "", Range, "Unknown Site evaporatingAt")]
    public void The_charge_works_at_the_evaporating_temperature(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>Whole °F are no whole tenths of a K: 40 °F is 5 °F over 35 °F whatever their °C are rounded to.</summary>
    [Theory]
    [InlineData(35)]
    [InlineData(15)]
    [InlineData(-10)]
    public void A_limit_of_exactly_5_degrees_over_the_design_meets(int evaporating) => Edge(evaporating);

    [Property(MaxTest = 200)]
    public Property Of_whole_degrees_5_over_meet_and_4_fail() => Prop.ForAll(Gen.Choose(-40, 50).ToArbitrary(), Edge);

    private static void Edge(int evaporating)
    {
        var site = FormattableString.Invariant($"evaporatingAt={evaporating} °F");
        Answer("", site, FormattableString.Invariant($"{Range}; limitsAt={evaporating + 5} °F")).ShouldBe("Meets", site);
        Answer("", site, FormattableString.Invariant($"{Range}; limitsAt={evaporating + 4} °F")).ShouldBe("Fails", site);
    }
}

/// <summary>A compressor of low starting torque needs the pressures to come together: practice.</summary>
[Trait("Source", "expansionValve.offTimeEqualising")]
public sealed class OffTimeEqualisingTests : ExpansionAspectTests<OffTimeEqualising, OffTimeFacet>
{
    [Theory]
    [InlineData("", "lowStartingTorque=yes", "equalisesOff=none", "Fails")]
    [InlineData("", "lowStartingTorque=yes", "equalisesOff=bleed port", "Meets")]
    [InlineData("", "lowStartingTorque=yes", "equalisesOff=quick equalising", "Meets")]
    [InlineData("", "lowStartingTorque=yes", "", "Unknown Part equalisesOff")]
    [InlineData("equalisesOff=quick equalising", "", "equalisesOff=none", "Unknown Site lowStartingTorque")]
    [InlineData("equalisesOff=quick equalising", "", "equalisesOff=bleed port", "Meets")]
    [InlineData("equalisesOff=none", "", "", "Meets")]
    [InlineData("", "lowStartingTorque=no", "equalisesOff=none", "Meets")]
    [InlineData("", "", "equalisesOff=none", "Meets")]
    [InlineData("equalisesOff=bleed port", "", "equalisesOff=none", "Unknown Site lowStartingTorque")]
    public void Pressures_come_together_where_they_have_to(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("equalisesOff=none", "this one does not; whether")]
    [InlineData("", "this one is not said to; whether")]
    public void One_that_has_no_way_is_not_said_to_be_unmarked(string part, string said) => Judge("equalisesOff=bleed port", "", part).Sentence.ShouldContain(said);
}

/// <summary>A capillary reaches its bulb's place: practice.</summary>
[Trait("Source", "expansionValve.capillaryReach")]
public sealed class CapillaryReachTests : ExpansionAspectTests<CapillaryReach, CapillaryFacet>
{
    [Theory]
    [InlineData("", "capillaryNeeded=3 ft", "capillary=36 in", "Meets")]
    [InlineData("", "capillaryNeeded=3 ft", "capillary=35.9 in", "Fails")]
    [InlineData("", "capillaryNeeded=3 ft", "capillary=5 ft", "Meets")]
    [InlineData("capillary=3 ft", "", "capillary=3 ft", "Meets")]
    [InlineData("capillary=5 ft", "", "capillary=3 ft", "Unknown Site capillaryNeeded")]
    [InlineData("", "", "capillary=3 ft", "Unknown Site capillaryNeeded")]
    [InlineData("", "capillaryNeeded=3 ft", "", "Unknown Part capillary")]
    public void It_reaches(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>As for solenoid valves: ASHRAE 15, from memory.</summary>
[Trait("Source", "expansionValve.expansionBodyPressure")]
public sealed class ExpansionBodyPressureTests : ExpansionAspectTests<ExpansionBodyPressure, PressureFacet>
{
    [Theory]
    [InlineData("designPressure=450 psi", "workingPressure=450 psi", "Meets")]
    [InlineData("designPressure=450 psi", "workingPressure=450.1 psi", "Meets")]
    [InlineData("designPressure=450 psi", "workingPressure=449.9 psi", "Fails")]
    [InlineData("designPressure=450 psi", "workingPressure=449 psi", "Fails")]
    [InlineData("designPressure=450 psi", "", "Unknown Part workingPressure")]
    public void Its_body_holds_the_design_pressure(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    /// <summary>The old one held what is there; one that holds less may yet hold the design pressure.</summary>
    [Theory]
    [InlineData("workingPressure=450 psi", "", "workingPressure=450 psi", "Meets")]
    [InlineData("workingPressure=450 psi", "", "workingPressure=449.9 psi", "Unknown Site designPressure")]
    [InlineData("workingPressure=450 psi", "designPressure=400 psi", "workingPressure=449.9 psi", "Meets")]
    [InlineData("workingPressure=450 psi", "designPressure=450 psi", "workingPressure=449.9 psi", "Fails")] // what was read outranks the old one's
    [InlineData("", "", "workingPressure=700 psi", "Unknown Site designPressure")]
    [InlineData("workingPressure=450 psi", "", "", "Unknown Part workingPressure")]
    public void Where_the_design_pressure_was_not_read_the_old_ones_is_followed(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>One way fails where the flow reverses: practice.</summary>
[Trait("Source", "expansionValve.expansionBothWays")]
public sealed class ExpansionBothWaysTests : ExpansionAspectTests<ExpansionBothWays, WaysFacet>
{
    [Theory]
    [InlineData("flowReverses=yes", "bothWays=no", "Fails")]
    [InlineData("flowReverses=yes", "bothWays=yes", "Meets")]
    [InlineData("flowReverses=no", "bothWays=no", "Meets")]
    [InlineData("flowReverses=no", "", "Meets")]
    [InlineData("flowReverses=yes", "", "Unknown Part bothWays")]
    public void A_one_way_valve_fails_where_the_flow_reverses(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("bothWays=yes", "bothWays=no", "Unknown Site flowReverses")]
    [InlineData("bothWays=yes", "", "Unknown Site flowReverses")]
    [InlineData("bothWays=yes", "bothWays=yes", "Meets")]
    [InlineData("bothWays=no", "bothWays=no", "Meets")]
    [InlineData("", "bothWays=no", "Meets")]
    [InlineData("", "", "Meets")] // nothing says that the flow reverses
    public void Where_nobody_said_whether_it_reverses_only_an_old_valve_for_both_ways_asks(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}

/// <summary>Reducers and joints: practice.</summary>
[Trait("Source", "expansionValve.expansionConnections")]
public sealed class ExpansionConnectionsTests : ExpansionAspectTests<ExpansionConnections, ConnectionsFacet>
{
    [Theory]
    [InlineData("joint=ODF; inletSize=3/8 in; outletSize=1/2 in", "joint=ODF; inletSize=3/8 in; outletSize=1/2 in", "Meets")]
    [InlineData("joint=ODF; inletSize=3/8 in; outletSize=1/2 in", "joint=ODF; inletSize=3/8 in; outletSize=5/8 in", "MeetsWithChanges fitReducers")]
    [InlineData("joint=ODF; inletSize=3/8 in", "joint=ODF; inletSize=3/8 in; outletSize=3/8 in", "Unknown Site outletLine")] // an expansion valve's outlet is mostly larger
    [InlineData("inletSize=3/8 in; outletSize=1/2 in", "joint=SAE; inletSize=3/8 in; outletSize=1/2 in", "Unknown Site lineJoint")]
    [InlineData("inletSize=3/8 in; outletSize=1/2 in", "joint=SAE; inletSize=3/8 in; outletSize=5/8 in", "Unknown fitReducers Site lineJoint")]
    public void Pipes_and_valve_are_joined(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
