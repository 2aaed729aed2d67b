using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Running;

public sealed class RatedPointTests
{
    /// <summary>Worked by hand, 120 f / p and 16 % of slip (from memory): 694 rpm is of ten poles at 60 Hz, 605 to 720 rpm, and of eight at 50 Hz, 630 to 750; 2910 rpm is of two at 50 Hz, 2520 to 3000, and of none at 60 Hz, where two begin at 3024.</summary>
    [Theory]
    [InlineData("speed=694 rpm; frequency=50/60 Hz", "", "750 720")]
    [InlineData("speed=694 rpm; frequency=50/60 Hz", "supplyFrequency=60 Hz", "720")]
    [InlineData("speed=694 rpm; frequency=50/60 Hz", "supplyFrequency=50 Hz", "750")]
    [InlineData("speed=2910 rpm; frequency=50/60 Hz", "", "3000")]
    [InlineData("speed=2910 rpm; frequency=50/60 Hz", "supplyFrequency=57 Hz", "3000")]
    [InlineData("speed=694 rpm", "supplyFrequency=60 Hz", "720")]
    [InlineData("speed=694 rpm", "", "")]
    [InlineData("speed=694 rpm; frequency=50/60 Hz; poles=12", "", "750 720")] // 500 and 600 rpm are below it
    public void A_speed_at_two_frequencies_is_of_the_poles_that_either_leaves_until_the_supply_is_known(string plate, string site, string synchronous)
    {
        var motor = Named.Record<MotorSpec>($"type=PSC; power=1/3 hp; {plate}");
        var (points, _) = RatedPoint.Possible(RunningFacet.Of(motor), new(motor, Named.Record<MotorSite>(site)));
        string.Join(' ', points.Select(point => point.SynchronousRpm)).ShouldBe(synchronous);
    }
}
