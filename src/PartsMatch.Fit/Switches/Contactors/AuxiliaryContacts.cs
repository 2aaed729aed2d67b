using System.Globalization;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>Auxiliary contacts: 1 NO + 1 NC, or none.</summary>
/// <param name="Open">How many close as it pulls in; 0 or more.</param>
/// <param name="Closed">How many open as it pulls in; 0 or more.</param>
public sealed record AuxiliaryContacts(int Open, int Closed) : IHaveTextForm<AuxiliaryContacts>
{
    /// <summary>No auxiliary contact: known, not unknown.</summary>
    public static AuxiliaryContacts None { get; } = new(0, 0);

    /// <inheritdoc/>
    public static TextForm<AuxiliaryContacts> Form { get; } = new AuxiliaryContactsForm();

    private sealed class AuxiliaryContactsForm : TextForm<AuxiliaryContacts>
    {
        /// <summary>No contactor carries more of one kind.</summary>
        private const int Most = 9;

        public override string Expected => "how many close (NO) and open (NC), such as 1 NO + 1 NC, or none";

        public override string Example => "1 NO + 1 NC";

        public override IReadOnlyList<string> Words { get; } =
        [
            "none",
            .. from count in Enumerable.Range(1, 4) from action in (string[])["NO", "NC"] select string.Create(CultureInfo.InvariantCulture, $"{count} {action}"),
            .. from open in Enumerable.Range(1, 3) from closed in Enumerable.Range(1, 3) from between in (string[])[" + ", " "] select string.Create(CultureInfo.InvariantCulture, $"{open} NO{between}{closed} NC"),
        ];

        public override TextReading<AuxiliaryContacts> Read(string text)
        {
            var plain = string.Concat(text.Where(char.IsLetterOrDigit)).ToUpperInvariant();
            if (plain == "NONE") return TextReading<AuxiliaryContacts>.Of(None);
            var (open, closed) = (0, 0);
            var rest = plain.AsSpan();
            while (rest is [>= '1' and <= '9', 'N', 'O' or 'C', ..])
            {
                ref var count = ref rest[2] == 'O' ? ref open : ref closed;
                if (count > 0) break;
                count = rest[0] - '0';
                rest = rest[3..];
            }

            return rest.IsEmpty && open + closed is > 0 and <= Most ? TextReading<AuxiliaryContacts>.Of(new(open, closed))
                : TextReading<AuxiliaryContacts>.Refused(plain.Length == 0 ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
        }

        public override string Write(AuxiliaryContacts value, Units units = Units.AsGiven) => (value.Open, value.Closed) switch
        {
            (0, 0) => "none",
            (var open, 0) => string.Create(CultureInfo.InvariantCulture, $"{open} NO"),
            (0, var closed) => string.Create(CultureInfo.InvariantCulture, $"{closed} NC"),
            var (open, closed) => string.Create(CultureInfo.InvariantCulture, $"{open} NO + {closed} NC"),
        };
    }
}
