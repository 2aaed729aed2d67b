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
    public static TextForm<PilotDuty> Form { get; } = new PilotDutyForm();

    /// <summary>The greatest volts.</summary>
    public double MostVolts => double.Parse(Designation[1..], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>VA that it opens, from 120 V up.</summary>
    public double BreakVa => PilotDuties.Of(Designation)[0].BreakVa;

    /// <summary>VA that it closes on, from 120 V up.</summary>
    public double MakeVa => PilotDuties.Of(Designation)[0].MakeVa;

    /// <summary>The share of its VA that is left at some volts: all from 120 V up, less below.</summary>
    internal static double ShareAt(double volts) => Math.Min(1, volts / AmpsStayBelow);

    private sealed class PilotDutyForm : TextForm<PilotDuty>
    {
        public override string Expected => $"one of: {string.Join(", ", PilotDuties.Designations)}";

        public override string Example => "A300";

        public override IReadOnlyList<string> Choices => PilotDuties.Designations;

        public override IReadOnlyList<string> Words => PilotDuties.Designations;

        public override TextReading<PilotDuty> Read(string text)
        {
            var plain = string.Concat(text.Where(char.IsLetterOrDigit)).ToUpperInvariant();
            return PilotDuties.Designations.Contains(plain) ? TextReading<PilotDuty>.Of(new(plain))
                : TextReading<PilotDuty>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
        }

        public override string Write(PilotDuty value, Units units = Units.AsGiven) => value.Designation;
    }
}
