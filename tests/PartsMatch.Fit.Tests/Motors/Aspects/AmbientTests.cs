using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>
/// 40 °C where nothing is marked: NEMA MG 1 14.2 and IEC 60034-1 clause 6, published; −15 °C: from memory for NEMA; 5 °C under 600 W: IEC, published (facts/07).
/// A marked ambient stands in place of those (practice).
/// </summary>
[Trait("Source", "motor.ambient")]
public sealed class AmbientTests : MotorAspectTests<Ambient>
{
    [Theory]
    [InlineData("49.9 °C", "50 °C", Verdict.Meets)]
    [InlineData("50 °C", "50 °C", Verdict.Meets)]
    [InlineData("50.1 °C", "50 °C", Verdict.Fails)]
    [InlineData("122 °F", "50 °C", Verdict.Meets)] // 50 °C exactly
    [InlineData("122.5 °F", "50 °C", Verdict.Fails)] // 50.28 °C, worked by hand
    public void The_air_may_be_as_hot_as_is_marked(string air, string marked, Verdict verdict) =>
        Judge(site: $"airMost={air}", part: $"ambientMost={marked}").Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("-19.9 °C", Verdict.Meets)]
    [InlineData("-20 °C", Verdict.Meets)]
    [InlineData("-20.1 °C", Verdict.Fails)]
    [InlineData("-4 °F", Verdict.Meets)] // −20 °C exactly
    [InlineData("-10 °F", Verdict.Fails)] // −23.3 °C: a freezer (facts/13, practice)
    public void And_as_cold(string air, Verdict verdict) =>
        Judge(site: $"airLeast={air}", part: "ambientLeast=-20 °C").Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("39.9 °C", "Meets")]
    [InlineData("40 °C", "Meets")]
    [InlineData("40.1 °C", "Unknown")]
    public void Where_nothing_is_marked_40_degrees_are_taken_and_beyond_that_the_maker_is_asked(string air, string verdict) =>
        Judge(site: $"airMost={air}").Verdict.ToString().ShouldBe(verdict);

    [Theory]
    [InlineData("power=1/4 hp", "-14.9 °C", true)]
    [InlineData("power=1/4 hp", "-15 °C", true)]
    [InlineData("power=1/4 hp", "-15.1 °C", false)]
    [InlineData("power=599 W; standard=IEC", "5 °C", true)]
    [InlineData("power=599 W; standard=IEC", "4.9 °C", false)]
    [InlineData("power=600 W; standard=IEC", "-15 °C", true)]
    [InlineData("power=600 W; standard=IEC", "-15.1 °C", false)]
    [InlineData("power=599 W; standard=NEMA", "-15 °C", true)]
    public void Where_no_coldest_air_is_marked_the_standards_say_what_is_taken(string part, string air, bool meets)
    {
        if (meets) Meets(site: $"airLeast={air}", part: part);
        else Unknown(Side.Part, "ambientLeast", site: $"airLeast={air}", part: part);
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("", "ambientMost=40 °C")]
    [InlineData("ambientMost=40 °C", "")]
    [InlineData("ambientMost=60 °C", "ambientMost=60 °C")]
    [InlineData("ambientMost=60 °C", "ambientMost=70 °C")]
    [InlineData("ambientMost=60 °C; ambientLeast=-30 °C", "ambientMost=60 °C; ambientLeast=-30 °C")]
    public void With_the_air_not_known_a_motor_made_for_as_much_as_the_old_one_is_no_worse(string plate, string part) => Meets(plate, part: part).Caution.ShouldBeNull();

    // 20 K less is a shortfall of 1 (practice); 59.9 °C is 0.1 K less.
    [Theory]
    [InlineData("59.9 °C", 0.005)]
    [InlineData("50 °C", 0.5)]
    [InlineData("40 °C", 1)]
    [InlineData("30 °C", 1)]
    public void Made_for_less_heat_than_the_old_one_is_a_check(string marked, double shortfall)
    {
        var finding = MeetsWith([PlaceChanges.CheckAir], "ambientMost=60 °C", part: $"ambientMost={marked}");
        finding.Shortfall.ShouldBe(shortfall, 1e-9);
        finding.Changes[0].Text.ShouldStartWith("see that the air round the motor stays below ");
    }

    [Fact]
    public void Made_for_less_cold_than_the_old_one_is_a_check() => MeetsWith([PlaceChanges.CheckAir], "ambientLeast=-30 °C", part: "ambientLeast=-20 °C");

    [Fact]
    public void Less_heat_and_less_cold_are_one_check_of_the_air() =>
        MeetsWith([PlaceChanges.CheckAir], "ambientMost=60 °C; ambientLeast=-30 °C", part: "ambientMost=50 °C; ambientLeast=-20 °C").Changes[0].Text
            .ShouldBe("see that the air round the motor stays between −20 °C (−4 °F) and 50 °C (122 °F)");

    [Fact]
    public void A_motor_marked_for_less_than_the_usual_air_is_a_check_where_nothing_is_known_of_it() => MeetsWith([PlaceChanges.CheckAir], part: "ambientMost=25 °C");

    [Fact]
    public void An_old_motor_for_a_hot_place_asks_what_an_unmarked_one_bears() => Unknown(Side.Part, "ambientMost", "ambientMost=60 °C");

    [Fact]
    public void That_the_old_one_could_bear_the_cold_is_only_mentioned_where_the_new_one_is_silent() =>
        Meets("ambientLeast=-30 °C").Caution.ShouldBe("Its lowest ambient is not marked; the standards then take −15 °C (5 °F); the old motor was made for −30 °C (−22 °F): ask before it goes into a freezer.");

    [Theory]
    [InlineData("airMost=55 °C; airLeast=-10 °C", "made for air up to 50 °C (122 °F); the air there gets to 55 °C (131 °F)")]
    [InlineData("airMost=45 °C; airLeast=-30 °C", "made for air down to −20 °C (−4 °F); the air there gets to −30 °C (−22 °F)")]
    public void The_sentence_names_the_limit_that_is_passed(string site, string words) =>
        Fails(site: site, part: "ambientMost=50 °C; ambientLeast=-20 °C").Sentence.ShouldContain(words);

    // Worked by hand: 50 − 45 = 5 K.
    [Fact]
    public void The_margin_is_the_distance_to_the_mark() => Meets(site: "airMost=45 °C", part: "ambientMost=50 °C").Margin!.Value.Value.ShouldBe(5, 1e-9);

    [Fact]
    public void Air_that_was_measured_stands_before_what_the_old_motor_was_made_for() => Meets("ambientMost=60 °C", "airMost=45 °C", "ambientMost=50 °C");
}
