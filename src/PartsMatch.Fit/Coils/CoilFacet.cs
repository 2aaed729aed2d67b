using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Coils;

/// <summary>A coil in plain numbers.</summary>
/// <param name="Low">Volts, or the low end of their span.</param>
/// <param name="High">The high end, or the same again.</param>
/// <param name="Current">What drives it; null where it is not given.</param>
/// <param name="Hertz">The frequencies it is made for; empty where they are not given.</param>
/// <param name="Number">Its part number, letter by letter; empty for the coil that comes on the part.</param>
/// <param name="Va">What it takes as it holds, VA; null where it is not given, or is no matter.</param>
public readonly record struct CoilMade(double Low, double High, CoilCurrent? Current, Sequence<double> Hertz, Sequence<char> Number, double? Va)
{
    /// <summary>A coil that goes with a body.</summary>
    internal static CoilMade Of(CoilOffer coil) => Of(coil.Volts, coil.Current, coil.Frequency, coil.Number);

    /// <summary>The same by what it takes, whatever its number.</summary>
    internal static CoilMade Powered(CoilOffer coil) => Of(coil.Volts, coil.Current, coil.Frequency, string.Empty) with { Va = Rounded.Voltamperes(coil.Va) };

    /// <summary>A coil by its marking.</summary>
    internal static CoilMade Of(Spread<ElectricPotential> volts, CoilCurrent? current, Figures<Frequency>? frequency, string number) => new(
        Rounded.To(volts.First.Volts, 1),
        Rounded.To(volts.Last.Volts, 1),
        current ?? (frequency is null ? null : CoilCurrent.Alternating),
        frequency is null ? default : [.. frequency.Select(one => Rounded.To(one.Hertz, 2))],
        [.. number],
        null);

    /// <summary>Whether it is made for the other kind of current than is there; not where one of the two is not known.</summary>
    internal bool IsForOtherThan(CoilCurrent? there) => Current is { } made && there is { } known && made != known;

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"{(Low < High ? FormattableString.Invariant($"{Low:0.#}-{High:0.#}") : FormattableString.Invariant($"{Low:0.#}"))} V{(Current == CoilCurrent.Direct ? " DC" : Hertz.Count > 0 ? $" {string.Join('/', Hertz.Select(hertz => FormattableString.Invariant($"{hertz:0.##}")))} Hz" : string.Empty)}");
}

/// <summary>What is read of a part's coil: the one on it, and those that its body takes besides.</summary>
/// <param name="Own">The voltages of the coil that comes on it; empty where they are not given.</param>
/// <param name="Further">Further coils.</param>
public readonly record struct CoilFacet(Sequence<CoilMade> Own, Sequence<CoilMade> Further)
{
    /// <summary>Reads a part's fields.</summary>
    internal static CoilFacet Of(Taps? volts, CoilCurrent? current, Figures<Frequency>? frequency, CoilOffers? further) => new(
        volts is null ? default : [.. volts.Select(tap => CoilMade.Of(tap, current, frequency, string.Empty))],
        further is null ? default : [.. further.Select(CoilMade.Of)]);

    /// <summary>The same where no number matters, so that bodies with alike coils are alike.</summary>
    internal static CoilFacet Unnumbered(Taps? volts, CoilCurrent? current, Figures<Frequency>? frequency, CoilOffers? further) => Of(volts, current, frequency, null) with
    {
        Further = further is null ? default : [.. further.Select(coil => CoilMade.Of(coil) with { Number = default })],
    };
}

/// <summary>What is read of what a part's coils take.</summary>
/// <param name="Va">The one on it, as it holds, VA; null where it is not given.</param>
/// <param name="Coils">All of them, the further ones with what each takes.</param>
public readonly record struct CoilPowerFacet(double? Va, CoilFacet Coils)
{
    /// <summary>Reads a part's fields.</summary>
    internal static CoilPowerFacet Of(ElectricApparentPower? va, Taps? volts, CoilCurrent? current, Figures<Frequency>? frequency, CoilOffers? further) =>
        new(Rounded.Voltamperes(va), CoilFacet.Of(volts, current, frequency, null) with { Further = further is null ? default : [.. further.Select(CoilMade.Powered)] });
}

/// <summary>Volts at a coil that is made for the other kind of current, in words; formed only when they are shown.</summary>
/// <param name="Volts">Volts there.</param>
/// <param name="There">What kind they are.</param>
internal readonly record struct OtherCurrent(double Volts, CoilCurrent There)
{
    /// <inheritdoc/>
    public override string ToString() => There == CoilCurrent.Direct
        ? FormattableString.Invariant($"{Volts:0.#} V DC at a coil for AC: direct current burns it")
        : FormattableString.Invariant($"{Volts:0.#} V AC at a coil for DC: alternating current makes it hum, and does not pull as it should");
}

/// <summary>The voltages of a coil in words; formed only when they are shown.</summary>
/// <param name="Coils">The voltages; empty where they are not given.</param>
internal readonly record struct ListedCoils(Sequence<CoilMade> Coils)
{
    /// <inheritdoc/>
    public override string ToString() => Coils.Count == 0 ? "volts that are not given" : string.Join(" or ", Coils.Select(coil => coil.ToString()));
}
