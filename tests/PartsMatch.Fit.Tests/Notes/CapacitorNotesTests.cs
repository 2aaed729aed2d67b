using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Tests.Notes;

public sealed class CapacitorNotesTests
{
    private const string Can = "rating=45+5 µF 440 V; duty=run; isProtected=yes; temperatureMost=70 °C; can=round; diameter=2 in; height=4 in; frequency=50/60 Hz";

    [Fact]
    public void It_is_discharged_before_anything_else_is_touched()
    {
        var notes = NotesCases.Of("capacitor", Can, "supplyFrequency=60 Hz", Can).Notes;
        notes.Steps.TakeWhile(step => step.Stage == Stage.MakeSafe).Last().ShouldSatisfyAllConditions(
            step => step.Words.ShouldBe("discharge the 45+5 µF 440 V capacitor through 15 kΩ, 5 W, for 4 s at least, then meter it"),
            step => step.Detail!.ShouldContain("the two against each other"));
        notes.Steps.Select(step => step.Stage).ShouldBeInOrder();
        notes.Kit.ShouldContain(item => item.What.StartsWith("resistor for discharging", StringComparison.Ordinal));
    }

    [Fact]
    public void The_old_one_is_measured_against_its_tolerance_and_the_new_one_under_load()
    {
        const string five = "rating=5 µF 370 V; duty=run; isProtected=yes; tolerance=6 %";
        var notes = NotesCases.Of("capacitor", five, "supplyFrequency=60 Hz", five).Notes;
        notes.Steps.ShouldContain(step => step.Words == "measure the old one: 4.7 to 5.3 µF is good");

        // 2π × 60 Hz × 5 µF × 100 V = 0.188 A, worked by hand; facts/08: 0.697 A at 370 V.
        notes.Steps.ShouldContain(step => step.Words.Contains("5 µF take 0.19 A for each 100 V", StringComparison.Ordinal));
    }

    [Fact]
    public void A_single_one_for_two_motors_brings_a_second_with_its_strap()
    {
        var notes = NotesCases.Of("capacitor", Can, "supplyFrequency=60 Hz", NotesCases.With(Can, "rating", "45 µF 440 V")).Notes;
        notes.Single(CapacitorChanges.BringSecond).Stage.ShouldBe(Stage.Wire);
        notes.Kit.Select(item => item.What).ShouldContain("run capacitor, 5 µF, 440 V or more");
        notes.Kit.Select(item => item.What).ShouldContain("strap for the second capacitor");
    }
}
