using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Published: NEMA MG 1 12.44, ±5 % of rated frequency: 57 to 63 Hz and 47.5 to 52.5 Hz.</summary>
[Trait("Source", "motor.supplyFrequency")]
public sealed class SupplyFrequencyTests : MotorAspectTests<SupplyFrequency>
{
    [Theory]
    [InlineData("60 Hz", "57 Hz")]
    [InlineData("60 Hz", "63 Hz")]
    [InlineData("50 Hz", "47.5 Hz")]
    [InlineData("50 Hz", "52.5 Hz")]
    [InlineData("50/60 Hz", "50 Hz")]
    [InlineData("50/60 Hz", "60 Hz")]
    [InlineData("60 Hz", "60 Hz")]
    public void Within_5_percent_meets_edges_included(string rated, string supply) => Meets(site: $"supplyFrequency={supply}", part: $"frequency={rated}");

    [Theory]
    [InlineData("60 Hz", "56.99 Hz")]
    [InlineData("60 Hz", "63.01 Hz")]
    [InlineData("60 Hz", "50 Hz")]
    [InlineData("50 Hz", "60 Hz")]
    [InlineData("50/60 Hz", "55 Hz")]
    public void Beyond_5_percent_fails(string rated, string supply) => Fails(site: $"supplyFrequency={supply}", part: $"frequency={rated}");

    [Fact]
    public void The_sentence_names_the_limit() =>
        Fails(site: "supplyFrequency=50 Hz", part: "frequency=60 Hz").Sentence.ShouldBe("The supply is 50 Hz; rated for 60 Hz, it takes 57 to 63 Hz.");

    [Fact]
    public void The_old_motors_frequency_is_the_supplys() => Fails(plate: "frequency=50 Hz", part: "frequency=60 Hz");

    [Fact]
    public void A_supply_that_is_not_known_leaves_a_60_hertz_motor_open_but_not_one_for_both()
    {
        Unknown(Side.Site, "supplyFrequency", plate: "frequency=50/60 Hz", part: "frequency=60 Hz").Shortfall.ShouldBe(0.5);
        Unknown(Side.Site, "supplyFrequency", part: "frequency=60 Hz").Shortfall.ShouldBe(0);
        Meets(part: "frequency=50/60 Hz");
    }

    [Fact]
    public void A_part_without_a_frequency_is_unknown() => Unknown(Side.Part, "frequency", site: "supplyFrequency=60 Hz");

    [Fact]
    public void Half_way_between_easy_and_the_limit_is_a_shortfall_of_a_half() =>
        Meets(site: "supplyFrequency=62.1 Hz", part: "frequency=60 Hz").Shortfall.ShouldBe(0.5, 1e-9); // worked by hand: 3.5 % between 2 % and 5 %
}
