using System.Collections;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Coils;

/// <summary>What drives a coil.</summary>
public enum CoilCurrent
{
    /// <summary>Alternating current.</summary>
    [Words("AC", "VAC", "ALTERNATING")]
    Alternating,

    /// <summary>Direct current.</summary>
    [Words("DC", "VDC", "DIRECT CURRENT")]
    Direct,
}

/// <summary>A further coil that a body takes.</summary>
/// <param name="Volts">Its volts.</param>
/// <param name="Frequency">Its frequencies; null for one for direct current, and where they are not given.</param>
/// <param name="Current">What drives it.</param>
/// <param name="Number">Its part number.</param>
/// <param name="Va">What it takes as it holds; null where it is not given.</param>
public sealed record CoilOffer(Spread<ElectricPotential> Volts, Figures<Frequency>? Frequency, CoilCurrent Current, string Number, ElectricApparentPower? Va);

/// <summary>Coils that a body takes besides the one on it, each with its part number: 24 V 50/60 Hz 10 VA = QC-24; 120 V 60 Hz = QC-120.</summary>
public sealed class CoilOffers : IReadOnlyList<CoilOffer>, IEquatable<CoilOffers>, IHaveTextForm<CoilOffers>
{
    private readonly CoilOffer[] all;

    /// <summary>Keeps the coils in the order given.</summary>
    public CoilOffers(params IEnumerable<CoilOffer> coils) => all = [.. coils];

    /// <inheritdoc/>
    public static TextForm<CoilOffers> Form { get; } = new CoilOffersForm();

    /// <inheritdoc/>
    public int Count => all.Length;

    /// <inheritdoc/>
    public CoilOffer this[int index] => all[index];

    /// <inheritdoc/>
    public bool Equals(CoilOffers? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CoilOffers);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var one in all) hash.Add(one);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<CoilOffer> GetEnumerator() => ((IEnumerable<CoilOffer>)all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

/// <summary>Further coils: volts, frequencies or DC, holding VA where they are given, an equals sign, the number; semicolons between.</summary>
internal sealed class CoilOffersForm : TextForm<CoilOffers>
{
    private const int MostCoils = 12;
    private const int LongestNumber = 40;

    private static readonly SpreadsForm<ElectricPotential> Volts = new(QuantityForms.Volts, "208-240 V", widestRatio: 1.25);
    private static readonly FiguresForm<Frequency> Hertz = new(QuantityForms.Hertz, "50/60 Hz");

    public override string Expected => "coils with their part numbers and semicolons between, such as 24 V 50/60 Hz 10 VA = QC-24; 12 V DC = QC-12";

    public override string Example => "24 V 50/60 Hz 10 VA = QC-24";

    public override TextReading<CoilOffers> Read(string text)
    {
        List<CoilOffer> coils = [];
        foreach (var one in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (ReadOne(one) is not { } coil) return TextReading<CoilOffers>.Refused($"“{one}” is not a coil with its number; write {Expected}");
            coils.Add(coil);
        }

        if (coils.Count == 0) return TextReading<CoilOffers>.Refused("nothing is written");
        return coils.Count <= MostCoils ? TextReading<CoilOffers>.Of(new(coils)) : TextReading<CoilOffers>.Refused($"there are more than {MostCoils} coils");
    }

    public override string Write(CoilOffers value, Units units = Units.AsGiven) => string.Join("; ", value.Select(coil => $"{Marking(coil)} = {coil.Number}"));

    private static string Marking(CoilOffer coil) =>
        $"{Volts.Write(new(coil.Volts))}{(coil.Current == CoilCurrent.Direct ? " DC" : coil.Frequency is { } frequency ? $" {Hertz.Write(frequency)}" : string.Empty)}{(coil.Va is { } va ? $" {QuantityForms.VoltAmperes.Write(va)}" : string.Empty)}";

    private static CoilOffer? ReadOne(string text)
    {
        var equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals < 0) return null;
        var (marking, number) = (text[..equals].Trim(), text[(equals + 1)..].Trim());
        if (number.Length is 0 or > LongestNumber) return null;
        ElectricApparentPower? va = null;
        if (marking.EndsWith("VA", StringComparison.OrdinalIgnoreCase))
        {
            var start = marking[..^2].TrimEnd().AsSpan().TrimEnd("0123456789.,").Length;
            if (QuantityForms.VoltAmperes.Read(marking[start..]) is not { IsRead: true, Value: var power }) return null;
            va = power;
            marking = marking[..start].Trim();
        }

        var isDirect = marking.EndsWith("DC", StringComparison.OrdinalIgnoreCase);
        if (isDirect) marking = marking[..^2].Trim();
        var unit = marking.IndexOf('V', StringComparison.OrdinalIgnoreCase);
        if (unit < 0) return null;
        var volts = Volts.Read(isDirect && unit == marking.Length - 1 ? marking : marking[..(unit + 1)]);
        if (!volts.IsRead || volts.Value.Count != 1) return null;
        var rest = marking[(unit + 1)..].Trim();
        if (rest.Length == 0) return new(volts.Value[0], null, isDirect ? CoilCurrent.Direct : CoilCurrent.Alternating, number, va);
        var hertz = Hertz.Read(rest);
        return hertz.IsRead && !isDirect ? new(volts.Value[0], hertz.Value, CoilCurrent.Alternating, number, va) : null;
    }
}
