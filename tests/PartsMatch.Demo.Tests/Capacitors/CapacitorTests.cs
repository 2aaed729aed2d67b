using PartsMatch.Fit.Capacitors;

namespace PartsMatch.Demo.Tests.Capacitors;

public sealed class CapacitorTests
{
    private static readonly IReadOnlyList<SeedPart<CapacitorSpec>> All = SeedData.Capacitors;

    [Fact]
    public void There_are_200_of_run_and_start_single_and_dual()
    {
        All.Count.ShouldBe(200);
        All.Count(part => part.Spec.Rating!.SecondSection is not null).ShouldBeInRange(30, 70);
        All.Count(part => part.Spec.Duty == CapacitorDuty.Start).ShouldBeInRange(10, 30);
        All.Count(part => part.Spec.Can == CanShape.Oval).ShouldBeInRange(30, 90);
    }

    /// <summary>Published: run capacitors of 370 and 440 V in North America, mostly 400 and 450 V in Europe. Start capacitors have lower volts (practice).</summary>
    [Fact]
    public void Run_capacitors_have_the_voltage_classes_of_the_trade()
    {
        var run = All.Where(part => part.Spec.Duty == CapacitorDuty.Run).Select(part => part.Spec.Rating!.Volts!.Value.Volts).ToList();

        run.Distinct().Order().ShouldBe([370, 400, 440, 450]);
        All.Where(part => part.Spec.Duty == CapacitorDuty.Start).ShouldAllBe(part => part.Spec.Rating!.Volts!.Value.Volts < 350);
    }

    [Fact]
    public void A_dual_ones_fan_section_is_the_smaller() =>
        All.Where(part => part.Spec.Rating!.SecondSection is not null).ShouldAllBe(part => part.Spec.Rating!.SecondSection!.Value.Microfarads < part.Spec.Rating.Capacitance!.Value.Microfarads);

    /// <summary>Published: 6 % is usual in air conditioning; 5 and 10 % are preferred by IEC 60252-1 (memory).</summary>
    [Fact]
    public void Tolerances_are_5_6_or_10_percent() =>
        All.Where(part => part.Spec.Tolerance is not null).Select(part => part.Spec.Tolerance!.Value.Percent).Distinct().Order().ShouldBe([5, 6, 10]);

    [Fact]
    public void One_in_ten_to_one_in_four_lacks_something() =>
        All.Count(part => part.Spec.Height is null || part.Spec.IsProtected is null || part.Spec.TemperatureMost is null || part.Spec.Tolerance is null).ShouldBeInRange(20, 50);

    [Fact]
    public void Common_motor_capacitors_are_there_several_times_over()
    {
        foreach (var text in (string[])["5 µF 370 V", "7.5 µF 440 V", "10 µF 370 V"]) All.Count(part => part.Row["rating"] == text).ShouldBeGreaterThanOrEqualTo(2, text);
    }
}
