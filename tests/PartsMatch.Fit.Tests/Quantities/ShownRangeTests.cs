using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>Plain English: nothing reaches from a figure to itself. 30 °F is −1.1 °C, 80 °F 26.7 °C.</summary>
public sealed class ShownRangeTests
{
    [Fact]
    public void A_range_is_said_by_both_its_ends()
    {
        ShownRange.Goes(4.0, 110, " min").ToString().ShouldBe("goes from 4 to 110 min");
        ShownRange.AsWell(4.0, 110, " min").ToString().ShouldBe("from 4 to 110 min");
        ShownRange.Set(new ShownTemperature(-10 / 9.0), new ShownTemperature(80 / 3.0)).ToString().ShouldBe("from 30 °F (−1.1 °C) to 80 °F (26.7 °C)");
    }

    [Fact]
    public void A_range_whose_ends_are_written_alike_is_said_as_one_figure()
    {
        ShownRange.Goes(30.0, 30, " min").ToString().ShouldBe("is 30 min");
        ShownRange.AsWell(30.0, 30.01, " min").ToString().ShouldBe("30 min");
        ShownRange.Set(new ShownTemperature(-10 / 9.0), new ShownTemperature(-10 / 9.0)).ToString().ShouldBe("to 30 °F (−1.1 °C)");
    }
}
