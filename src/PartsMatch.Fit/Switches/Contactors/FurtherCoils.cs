using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>A coil by itself, that a body takes besides the one it comes with.</summary>
/// <param name="Volts">Its volts.</param>
/// <param name="Frequency">Its frequencies; null where not said.</param>
/// <param name="Number">Its part number.</param>
public sealed record FurtherCoil(Spread<ElectricPotential> Volts, Figures<Frequency>? Frequency, string Number);

/// <summary>Coils that a body takes: 24 V 50/60 Hz AB-1, 208-240 V 60 Hz AB-2. Equal when the same coils stand in the same order.</summary>
public sealed class FurtherCoils : IHaveTextForm<FurtherCoils>, IEquatable<FurtherCoils>
{
    private readonly FurtherCoil[] all;

    /// <summary>Keeps the coils in the order given.</summary>
    public FurtherCoils(params IEnumerable<FurtherCoil> coils) => all = [.. coils];

    /// <inheritdoc/>
    public static TextForm<FurtherCoils> Form { get; } = new FurtherCoilsForm();

    /// <summary>The coils.</summary>
    public IReadOnlyList<FurtherCoil> All => all;

    /// <inheritdoc/>
    public bool Equals(FurtherCoils? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FurtherCoils);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var coil in all) hash.Add(coil);
        return hash.ToHashCode();
    }

    private sealed class FurtherCoilsForm : TextForm<FurtherCoils>
    {
        /// <summary>No body takes more; a longer list is a slip.</summary>
        private const int Most = 12;

        private const int LongestNumber = 40;

        private static readonly TextForm<Figures<Spread<ElectricPotential>>> Volts = TextForms.Of<Figures<Spread<ElectricPotential>>>();

        private static readonly TextForm<Figures<Frequency>> Hertz = TextForms.Of<Figures<Frequency>>();

        public override string Expected => "volts, hertz and part number of each coil, with commas, such as 24 V 50/60 Hz AB-1, 120 V 60 Hz AB-2";

        public override string Example => "24 V 50/60 Hz AB-1, 120 V 60 Hz AB-2";

        public override TextReading<FurtherCoils> Read(string text)
        {
            var coils = new List<FurtherCoil>();
            foreach (var one in text.Split(',', StringSplitOptions.TrimEntries))
            {
                if (coils.Count == Most || ReadOne(one) is not { } coil) return TextReading<FurtherCoils>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
                coils.Add(coil);
            }

            return TextReading<FurtherCoils>.Of(new(coils));
        }

        public override string Write(FurtherCoils value, Units units = Units.AsGiven) => string.Join(", ", value.all.Select(coil =>
            $"{Volts.Write(new(coil.Volts))} {(coil.Frequency is { } frequency ? $"{Hertz.Write(frequency)} " : string.Empty)}{coil.Number}"));

        private static FurtherCoil? ReadOne(string text)
        {
            var volts = text.IndexOfAny(['V', 'v']);
            if (volts < 0 || Volts.Read(text[..(volts + 1)]) is not { IsRead: true, Value: { Count: 1 } read }) return null;
            var rest = text[(volts + 1)..].Trim();
            var hertz = rest.IndexOf("Hz", StringComparison.OrdinalIgnoreCase);
            var frequency = hertz > 0 ? Hertz.Read(rest[..(hertz + 2)]) : default;
            var number = frequency is { IsRead: true, Value: not null } ? rest[(hertz + 2)..].Trim() : rest;
            return number.Length is > 0 and <= LongestNumber ? new(read[0], frequency.Value, number) : null;
        }
    }
}
