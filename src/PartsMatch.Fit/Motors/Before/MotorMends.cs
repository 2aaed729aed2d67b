using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>What killed the old motor and would kill the new one, as far as plate, site and readings show: each a line, in the order in which it is mended.</summary>
internal static class MotorMends
{
    private static readonly SupplyAtLeads Supply = new();
    private static readonly CapacitorUnderLoad Capacitor = new();

    private static readonly IReadOnlyList<Func<MotorCase, MendFirst?>> All =
    [
        one => Supply.Judge(one) is { Verdict: ReadingVerdict.Bad } bad
            ? new("supplyOffTap", bad.Sentence, SupplyAtLeads.IsFarOff(one) ? "See why that motor was on these volts: read plate and meter again, and look whether the supply or the motor was changed." : "Set the tap for the volts that are there, or have the supply mended.", MotorSources.Running) : null,
        Unbalanced,
        one => one is { HasVolts: true, HasLegWithoutCurrent: true, HasLostLeg: false }
            ? new("legWithoutCurrent", FormattableString.Invariant($"{one.Amps[0]:0.###}, {one.Amps[1]:0.###} and {one.Amps[2]:0.###} A: one leg takes no current."), "Look at the contactor pole, the fuse and the joints of that leg, and replace what is open or burnt: a motor on two legs burns.", MotorReadingSources.AmpsUnbalance) : null,
        one => one.Readings.ContactBurnt == true
            ? new("contactBurnt", "A pole of the contactor is burnt.", "Replace the contactor: a burnt pole starves the motor or takes a leg away.", MotorReadingSources.Killers) { Replace = new(ContactorFamily.Contactor, new ContactorSpec(), new ContactorSite()) } : null,
        one => Capacitor.Judge(one) is { Verdict: ReadingVerdict.Bad } bad
            ? new("capacitorBad", bad.Sentence, "Replace the run capacitor; a new motor gets a new one in any case.", CapacitorReadingSources.CapacitorUnderLoad) { Replace = RunCapacitorOf.Motor(one.Need) } : null,
        WrongCapacitor,
        one => one.Need.Site.ShaftPosition == ShaftPosition.Up && one.Need.Plate is { Bearings: Bearings.Sleeve } plate && plate.ShaftPositions?.Contains(ShaftPosition.Up) != true
            ? new("sleeveShaftUp", "Sleeve bearings stand with the shaft up, and nothing says that they are made for it.", "Fit a motor with ball bearings, or with sleeve bearings rated for shaft up.", MotorReadingSources.Killers) : null,
        one => one.Readings.DrainsWrong == true
            ? new("drainsWrong", "A drain hole was open at the top, or the lowest one plugged.", "Open the lowest drain hole of the new motor and plug the others.", MotorReadingSources.Killers) : null,
        one => one.Readings.BladeUnbalanced == true
            ? new("bladeUnbalanced", "The blade is out of balance.", "Clean, straighten or replace the blade: it shakes the bearings out.", MotorReadingSources.Killers) : null,
        one => one.Readings.CoilDirty == true
            ? new("coilDirty", "The coil is dirty.", "Clean the coil: the motor's air is hot and its fan works against it.", MotorReadingSources.Killers) : null,
        one => one.Readings.ShortCycles == true
            ? new("shortCycles", "It is switched on and off every few minutes.", "Mend the control: set its differential, or fit a delay.", MotorReadingSources.Killers) : null,
        one => one.Readings.Control == CircuitState.HighPressureTripped
            ? new("highPressureTripped", "The high-pressure control tripped.", "Find out why it tripped before it is set back: fan, coil, charge, air.", MotorReadingSources.Killers) : null,
    ];

    /// <summary>All that was found.</summary>
    public static IReadOnlyList<MendFirst> Of(MotorCase one) => [.. All.Select(ask => ask(one)).OfType<MendFirst>()];

    private static MendFirst? Unbalanced(MotorCase one)
    {
        if (one.HasVolts != true || one.Volts.Count != 3 || SupplyBalance.Of(one.Volts) is not { Verdict: not ReadingVerdict.Good } ruling) return null;
        if (one.HasLostLeg) return new("legLost", $"{ruling.Sentence} On two legs a winding gets far hotter than it stands.", "Find the open fuse, contactor pole or joint of that leg, and mend it before any motor runs there.", MotorReadingSources.VoltsUnbalance);

        // Twice the square holds for a few percent only.
        var percent = Unbalance.Percent(one.Volts[0], one.Volts[1], one.Volts[2]);
        var heat = Within.AtMost(percent, SupplyBalance.MostPercent)
            ? FormattableString.Invariant($"about {Unbalance.AddedRisePercent(percent):0} % hotter by that")
            : "far hotter by that than it stands";
        return new("supplyUnbalanced", $"{ruling.Sentence} Its winding gets {heat}.", "Balance the legs: look at contactor poles, loose terminals, and single-phase loads on one leg.", MotorReadingSources.AddedRise);
    }

    /// <summary>The one that is there is marked for another µF than the plate asks for.</summary>
    private static MendFirst? WrongCapacitor(MotorCase one)
    {
        if (FanSection.AskedBy(one.Need.Plate) is not { } asked || one.Need.Site.CapacitorThere is not { IsNone: false } there) return null;
        var marked = FanSection.Of(there, asked)!.Value.Microfarads;
        var right = asked.Microfarads;
        return Within.AtMost(Math.Abs(marked - right) / right * 100, MeasuredCapacitor.UsualPercent) ? null
            : new("capacitorWrong", FormattableString.Invariant($"The capacitor there is marked {marked:0.##} µF; the motor's plate asks for {right:0.##} µF ±{MeasuredCapacitor.UsualPercent} %."), "Fit the run capacitor of the motor's own plate.", CapacitorSources.RunCapacitor) { Replace = RunCapacitorOf.Motor(one.Need) };
    }
}
