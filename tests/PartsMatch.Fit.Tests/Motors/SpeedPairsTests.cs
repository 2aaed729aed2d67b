using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>Practice: highest with highest, then nearest speeds downwards; poles only where each speed has a winding of its own.</summary>
public sealed class SpeedPairsTests
{
    [Theory]
    [InlineData("1725/1140 rpm", "1725/1140 rpm", "low:1140")]
    [InlineData("1725/1140 rpm", "1725/1500/1140 rpm", "low:1140")]
    [InlineData("1725/1140 rpm", "1140/1725 rpm", "low:1140")]
    [InlineData("1075/950/850 rpm", "1075/900/700 rpm", "medium:900 low:700")]
    [InlineData("1075/950/850/725 rpm", "1075/950/850/725 rpm", "speed 2:950 speed 3:850 low:725")]

    // 860 is nearest to 855, but then nothing would be left for 850.
    [InlineData("1075/860/850 rpm", "1075/900/855 rpm", "medium:900 low:855")]
    [InlineData("1075/950/850 rpm", "1075/850 rpm", "medium:850 low:")]
    [InlineData("1725/1140 rpm", "1725 rpm", "low:")]
    [InlineData("1725 rpm", "1725/1140 rpm", "")]
    public void Each_lower_speed_in_use_is_served_by_the_nearest(string old, string part, string pairs) => Pairs($"speed={old}", "speedsUsed=4", $"speed={part}").ShouldBe(pairs);

    [Theory]
    [InlineData("", "")]
    [InlineData("speedsUsed=1", "")]
    [InlineData("speedsUsed=2", "medium:950")]
    [InlineData("speedsUsed=3", "medium:950 low:850")]
    [InlineData("speedsUsed=5", "medium:950 low:850")]
    public void As_many_pair_as_are_used(string site, string pairs) => Pairs("speed=1075/950/850 rpm", site, "speed=1075/950/850 rpm").ShouldBe(pairs);

    // At 60 Hz 1010 and 1170 rpm are of 6 poles and 890 of 8: 890 is nearer to 1010.
    [Theory]
    [InlineData("separate windings", "separate windings", "low:1170")]
    [InlineData("separate windings", "tapped", "low:890")]
    [InlineData("tapped", "tapped", "low:890")]
    public void Poles_count_only_between_separate_windings(string old, string part, string pairs) =>
        Pairs($"speed=1725/1010 rpm; speedMeans={old}", "speedsUsed=2; supplyFrequency=60 Hz", $"speed=1725/1170/890 rpm; speedMeans={part}").ShouldBe(pairs);

    [Fact]
    public void A_faster_speed_never_serves_a_slower_one() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(500), Prop.ForAll(
        Speeds.Two().ToArbitrary(),
        two =>
        {
            var rows = SpeedPairs.Of(Need(two.Item1, "speedsUsed=8"), LowerSpeeds.Of(Named.Record<MotorSpec>($"speeds=8; {two.Item2}")), null).Select(pair => pair.Row).ToList();
            var served = rows.OfType<int>().ToList();
            served.ShouldBe(served.Order());
            served.ShouldBeUnique();
            served.Count.ShouldBe(Math.Min(rows.Count, LowerSpeeds.Of(Named.Record<MotorSpec>($"speeds=8; {two.Item2}")).Count));
        }));

    [Fact]
    public void Every_speed_of_a_motor_serves_itself() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(500), Prop.ForAll(
        Speeds.ToArbitrary(),
        speeds => SpeedPairs.Of(Need(speeds, "speedsUsed=8"), LowerSpeeds.Of(Named.Record<MotorSpec>($"speeds=8; {speeds}")), null).ShouldAllBe(pair => pair.Row == pair.OldRow)));

    private static Gen<string> Speeds =>
        from count in Gen.Choose(1, 5)
        from rpm in Gen.Choose(40, 175).ArrayOf(count)
        select $"speed={string.Join('/', rpm.Select(one => one * 10))} rpm";

    private static Need<MotorSpec, MotorSite> Need(string plate, string site) => new(Named.Record<MotorSpec>($"speeds=8; {plate}"), Named.Record<MotorSite>(site));

    private static string Pairs(string plate, string site, string part)
    {
        var motor = Named.Record<MotorSpec>($"speeds=8; {part}");
        var lower = LowerSpeeds.Of(motor);
        return string.Join(' ', SpeedPairs.Of(Need(plate, site), lower, motor.SpeedMeans).Select(pair => FormattableString.Invariant($"{pair.Name.Word}:{(pair.Row is { } row ? lower[row].Rpm : null)}")));
    }
}
