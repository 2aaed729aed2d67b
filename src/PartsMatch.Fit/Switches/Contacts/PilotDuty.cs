using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>A pilot-duty designation: what coils a contact switches. The letter is the class of current, the number the greatest volts.</summary>
/// <param name="Designation">One of the published designations: A300.</param>
public sealed record PilotDuty(string Designation) : IHaveTextForm<PilotDuty>
{
    /// <summary>Below it the amps stay, above it the VA (NEMA ICS 5, from memory).</summary>
    private const double AmpsStayBelow = 120;

    /// <inheritdoc/>
    public static TextForm<PilotDuty> Form { get; } = new DesignationForm<PilotDuty>(PilotDuties.Designations, "A300", one => new(one), duty => duty.Designation);

    /// <summary>The greatest volts.</summary>
    public double MostVolts => double.Parse(Designation[1..], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>VA that it opens, from 120 V up.</summary>
    public double BreakVa => PilotDuties.Of(Designation)[0].BreakVa;

    /// <summary>VA that it closes on, from 120 V up.</summary>
    public double MakeVa => PilotDuties.Of(Designation)[0].MakeVa;

    /// <summary>The share of its VA that is left at some volts: all from 120 V up, less below.</summary>
    internal static double ShareAt(double volts) => Math.Min(1, volts / AmpsStayBelow);

    /// <summary>The weakest designation that goes up to some volts: what it does, any contact with a pilot duty does; null where none goes as high.</summary>
    internal static PilotDuty? WeakestAt(double volts) => PilotDuties.Designations.Select(one => new PilotDuty(one)).Where(one => Within.AtMost(volts, one.MostVolts)).MinBy(one => one.BreakVa);
}
