using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>
/// 1000 m without derating: NEMA MG 1 14.2, IEC 60034-1 clause 6, published. Above it MG 1 14.4: 10 K less for each 1000 m to 3000 m, or a service factor of 1.15 to 9000 ft: from memory (facts/07).
/// 70 → −10 °F is +17.8 % of density: trade.md; worked by hand, 529.67 / 449.67 °R.
/// </summary>
[Trait("Source", "motor.airDensity")]
public sealed class AirDensityTests : MotorAspectTests<AirDensity>
{
    [Theory]
    [InlineData("999 m", true)]
    [InlineData("1000 m", true)]
    [InlineData("1001 m", false)]
    [InlineData("3280 ft", true)] // 999.7 m
    [InlineData("3284 ft", false)] // 1001.0 m
    public void Up_to_1000_m_nothing_is_asked(string altitude, bool meets) => Asked("", $"altitude={altitude}", "", meets);

    [Theory]
    [InlineData("1999 m", true)]
    [InlineData("2000 m", true)]
    [InlineData("2001 m", false)]
    public void The_maker_s_word_for_a_height_stands(string altitude, bool meets) => Asked("", $"altitude={altitude}", "altitudeMost=2000 m", meets);

    [Fact]
    public void A_maker_s_word_for_less_height_stands_as_well() => Asked("", "altitude=900 m", "altitudeMost=800 m", meets: false);

    [Fact]
    public void With_the_altitude_not_given_nothing_is_asked() => Meets().Caution.ShouldBeNull();

    // 9000 ft is 2743.2 m.
    [Theory]
    [InlineData("1.15", "2743 m", true)]
    [InlineData("1.15", "2744 m", false)]
    [InlineData("1.14", "2743 m", false)]
    [InlineData("1.25", "1500 m", true)]
    public void A_service_factor_of_1_15_makes_up_for_9000_ft(string factor, string altitude, bool meets) => Asked("", $"altitude={altitude}", $"serviceFactor={factor}", meets);

    [Theory]
    [InlineData("", "airMost=40 °C", true)]
    [InlineData("", "airMost=40.1 °C", false)]
    [InlineData("ambientMost=60 °C", "", false)]
    [InlineData("ambientMost=60 °C", "airMost=35 °C", true)]
    public void It_does_so_in_air_up_to_40_degrees(string plate, string air, bool meets) => Asked(plate, $"altitude=2000 m; {air}", "serviceFactor=1.15", meets);

    // 40 °C less 10 K at 2000 m, less 20 K at 3000 m; a motor for 60 °C likewise.
    [Theory]
    [InlineData("altitude=2000 m; airMost=30 °C", "", true)]
    [InlineData("altitude=2000 m; airMost=30.1 °C", "", false)]
    [InlineData("altitude=3000 m; airMost=20 °C", "", true)]
    [InlineData("altitude=3001 m; airMost=10 °C", "", false)]
    [InlineData("altitude=2000 m; airMost=50 °C", "ambientMost=60 °C", true)]
    [InlineData("altitude=2000 m; airMost=50.1 °C", "ambientMost=60 °C", false)]
    [InlineData("altitude=2000 m", "ambientMost=60 °C", false)]
    public void Air_cooler_by_10_K_for_each_1000_m_makes_up_for_the_height(string site, string part, bool meets) => Asked("", site, part, meets);

    [Fact]
    public void A_word_for_more_than_the_standard_s_height_is_not_stretched_by_the_standard() => Asked("", "altitude=2500 m; airMost=20 °C", "altitudeMost=2000 m; serviceFactor=1.15", meets: false);

    // 5000 ft is 1524 m: 5.24 K under 40 °C, 34.8 °C; the shortfall is 524 m of 1000 m. Worked by hand.
    [Fact]
    public void The_question_names_height_and_air()
    {
        var finding = MeetsWith([PlaceChanges.AskAltitude], site: "altitude=5000 ft");
        finding.Changes[0].Text.ShouldBe("ask the maker whether it may run at 1524 m (5000 ft), or see that the air there stays below 34.8 °C (95 °F)");
        finding.Shortfall.ShouldBe(0.524, 1e-9);
        finding.Margin!.Value.Value.ShouldBe(-524, 1e-9);
    }

    [Fact]
    public void Air_of_a_freezer_is_17_8_percent_denser_than_fans_are_rated_in() =>
        Meets(site: "airLeast=-10 °F").Caution.ShouldBe("At −23.3 °C (−10 °F) the air is 17.8 % denser than at 70 °F, and the fan takes so much more power. Amps read while the air is still warm, as in a box that is being pulled down, say too little: read them again once it is cold.");

    // 294.26 K / 1.1 = 267.51 K, −5.6 °C: ten percent denser (practice). At 1000 m the pressure is 0.887 of sea level's, at 300 m 0.965 (ISO 2533): 1.178 times that, 1.045 and 1.136.
    [Theory]
    [InlineData("airLeast=-5.6 °C", false)]
    [InlineData("airLeast=-5.7 °C", true)]
    [InlineData("airLeast=-23.3 °C; altitude=1000 m", false)]
    [InlineData("airLeast=-23.3 °C; altitude=300 m", true)]
    public void Up_to_ten_percent_is_not_spoken_of(string site, bool isSaid) => (Meets(site: site).Caution is not null).ShouldBe(isSaid);

    private static void Asked(string plate, string site, string part, bool meets)
    {
        if (meets) Meets(plate, site, part);
        else MeetsWith([PlaceChanges.AskAltitude], plate, site, part);
    }
}
