using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

/// <summary>Does an inlet regulator hold the pressure before it, and stand open well above that?</summary>
/// <remarks>From 10 psi (69 kPa) under its setting on it does not hold; 20 psi (138 kPa) above it, it is wide open, and takes at most 10 psi (practice). Hot gas that goes by then goes through the check valve beside it.</remarks>
public sealed class RegulatorHeld() : ReadingRule<CondensingPressureValveCase>("Pressure before it", CondensingPressureValveReadingSources.RegulatorHeld)
{
    /// <inheritdoc/>
    public override Ruling? Judge(CondensingPressureValveCase one)
    {
        if (one.BeforeRegulator is not { } before) return null;
        if (one.Head is { } receiver && before < receiver - HeadLimits.Near - 1e-9) return Ruling.CantTell($"The condenser is said to be at {new ShownPressure(before)}, under the {new ShownPressure(receiver)} at the receiver: one of the two gauges is misread.").ThenRead("condenserPressure", "One of the two gauges is misread: read both again, at one time and running steadily.");
        if (one.Setting is not { } setting) return Ruling.CantTell($"The condenser is at {new ShownPressure(before)}; what is to be held is not known.").ThenRead("settingNeeded", "Read the setting on the valve, or in the unit's papers.", Side.Site);
        FormattableString limit = $"{new ShownPressure(setting - HeadLimits.Near)} at least";
        if (before < setting - HeadLimits.Near - 1e-9)
        {
            var low = Ruling.Bad($"The condenser is at {new ShownPressure(before)}, over 10 psi (69 kPa) under the {new ShownPressure(setting)} to be held: {new OrNotSet(one, "it does not hold it")}.", limit);
            return one.Readings.EnoughCharge == true ? WrongBySetting.Judge(one, low) : low;
        }

        return before <= setting + (2 * HeadLimits.Near) + 1e-9 ? RightBySetting.Judge(one, $"The condenser is at {new ShownPressure(before)}; {new ShownPressure(setting)} are to be held.", limit) : Open(one, before, setting);
    }

    private static Ruling Open(CondensingPressureValveCase one, double before, double setting)
    {
        if (one.Head is not { } behind) return Ruling.CantTell($"The condenser is at {new ShownPressure(before)}, well above the {new ShownPressure(setting)} to be held.").ThenRead("headPressure", "Read the gauge pressure at the receiver, behind it: so far above its setting it is wide open, and takes hardly any.");
        FormattableString limit = $"at most 10 psi (69 kPa) across it";
        var across = before - behind;
        if (across > HeadLimits.Near + 1e-9) return WrongBySetting.Judge(one, Ruling.Bad($"The condenser is at {new ShownPressure(before)}, well above the {new ShownPressure(setting)} to be held, and {new ShownPressure(across)} are across it, which is to be wide open: {new OrNotSet(one, "it is stuck")}.", limit));
        return one.Readings.BypassHot == true
            ? Ruling.Good($"The condenser is at {new ShownPressure(before)}, well above its setting, and it is wide open: hot gas goes by through the check valve beside it, which leaks.", limit).NotThePart()
            : Ruling.Good($"The condenser is at {new ShownPressure(before)}, well above its setting, and it is wide open: look for another cause of a high head.", limit).NotThePart();
    }
}
