using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Practice: same pole count and speed within a few percent, here 5 %, while the blade stays and drives directly.</summary>
[Trait("Source", "motor.speed")]
public sealed class SpeedTests : MotorAspectTests<Speed>
{
    private const string Direct = "bladeStays=yes; drive=direct";

    [Theory]
    [InlineData("1000 rpm", "950 rpm")]
    [InlineData("1000 rpm", "1050 rpm")]
    [InlineData("1075 rpm", "1100 rpm")]
    [InlineData("1050 rpm", "1075 rpm")]
    public void Within_5_percent_meets_edges_included(string old, string speed) => Meets(plate: $"speed={old}", site: Direct, part: $"speed={speed}");

    [Theory]
    [InlineData("1000 rpm", "949 rpm", "95 % of the air")]
    [InlineData("1000 rpm", "1051 rpm", "1.16 times the power")]

    // Worked by hand: (1140 / 1075)³ = 1.19, and (1725 / 1140)³ = 3.46.
    [InlineData("1075 rpm", "1140 rpm", "1.19 times the power")]
    [InlineData("1140 rpm", "1725 rpm", "3.46 times the power")]
    [InlineData("1075 rpm", "825 rpm", "77 % of the air")]
    public void Beyond_5_percent_fails_and_the_sentence_says_what_it_would_come_to(string old, string speed, string says) =>
        Fails(plate: $"speed={old}", site: Direct, part: $"speed={speed}").Sentence.ShouldContain(says);

    [Fact]
    public void Another_speed_waits_for_the_drive_and_is_open_to_a_new_blade()
    {
        Unknown(Side.Site, "drive", plate: "speed=1075 rpm", part: "speed=1725 rpm").Shortfall.ShouldBeGreaterThan(1);
        MeetsWith([SupplyChanges.MatchBlade], plate: "speed=1075 rpm", site: "bladeStays=no", part: "speed=1725 rpm");
        MeetsWith([SupplyChanges.ChangeSheave], plate: "speed=1075 rpm", site: "bladeStays=yes; drive=belt", part: "speed=1725 rpm");
        Meets(plate: "speed=1075 rpm", part: "speed=1075 rpm");
    }

    // Practice: such motors carry the fan on their shaft, and the blade is taken to stay until somebody says that it goes.
    [Theory]
    [InlineData("type=PSC")]
    [InlineData("type=shaded pole")]
    [InlineData("enclosure=TEAO")]
    [InlineData("mounts=belly band")]
    public void A_fan_motor_of_another_speed_fails_where_nothing_is_said_of_blade_and_drive(string kind)
    {
        Fails(plate: $"speed=1075 rpm; {kind}", part: "speed=1550 rpm");
        MeetsWith([SupplyChanges.MatchBlade], plate: $"speed=1075 rpm; {kind}", site: "newBladeDiameter=18 in", part: "speed=1550 rpm");
    }

    [Fact]
    public void Poles_stand_in_for_a_speed_that_is_not_given()
    {
        const string site = "supplyFrequency=60 Hz; " + Direct;
        Fails(plate: "speed=1075 rpm", site: site, part: "type=PSC; poles=8");
        Unknown(Side.Part, "speed", plate: "speed=1075 rpm", site: site, part: "type=PSC; poles=6");
        Unknown(Side.Plate, "speed", plate: "type=PSC; poles=6", site: site, part: "speed=1075 rpm");
        Fails(plate: "type=PSC; poles=6", site: site, part: "speed=1725 rpm");
    }

    [Fact]
    public void Where_poles_and_speed_of_the_old_motor_contradict_one_another_a_part_must_suit_both()
    {
        const string plate = "type=PSC; poles=4; speed=1075 rpm";
        const string site = "supplyFrequency=60 Hz; " + Direct;
        Fails(plate: plate, site: site, part: "speed=1075 rpm").Sentence.ShouldContain("1512 to 1800 rpm"); // worked by hand: 0.84 × 1800
        Fails(plate: plate, site: site, part: "speed=1725 rpm").Sentence.ShouldContain("1075 rpm");
    }

    [Fact]
    public void Poles_of_an_electronically_commutated_motor_say_nothing_of_its_speed() =>
        Unknown(Side.Part, "speed", plate: "speed=1075 rpm", site: "supplyFrequency=60 Hz; " + Direct, part: "type=ECM; poles=8");

    [Fact]
    public void The_low_speed_of_a_tapped_winding_is_no_pole_count_and_further_off_it_is_checked()
    {
        const string plate = "speed=1075/900 rpm; frequency=60 Hz; type=PSC; speedMeans=tapped";
        Meets(plate: plate, site: Direct, part: "speed=1075/875 rpm; frequency=60 Hz; type=PSC; speedMeans=tapped");
        MeetsWith([SupplyChanges.CheckLowSpeed], plate: plate, site: Direct, part: "speed=1075/850 rpm; frequency=60 Hz; type=PSC; speedMeans=tapped")
            .Changes[0].Text.ShouldBe("see what low comes to: this motor is rated 850 rpm there, the old one was for 900 rpm");
    }

    [Theory]
    [InlineData("1725/950 rpm", true)]
    [InlineData("1725/1050 rpm", true)]
    [InlineData("1725/949 rpm", false)]
    [InlineData("1725/1051 rpm", false)]
    public void Between_windings_of_their_own_low_is_held_to_the_same_5_percent(string speed, bool isSame)
    {
        var (plate, part) = ("speed=1725/1000 rpm; speedMeans=separate windings", $"speed={speed}; speedMeans=separate windings");
        if (isSame) Meets(plate, Direct, part);
        else Fails(plate, Direct, part).Sentence.ShouldStartWith("On low, 1000 rpm: ");
    }

    // Worked by hand: 850 of 1140 rpm is 25.4 % less: eight poles in place of six.
    [Fact]
    public void Another_pole_count_on_low_fails_a_tap_is_checked_and_which_of_them_it_is_decides()
    {
        const string plate = "speed=1725/1140 rpm; frequency=60 Hz";
        const string part = "speed=1725/850 rpm; frequency=60 Hz";
        Fails($"{plate}; speedMeans=separate windings", Direct, $"{part}; speedMeans=separate windings").Sentence.ShouldBe("On low, 1140 rpm: 850 rpm in place of 1140 rpm is 25.4 % off, and 5 % is the limit.");
        Unknown(Side.Plate, "speedMeans", plate, Direct, part);
        Unknown(Side.Part, "speedMeans", $"{plate}; speedMeans=separate windings", Direct, part);
        // A blade of which nothing is said stays.
        Fails($"{plate}; speedMeans=separate windings", part: $"{part}; speedMeans=separate windings");
        MeetsWith([SupplyChanges.CheckLowSpeed], $"{plate}; speedMeans=separate windings", Direct, $"{part}; speedMeans=tapped");
        MeetsWith([SupplyChanges.CheckLowSpeed], $"{plate}; speedMeans=separate windings", "bladeStays=no; drive=direct", $"{part}; speedMeans=separate windings");
    }

    // 1140 × 1140/1725 = 753 rpm: sheaves that keep high keep low as well.
    [Theory]
    [InlineData("1140/753 rpm", true)]
    [InlineData("1140/850 rpm", false)]
    public void Sheaves_chosen_for_high_speed_hold_for_low(string speed, bool isSame)
    {
        var (plate, part) = ("speed=1725/1140 rpm; speedMeans=separate windings", $"speed={speed}; speedMeans=separate windings");
        if (isSame) MeetsWith([SupplyChanges.ChangeSheave], plate, "bladeStays=yes; drive=belt", part);
        else Fails(plate, "bladeStays=yes; drive=belt", part);
    }

    [Fact]
    public void A_low_speed_that_the_part_does_not_give_is_asked_for() =>
        Unknown(Side.Part, "speed", plate: "speed=1725/1140 rpm", part: "speed=1725 rpm; speeds=2").Sentence.ShouldBe("On low, 1140 rpm: the part's speed is not given.");

    [Fact]
    public void Of_three_speeds_two_serve_and_the_third_is_capped() =>
        MeetsWith([SupplyChanges.CapSpeedLeads], plate: "speed=1075/850 rpm; frequency=60 Hz", site: Direct, part: "speed=1075/950/850 rpm; frequency=60 Hz; speedMeans=tapped");

    [Fact]
    public void The_row_of_the_sites_frequency_counts()
    {
        const string part = "speed=900/1075 rpm; frequency=50/60 Hz; type=PSC";
        Meets(plate: "speed=1075 rpm; frequency=60 Hz", site: Direct, part: part);
        Fails(plate: "speed=1075 rpm", site: "supplyFrequency=50 Hz; " + Direct, part: part);
        Unknown(Side.Site, "supplyFrequency", plate: "speed=1075 rpm", site: Direct, part: part);
        Unknown(Side.Plate, "frequency", plate: "speed=900/1075 rpm", site: "supplyFrequency=60 Hz; " + Direct, part: "speed=1075 rpm; speeds=2");
        Unknown(Side.Part, "frequency", plate: "speed=1075 rpm", site: "supplyFrequency=60 Hz; " + Direct, part: "speed=900/1075 rpm");
    }

    [Fact]
    public void Fewer_speeds_than_are_used_fail() => Fails(plate: "speed=1075 rpm", site: "speedsUsed=2", part: "speed=1075 rpm; speeds=1");

    [Fact]
    public void Fewer_speeds_than_the_old_motor_had_wait_for_how_many_are_used()
    {
        Unknown(Side.Site, "speedsUsed", plate: "speed=1725 rpm; speeds=2", part: "speed=1725 rpm; speeds=1");
        Unknown(Side.Part, "speeds", plate: "speed=1725/1140 rpm", part: "speed=1725 rpm");
        Meets(plate: "speed=1725/1140 rpm", site: "speedsUsed=1", part: "speed=1725 rpm; speeds=1");
    }

    [Fact]
    public void Speeds_that_a_plate_rates_one_by_one_are_taken_to_be_in_use()
    {
        Fails(plate: "speed=1725/1140 rpm", part: "speed=1725 rpm; speeds=1").Sentence.ShouldBe("2 speeds are used, and the motor has 1: it serves only where the controls use no more.");
        Meets(plate: "speed=1725/1140 rpm", site: "speedsUsed=1", part: "speed=1725 rpm; speeds=1");
    }

    [Fact]
    public void More_speeds_than_are_used_are_capped()
    {
        var finding = MeetsWith([SupplyChanges.CapSpeedLeads], plate: "speed=1075 rpm; speeds=1", part: "speed=1075 rpm; speeds=3");
        finding.Changes[0].Text.ShouldBe("cap the unused speed leads one by one: it has 3 speeds");
        MeetsWith([SupplyChanges.CapSpeedLeads], plate: "speed=1075 rpm; speeds=3", site: "speedsUsed=1", part: "speed=1075 rpm; speeds=3");
        Meets(plate: "speed=1075 rpm; speeds=3", part: "speed=1075 rpm; speeds=3");
    }

    [Fact]
    public void A_tap_in_place_of_a_winding_of_its_own_is_checked_on_low() =>
        MeetsWith([SupplyChanges.CheckLowSpeed], plate: "speed=1725/1140 rpm; speedMeans=separate windings", part: "speed=1725/1500 rpm; frequency=60 Hz; speedMeans=tapped winding");

    [Fact]
    public void A_speed_that_nobody_gives_is_unknown()
    {
        Unknown(Side.Part, "speed", plate: "speed=1075 rpm");
        Unknown(Side.Plate, "speed", part: "speed=1075 rpm");
    }

    [Fact]
    public void Two_speeds_within_5_percent_are_of_one_pole_count_up_to_8_poles()
    {
        // Derived: the slowest of p poles, 16 % under 120 f / p, against the fastest of p + 2.
        foreach (var poles in (int[])[2, 4, 6])
        {
            var slowest = PoleCounts.Synchronous(poles, 60) * (1 - PoleCounts.MostSlip);
            (slowest / PoleCounts.Synchronous(poles + 2, 60)).ShouldBeGreaterThan(1.05);
        }
    }
}
