using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Air-over motors are cooled by the fan they drive and have no rating outside its air: NEMA MG 1 1.26, published (facts/07).</summary>
[Trait("Source", "motor.motorCooling")]
public sealed class MotorCoolingTests : MotorAspectTests<MotorCooling>
{
    [Theory]
    [InlineData("in the airstream", "TEAO")]
    [InlineData("in the airstream", "OAO")]
    [InlineData("in the airstream", "TENV")]
    [InlineData("in the airstream", "ODP")]
    [InlineData("still air", "TENV")]
    [InlineData("still air", "TEFC")]
    [InlineData("still air", "ODP")]
    public void The_fan_s_air_cools_any_motor_and_only_an_air_over_one_needs_it(string air, string enclosure) =>
        Meets(site: $"coolingAir={air}", part: $"enclosure={enclosure}");

    [Theory]
    [InlineData("TEAO")]
    [InlineData("OAO")]
    public void An_air_over_motor_fails_in_still_air(string enclosure) =>
        Fails("enclosure=TEFC", "coolingAir=still air", $"enclosure={enclosure}").Sentence.ShouldContain("only in its own fan's air");

    [Theory]
    [InlineData("", "", "enclosure=TENV")]
    [InlineData("enclosure=TENV", "", "enclosure=TENV")]
    [InlineData("enclosure=TEAO", "", "enclosure=TEAO")] // where the old one was cooled so, the air is there (practice)
    [InlineData("enclosure=OAO", "", "enclosure=TEAO")]
    [InlineData("", "fanKind=propeller; drive=direct", "enclosure=TEAO")]
    public void Old_motor_and_propeller_tell_where_the_air_is(string plate, string site, string part) => Meets(plate, site, part);

    [Theory]
    [InlineData("", "")]
    [InlineData("enclosure=TENV", "")]
    [InlineData("", "fanKind=propeller; drive=belt")]
    [InlineData("", "fanKind=blower wheel; drive=direct")]
    [InlineData("", "fanKind=propeller")]
    public void Where_nothing_tells_it_an_air_over_motor_is_open(string plate, string site) => Unknown(Side.Site, "coolingAir", plate, site, "enclosure=TEAO");

    [Theory]
    [InlineData("")]
    [InlineData("coolingAir=still air")]
    public void A_motor_of_unknown_enclosure_is_asked_about(string site) => Unknown(Side.Part, "enclosure", site: site);

    [Fact]
    public void What_was_seen_of_the_air_stands_before_what_the_old_motor_tells() => Fails("enclosure=TEAO", "coolingAir=still air", "enclosure=TEAO");

    [Fact]
    public void The_deduction_says_what_it_rests_on()
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, [new("enclosure", "TEAO")], []));
        var told = need.Deductions.Single(one => one.Field == "coolingAir");
        told.ShouldSatisfyAllConditions(
            () => told.Because.ShouldBe("the old motor was made for its fan's air"),
            () => told.From.ShouldBe(["enclosure"]),
            () => told.Source.Status.ShouldBe(SourceStatus.Practice));
    }
}
