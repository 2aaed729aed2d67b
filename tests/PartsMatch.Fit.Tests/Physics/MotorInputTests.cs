using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>Input power against worked examples.</summary>
[Trait("Source", "formula.motorInput")]
public sealed class MotorInputTests
{
    // US DOE, Determining Electric Motor Load and Efficiency: averages 469.67 V, 37 A, 0.7633 give 22.98 kW (inputs from memory, arithmetic worked by hand).
    [Fact]
    public void Three_phases_give_the_input_power_of_the_fact_sheets_example() =>
        MotorInput.Watts((467 + 473 + 469) / 3.0, 37, (0.75 + 0.78 + 0.76) / 3, threePhase: true).ShouldBe(22_976, 10);

    // A published textbook problem: 30 hp, 220 V, 77 A, pf 0.88: √3 × 220 × 77 × 0.88 = 25 820 W.
    [Fact]
    public void Three_phases_give_the_input_power_of_the_textbooks_problem() =>
        MotorInput.Watts(220, 77, 0.88, threePhase: true).ShouldBe(25_820, 1);

    // The same problem goes on: losses of 3357 W leave 22 463 W = 30.1 hp at the shaft, efficiency 0.870 (worked by hand).
    [Fact]
    public void The_textbooks_motor_gives_its_thirty_horsepower_at_an_efficiency_of_0_87() =>
        (MotorInput.ShaftWatts(220, 77, Band.Exactly(0.870), Band.Exactly(0.88), threePhase: true).Middle / 746).ShouldBe(30.1, 0.05);

    // Worked by hand: 1/2 hp at 115 V and 4.0 A would be 373 W of 460 VA, an efficiency times power factor of 0.81.
    [Fact]
    public void A_half_horsepower_motor_on_115_volts_and_4_amps_would_need_a_product_of_0_81() =>
        (373 / MotorInput.VoltAmps(115, 4, threePhase: false)).ShouldBe(0.81, 0.002);

    [Fact]
    public void Shaft_power_is_a_band_from_the_types_bands()
    {
        var watts = MotorInput.ShaftWatts(230, 2.1, new Band(0.35, 0.70), new Band(0.90, 0.98), threePhase: false);
        watts.Low.ShouldBe(230 * 2.1 * 0.35 * 0.90, 1e-9);
        watts.High.ShouldBe(230 * 2.1 * 0.70 * 0.98, 1e-9);
        watts.Holds(0.25 * 746).ShouldBeTrue();
    }

    [Fact]
    public void Figures_that_cannot_be_are_refused()
    {
        Should.Throw<ArgumentOutOfRangeException>(() => MotorInput.Watts(230, 2, 1.1, threePhase: false));
        Should.Throw<ArgumentOutOfRangeException>(() => MotorInput.VoltAmps(0, 2, threePhase: false));
    }
}
