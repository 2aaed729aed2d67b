using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Drawings;

/// <summary>The condensing split on a scale. R-134a at 201.63 psi condenses at 131 °F: the curve's own tests have it.</summary>
public sealed class SplitScaleTests
{
    private const string At131 = "refrigerant=R-134a; condensingPressure=201.63 psi";

    // 131 less 105 °F is 26 °F, under the ceiling of 30 °F: by hand.
    [Fact]
    public void Without_a_design_the_ceiling_is_the_limit()
    {
        var scale = Draw($"{At131}; enteringAir=105 °F").ShouldNotBeNull();
        scale.Marks.Single(mark => mark.Role == Role.New).At.Middle.ShouldBe(26, 0.1);
        scale.Zones.Select(zone => zone.Role).ShouldBe([Role.Good, Role.Bad]);
        scale.Zones[0].Span.High.ShouldBe(30, 1e-9);
        scale.Marks.Select(mark => mark.Label).ShouldContain("ceiling: 30 °F (16.7 K)");
    }

    // 25 % over 20 °F is 25 °F; over 25 °F it is 31.25 °F, above the ceiling, and what lies between them is open: by hand.
    [Theory]
    [InlineData("20 °F", 25, new[] { Role.Good, Role.Bad })]
    [InlineData("25 °F", 31.25, new[] { Role.Good, Role.Open, Role.Bad })]
    public void With_a_design_the_limit_is_25_percent_over_it(string design, double limit, Role[] zones)
    {
        var scale = Draw($"{At131}; enteringAir=107 °F; designSplit={design}")!;
        scale.Zones.Select(zone => zone.Role).ShouldBe(zones);
        scale.Zones[^1].Span.Low.ShouldBe(limit, 1e-9);
        scale.Marks.Single(mark => mark.Label.StartsWith("25 % over", StringComparison.Ordinal)).At.Middle.ShouldBe(limit, 1e-9);
    }

    [Fact]
    public void Glide_is_drawn_as_a_band_from_bubble_to_dew()
    {
        var measured = Draw("refrigerant=R-407C; condensingPressure=280 psi; enteringAir=95 °F")!.Marks.Single(mark => mark.Role == Role.New);
        (measured.At.High - measured.At.Low).ShouldBeGreaterThan(5);
        measured.Label.ShouldStartWith("bubble ");
    }

    [Fact]
    public void The_words_are_the_rule_s()
    {
        var report = Report($"{At131}; enteringAir=105 °F");
        report.Drawings.Single().Words.ShouldBe(report.Readings.Single(check => check.Title == "Condensing split").Sentence);
    }

    [Theory]
    [InlineData("")]
    [InlineData(At131)]
    [InlineData("refrigerant=R-134a; enteringAir=95 °F")]
    [InlineData($"{At131}; enteringAir=140 °F")]
    [InlineData($"{At131}; enteringAir=40 °F; headControlSetting=180 psi")]
    public void Without_a_split_that_means_something_there_is_no_scale(string readings) => Draw(readings).ShouldBeNull();

    /// <summary>The old motor's fan moves the air as the new one's does.</summary>
    [Theory]
    [InlineData($"{At131}; enteringAir=105 °F", 1)]
    [InlineData(At131, 0)]
    public void Before_the_swap_it_is_drawn_from_the_same_readings(string readings, int drawn)
    {
        var before = MotorFamily.Motor.BeforeCondemning(MotorFamily.Motor.ReadNeed(new(null, [], [])).Need, Named.Record<MotorReadings>(readings)).Drawings;
        before.Count.ShouldBe(drawn);
        before.OfType<Scale>().Select(scale => scale.Words).ShouldBe(Report(readings).Drawings.OfType<Scale>().Select(scale => scale.Words));
    }

    // 131 less 96 °F is 35 °F, over the ceiling of 30 °F: by hand.
    [Fact]
    public void Before_the_swap_a_row_says_what_is_drawn_as_too_much()
    {
        var readings = $"{At131}; enteringAir=96 °F";
        var diagnosis = MotorFamily.Motor.BeforeCondemning(MotorFamily.Motor.ReadNeed(new(null, [], [])).Need, Named.Record<MotorReadings>(readings));
        var check = diagnosis.Checks.Single(check => check.Title == "Condensing split");
        check.Verdict.ShouldBe(ReadingVerdict.Bad);
        check.Sentence.ShouldStartWith("The split is 35 °F");
        check.Limit.ShouldBe("at most 30 °F (16.7 K)");
        check.Source.ShouldBe(Report(readings).Readings.Single(after => after.Title == check.Title).Source);
    }

    private static Scale? Draw(string readings)
    {
        var scale = Report(readings).Drawings.OfType<Scale>().SingleOrDefault();
        if (scale is not null)
        {
            scale.Zones[0].Span.Low.ShouldBe(scale.Range.Low);
            scale.Zones[^1].Span.High.ShouldBe(scale.Range.High);
            scale.Zones.Zip(scale.Zones.Skip(1)).ShouldAllBe(pair => pair.First.Span.High.Equals(pair.Second.Span.Low));
            scale.Marks.ShouldAllBe(mark => scale.Range.Holds(mark.At.Low) && scale.Range.Holds(mark.At.High));
        }

        return scale;
    }

    private static AfterSwapReport Report(string readings) =>
        MotorFamily.Motor.AfterSwap(MotorFamily.Motor.ReadNeed(new(null, [], [])).Need, new MotorSpec(), Named.Record<MotorReadings>(readings));
}
