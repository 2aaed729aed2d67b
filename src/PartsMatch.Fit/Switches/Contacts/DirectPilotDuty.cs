using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>A pilot-duty designation for direct current: what coils for that a contact switches. The letter is the class of current, the number the greatest volts.</summary>
/// <param name="Designation">One of the published designations: R300.</param>
public sealed record DirectPilotDuty(string Designation) : IHaveTextForm<DirectPilotDuty>
{
    /// <summary>Up to it the VA stay, as far as the amps that it carries all day allow; above it the amps are given (NEMA ICS 5).</summary>
    private const double VaStayUpTo = 300;

    /// <inheritdoc/>
    public static TextForm<DirectPilotDuty> Form { get; } = new DesignationForm<DirectPilotDuty>(DirectPilotDuties.Designations, "R300", one => new(one), duty => duty.Designation);

    /// <summary>The greatest volts.</summary>
    public double MostVolts => double.Parse(Designation[1..], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>VA that it closes on and opens at some volts.</summary>
    /// <param name="volts">The volts, V, up to its greatest.</param>
    internal double VaAt(double volts)
    {
        var highest = DirectPilotDuties.Of(Designation)[^1];
        return volts > VaStayUpTo ? highest.Amps * volts : Math.Min(highest.Va, highest.ThermalAmps * volts);
    }

    /// <summary>The weakest designation that goes up to some volts; null where none goes as high.</summary>
    internal static DirectPilotDuty? WeakestAt(double volts) => DirectPilotDuties.Designations.Select(one => new DirectPilotDuty(one)).Where(one => Within.AtMost(volts, one.MostVolts)).MinBy(one => one.VaAt(volts));
}
