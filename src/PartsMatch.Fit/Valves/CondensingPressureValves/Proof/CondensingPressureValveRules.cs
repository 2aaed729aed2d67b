using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

/// <summary>A condensing-pressure valve and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record CondensingPressureValveCase(HeadNeed Need, CondensingPressureValveReadings Readings, CondensingPressureValveSpec? New = null)
{
    /// <summary>The one the readings were taken at.</summary>
    public CondensingPressureValveSpec Measured => New ?? Need.Plate;

    /// <summary>How it keeps the pressure up; null where not known.</summary>
    internal Arrangement? How => Measured.Arrangement ?? Need.Site.NeedsArrangement;

    /// <summary>The pressure that it is to hold, kPa gauge, or of a differential check valve the difference that opens it: an old one by its plate, or what it was set to where it can be set, a new one by what it is set to; null where not known.</summary>
    internal double? Setting => (New is null ? HeadSetting.SetBefore(Need.Plate, Need.Site) : HeadSetting.SetThere(New, Need.Site)) ?? Rounded.Kilopascal(Need.Site.SettingNeeded);

    /// <summary>The head, kPa gauge; null where not read.</summary>
    internal double? Head => Rounded.Kilopascal(Readings.HeadPressure);

    /// <summary>The pressure of the hot gas before it, kPa gauge; null where not read.</summary>
    internal double? HotGas => Rounded.Kilopascal(Readings.HotGasPressure);

    /// <summary>The pressure at the condenser, before an inlet regulator, kPa gauge; null where not read, or where it is none.</summary>
    internal double? BeforeRegulator => How == Arrangement.InletRegulator ? Rounded.Kilopascal(Readings.CondenserPressure) : null;
}

/// <summary>Is there enough refrigerant to flood with?</summary>
public sealed class ChargeToFlood() : ReadingRule<CondensingPressureValveCase>("Charge", CondensingPressureValveReadingSources.HeadCharge)
{
    /// <inheritdoc/>
    public override Ruling? Judge(CondensingPressureValveCase one) => one.Readings.EnoughCharge switch
    {
        true => Ruling.Good($"There is refrigerant to flood with."),
        false => Ruling.Bad($"There is not enough refrigerant to flood the condenser: find the leak, charge it, and judge the valve after that.").NotThePart(),
        null => one is { How: not Arrangement.DifferentialCheck, Setting: { } setting } && (one.BeforeRegulator ?? one.Head) < setting - HeadLimits.Near - 1e-9 ? Ruling.Read("enoughCharge", "See whether the receiver shows liquid and the sight glass is clear: without enough refrigerant no valve floods a condenser.") : null,
    };
}

/// <summary>Does it hold the head, and let no gas by when it need not?</summary>
/// <remarks>
/// From 10 psi (69 kPa) under its setting on it does not hold; 20 psi (138 kPa) above it no hot gas goes by (practice).
/// A head says nothing of a differential check valve, which opens at a difference. An inlet regulator has such a one beside it: the by-pass is that one's, and the receiver lies lower than the condenser by what that one takes, so that it is told by the pressure before it where that was read.
/// </remarks>
public sealed class HeadHeld() : ReadingRule<CondensingPressureValveCase>("Head and by-pass", CondensingPressureValveReadingSources.HeadHeld)
{
    /// <inheritdoc/>
    public override Ruling? Judge(CondensingPressureValveCase one)
    {
        if (one.How == Arrangement.DifferentialCheck || one.BeforeRegulator is not null) return null;
        if (one.Head is not { } head) return Ruling.Read("headPressure", "Read the head at the receiver or in the liquid line, running steadily.");
        if (one.Setting is not { } setting) return Ruling.CantTell($"The head is {new ShownPressure(head)}; what is to be held is not known.").ThenRead("settingNeeded", "Read the setting on the valve, or in the unit's papers.", Side.Site);
        FormattableString limit = $"{new ShownPressure(setting - HeadLimits.Near)} at least";
        if (head < setting - HeadLimits.Near - 1e-9)
        {
            if (one.How == Arrangement.InletRegulator) return Ruling.CantTell($"The head is {new ShownPressure(head)}, over 10 psi (69 kPa) under the {new ShownPressure(setting)} to be held; the receiver lies lower than the condenser by what the check valve beside it takes.", limit).ThenRead("condenserPressure", "Read the gauge pressure at the condenser, before it: that is what it holds, and the receiver lies lower by what the check valve beside it takes.");
            var low = Ruling.Bad($"The head is {new ShownPressure(head)}, over 10 psi (69 kPa) under the {new ShownPressure(setting)} to be held: {new OrNotSet(one, "it does not hold it")}.", limit);
            return one.Readings.EnoughCharge == true ? WrongBySetting.Judge(one, low) : low;
        }

        if (head <= setting + (2 * HeadLimits.Near) + 1e-9) return RightBySetting.Judge(one, $"The head is {new ShownPressure(head)}; {new ShownPressure(setting)} are to be held.", limit);
        return one.Readings.BypassHot switch
        {
            null => Ruling.CantTell($"The head is {new ShownPressure(head)}, well above the {new ShownPressure(setting)} to be held.").ThenRead("bypassHot", "See by a thermometer whether the by-pass to the receiver is hot: so far above its setting it should let no gas by."),
            true when one.How == Arrangement.InletRegulator => Ruling.CantTell($"The head is {new ShownPressure(head)}, well above its setting, and hot gas goes by: the check valve beside it leaks, or this one throttles the condenser's drain.").ThenRead("condenserPressure", "Read the gauge pressure at the condenser, before it: wide open it takes hardly any of it, and more tells that it throttles."),
            true when one.New is null => WrongBySetting.Judge(one, Ruling.Bad($"The head is {new ShownPressure(head)}, well above the {new ShownPressure(setting)} to be held, and it still lets hot gas by: {new OrNotSet(one, "it is stuck, or its dome has lost its charge")}.")),
            true => Ruling.Bad($"The head is {new ShownPressure(head)}, well above its setting, and it lets hot gas by: see its setting, and which pipe is on which port."),
            false => Ruling.Good($"The head is {new ShownPressure(head)}, above its setting, and it lets no gas by: look for another cause of a high head.").NotThePart(),
        };
    }
}
