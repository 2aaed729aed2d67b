using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Before the old motor comes out: is it the part, and how does it sit there?</summary>
internal static class MotorBeforeSteps
{
    /// <summary>EIA-456-A practice, percent either way.</summary>
    private const double UsualPercent = 6;

    public static IEnumerable<Step> Of(MotorNeed need, MotorSpec part)
    {
        if (SiteAgainstPlate.OffPlate(need) is { } choice && !Within.AtMost(choice.Off, SupplyWindows.FurthestOff))
        {
            yield return new(
                Stage.ProveThePart,
                FormattableString.Invariant($"find out why a {choice.Tap} motor was on {choice.Supply.Volts:0.#} V, before anything else is blamed"),
                "It cannot have run on them. Read plate and meter again; see whether the supply, the tap or the motor was changed, and what the equipment's own plate says.");
        }

        yield return ProveTheMotor(need, part);
        if (FanSection.Of(MotorSteps.CapacitorThere(need), FanSection.AskedBy(need.Plate)) is { } capacitance)
        {
            var microfarads = Rounded.To(capacitance.Microfarads, 2);
            yield return new(
                Stage.ProveThePart,
                FormattableString.Invariant($"measure the {microfarads} µF capacitor: {microfarads * (1 - (UsualPercent / 100)):0.##} to {microfarads * (1 + (UsualPercent / 100)):0.##} µF is good"),
                "With a wire off, so that nothing else is measured. The limits are the usual ±6 %; its own marking stands before them. A weak one stops a good motor.");
        }

        yield return new(
            Stage.NoteWhatIsThere,
            need.Plate.Phase == Phases.Three ? "photograph the wiring, and mark each lead with where it goes and the three lines with their order" : "photograph the wiring, and mark each lead with where it goes, before it comes off",
            "Go by marks and by where a lead ends: the colours of fan motors' leads are makers' custom.");
        if (need.Site.Drive == Drive.Belt)
        {
            yield return new(Stage.NoteWhatIsThere, "write down both sheaves, the belt and how far it gives, and mark where the motor's base sits");
        }
        else if (need.Site.BladeStays != false)
        {
            yield return NoteTheBlade(need);
        }
    }

    private static Step ProveTheMotor(MotorNeed need, MotorSpec part)
    {
        var volts = MotorSteps.VoltsThere(need);
        var live = $"First, before lock-out: with the circuit calling, {(volts is null ? "its volts were" : $"{volts} were")} at its leads, and it did not run as it should. Without volts there, look upstream.";
        return new(
            Stage.ProveThePart,
            "turn it by hand: does it bind? Ohm its windings: is one open, or earthed?",
            MotorType.ElectronicallyCommutated == need.Plate.Type || MotorType.ElectronicallyCommutated == part.Type
                ? $"{live} No insulation tester on an electronically commutated motor: it kills the electronics."
                : live);
    }

    private static Step NoteTheBlade(MotorNeed need)
    {
        var what = need.Site.FanKind == FanKind.BlowerWheel ? "how deep the wheel sits in its housing" : "how deep the blade sits in its ring";
        var given = Rounded.Millimetres(need.Site.BladeDepth) is { } known ? $" ({new Shown(known)} was given)" : string.Empty;
        var turn = MotorSteps.TurnWords(need) is { } words ? $"that it must turn {words}" : "which way it turns, and from which end you look";
        return new(
            Stage.NoteWhatIsThere,
            $"measure {what}{given}, mark its front, and note {turn}",
            "Note what the hub's screw sits on, too. The same turn has opposite names from the two ends.");
    }
}
