using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Coils;

/// <summary>How far the volts at a coil may lie off its marking, as shares of it.</summary>
/// <param name="Least">From here on it pulls in, hot.</param>
/// <param name="Easy">Up to here nobody would give it a thought.</param>
/// <param name="Most">Up to here it lasts, with a caution.</param>
public readonly record struct CoilWindow(double Least, double Easy, double Most);

/// <summary>What is there to drive a coil.</summary>
/// <param name="Volts">Volts; null where not known.</param>
/// <param name="Hertz">Frequency; null where not known, and for direct current.</param>
/// <param name="Current">What kind; null where not known.</param>
internal readonly record struct CoilSupply(double? Volts, double? Hertz, CoilCurrent? Current);

/// <summary>What a winding is called, and the fields that it and what feeds it stand in.</summary>
/// <param name="Noun">What it is: "coil".</param>
/// <param name="PartVolts">The part's field of its volts.</param>
/// <param name="PartHertz">The part's field of its frequencies.</param>
/// <param name="SiteVolts">The site's field of the volts there.</param>
/// <param name="SiteHertz">The site's field of the frequency there.</param>
internal sealed record CoilNames(string Noun, string PartVolts, string PartHertz, string SiteVolts, string SiteHertz);

/// <summary>Does a coil that the part has, or that its body takes, suit what is there to drive it?</summary>
/// <remarks>A coil for one frequency alone fails on the other: on a lower one it burns, on a higher one it does not pull. A wrong coil on a body that takes a right one is a change.</remarks>
internal static class CoilOnSupply
{
    /// <summary>Mains keep their frequency far closer than this; 50 and 60 Hz are told apart (practice).</summary>
    private const double HertzOff = 0.02;

    /// <summary>The answer of an aspect.</summary>
    /// <param name="facet">The part's coils.</param>
    /// <param name="supply">What is there.</param>
    /// <param name="window">How far its volts may be off.</param>
    /// <param name="names">What it is called, and where it stands.</param>
    /// <param name="change">The kind of change that puts another one on; null where a part takes no other.</param>
    public static Finding Judge(CoilFacet facet, CoilSupply supply, CoilWindow window, CoilNames names, ChangeKind? change)
    {
        if (facet.Own.Count == 0 && facet.Further.Count == 0) return Finding.Unknown(Side.Part, names.PartVolts, $"The volts of its {names.Noun} are not given.");
        if (supply.Volts is not { } volts) return Finding.Unknown(Side.Site, names.SiteVolts, $"Its {names.Noun} is for {new Listed(facet.Own)}; the volts that will drive it are not known.");
        CoilMade? nearest = null;
        foreach (var coil in facet.Own.AsSpan())
        {
            if (Suits(coil, volts, supply, window) && HertzKnown(coil, supply)) return On(coil, volts, window, names);
            if (nearest is not { } before || Off(coil, volts) < Off(before, volts)) nearest = coil;
        }

        foreach (var coil in facet.Own.AsSpan())
        {
            if (Suits(coil, volts, supply, window)) return Open(coil, supply, names);
        }

        foreach (var coil in facet.Further.AsSpan())
        {
            if (change is null || !Suits(coil, volts, supply, window) || !HertzKnown(coil, supply)) continue;
            var number = new string([.. coil.Number]);
            return Finding.MeetsWith(
                [new(change, $"put on coil {number}, {coil}, in place of the one for {new Listed(facet.Own)}") { Kit = [new($"coil {number}, {coil}")] }],
                $"Its own coil is for {new Listed(facet.Own)}; its body takes coil {number}, {coil}, for the {volts:0.#} V there.");
        }

        foreach (var coil in facet.Further.AsSpan())
        {
            if (Suits(coil, volts, supply, window)) return Open(coil, supply, names);
        }

        return nearest is not { } own ? Finding.Unknown(Side.Part, names.PartVolts, $"The volts of its own {names.Noun} are not given, and none of the others is for {volts:0.#} V.")
            : FitsVolts(own, volts, window) ? Finding.Fails($"{new There(supply)}; its {names.Noun} is for {own}{new NoOther(change)}.")
            : Finding.Fails(new(own.Low < own.High || volts < own.Low ? volts - (own.Low * window.Least) : (own.High * window.Most) - volts, "V"), $"{volts:0.#} V there; its {names.Noun}, {own}, takes {own.Low * window.Least:0.#} to {own.High * window.Most:0.#} V{new NoOther(change)}.");
    }

    /// <summary>Whether a coil takes the volts.</summary>
    internal static bool FitsVolts(CoilMade coil, double volts, CoilWindow window) => Within.Span(volts, coil.Low * window.Least, coil.High * window.Most);

    private static bool Suits(CoilMade coil, double volts, CoilSupply supply, CoilWindow window) =>
        FitsVolts(coil, volts, window)
        && (coil.Current is not { } current || supply.Current is not { } there || current == there)
        && (coil.Hertz.Count == 0 || supply.Hertz is not { } hertz || HasHertz(coil, hertz));

    /// <summary>Both mains frequencies are taken, or the one there is, or it is direct current.</summary>
    private static bool HertzKnown(CoilMade coil, CoilSupply supply) =>
        coil.Current == CoilCurrent.Direct
            ? supply.Current == CoilCurrent.Direct
            : coil.Hertz.Count > 0 && (supply.Hertz is not null || (HasHertz(coil, 50) && HasHertz(coil, 60))) && supply.Current != CoilCurrent.Direct;

    private static bool HasHertz(CoilMade coil, double hertz)
    {
        foreach (var made in coil.Hertz.AsSpan())
        {
            if (Within.AtMost(Math.Abs(made - hertz) / hertz, HertzOff)) return true;
        }

        return false;
    }

    private static double Off(CoilMade coil, double volts) => volts < coil.Low ? 1 - (volts / coil.Low) : volts > coil.High ? (volts / coil.High) - 1 : 0;

    private static Finding On(CoilMade coil, double volts, CoilWindow window, CoilNames names)
    {
        var (low, high) = (volts / coil.Low, volts / coil.High);
        var shortfall = low < 1 ? (1 - low) / (1 - window.Least) : high > 1 ? (high - 1) / (window.Most - 1) : 0;
        return Finding.Meets($"{volts:0.#} V there; its {names.Noun}, {coil}, takes {coil.Low * window.Least:0.#} to {coil.High * window.Most:0.#} V.") with
        {
            Shortfall = Math.Max(0, shortfall),
            Margin = new(Math.Min(volts - (coil.Low * window.Least), (coil.High * window.Most) - volts), "V"),
            CautionWords = Within.AtMost(volts, coil.High * window.Easy) ? null : (FormattableString)$"At {volts:0.#} V its {names.Noun} runs hotter than at the {coil.High * window.Easy:0.#} V it is meant for: it lasts less long.",
        };
    }

    private static Finding Open(CoilMade coil, CoilSupply supply, CoilNames names) =>
        coil.Hertz.Count == 0 && coil.Current != CoilCurrent.Direct
            ? Finding.Unknown(Side.Part, names.PartHertz, $"Its {names.Noun}, {coil}, takes the {supply.Volts:0.#} V there; the frequency it is made for is not given.")
            : Finding.Unknown(Side.Site, names.SiteHertz, $"Its {names.Noun}, {coil}, takes the {supply.Volts:0.#} V there; {(supply.Current == CoilCurrent.Alternating ? "of what frequency they are" : "whether that is direct current, or of what frequency,")} is not known.");

    /// <summary>That no other one goes on; formed only when it is shown, and only where another one could.</summary>
    private readonly record struct NoOther(ChangeKind? Change)
    {
        public override string ToString() => Change is null ? string.Empty : ", and no other for its body is listed";
    }

    /// <summary>What is there; formed only when it is shown.</summary>
    private readonly record struct There(CoilSupply Supply)
    {
        public override string ToString() => FormattableString.Invariant($"{Supply.Volts:0.#} V{(Supply.Current == CoilCurrent.Direct ? " DC" : Supply.Hertz is { } hertz ? FormattableString.Invariant($" {hertz:0.##} Hz") : string.Empty)} there");
    }

    /// <summary>A coil's voltages; formed only when it is shown.</summary>
    private readonly record struct Listed(Sequence<CoilMade> Coils)
    {
        public override string ToString() => Coils.Count == 0 ? "volts that are not given" : string.Join(" or ", Coils.Select(coil => coil.ToString()));
    }
}
