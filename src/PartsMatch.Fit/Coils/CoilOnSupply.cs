using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Coils;

/// <summary>How far the volts at a coil may lie off its marking, as shares of it.</summary>
/// <param name="Least">From here on it pulls in, hot.</param>
/// <param name="Easy">Up to here nobody would give it a thought.</param>
/// <param name="Most">Up to here it lasts, with a caution.</param>
public readonly record struct CoilWindow(double Least, double Easy, double Most)
{
    /// <summary>How far the frequency may be off the marked one, as a share of it: mains keep theirs far closer than 2 %, and 50 and 60 Hz are told apart (practice).</summary>
    public double HertzOff { get; init; } = 0.02;

    /// <summary>The volts that a coil takes.</summary>
    internal Band Of(CoilMade coil) => new(Least * coil.Low, Most * coil.High);
}

/// <summary>What a winding is called, and the fields that it and what feeds it stand in.</summary>
/// <param name="Noun">What it is: "coil".</param>
/// <param name="PartVolts">The part's field of its volts.</param>
/// <param name="PartHertz">The part's field of its frequencies.</param>
/// <param name="SiteVolts">The site's field of the volts there.</param>
/// <param name="SiteHertz">The site's field of the frequency there.</param>
internal sealed record CoilNames(string Noun, string PartVolts, string PartHertz, string SiteVolts, string SiteHertz)
{
    /// <summary>The part's field of what drives it, where that may be direct current.</summary>
    public string PartCurrent { get; init; } = string.Empty;

    /// <summary>The site's field of what is there to drive it, where that may be direct current.</summary>
    public string SiteCurrent { get; init; } = string.Empty;

    /// <summary>The part's field of what it takes, where it is asked for.</summary>
    public string PartVa { get; init; } = string.Empty;

    /// <summary>The part's field of further ones, where its body takes any.</summary>
    public string PartFurther { get; init; } = string.Empty;

    /// <summary>The kind of change that puts another one on; null where a part takes no other.</summary>
    public ChangeKind? Change { get; init; }

    /// <summary>The kind of change that connects one made for several voltages for one of them; null where that is no change.</summary>
    public ChangeKind? Connect { get; init; }
}

/// <summary>Does a winding that the part has, or that its body takes, suit what is there to drive it? The one judgement of coils, release solenoids and clocks.</summary>
/// <remarks>
/// A coil for one frequency alone fails on the other: on a lower one it burns, on a higher one it does not pull. A wrong coil on a body that takes a right one is a change, and so is connecting one for two voltages.
/// Where no volts were measured, a coil for all that the old one was marked for meets, and one that nothing could feed that fed the old one fails.
/// </remarks>
internal static class CoilOnSupply
{
    /// <summary>The answer of an aspect.</summary>
    /// <param name="facet">The part's coils.</param>
    /// <param name="supply">What is there.</param>
    /// <param name="window">How far its volts may be off.</param>
    /// <param name="names">What it is called, where it stands, and what is changed about it.</param>
    public static Finding Judge(CoilFacet facet, CoilSupply supply, CoilWindow window, CoilNames names)
    {
        if (facet.Own.Count == 0 && facet.Further.Count == 0) return Finding.Unknown(Side.Part, names.PartVolts, $"The volts of its {names.Noun} are not given.");
        var own = supply.Runs(facet.Own, window);
        if (own == true) return On(facet.Own, supply, window, names);
        if (Further(facet, supply, window, names, runs: true) is { } right)
        {
            return own is null && facet.Own.Count > 0
                ? Open(facet.Own, supply, window, names, [Put(right, facet, names)])
                : Finding.MeetsWith([Put(right, facet, names)], $"Its own {names.Noun} is for {new ListedCoils(facet.Own)}; its body takes {names.Noun} {new string([.. right.Number])}, {right}, for {new There(supply)}.");
        }

        if (own is null && facet.Own.Count > 0) return Open(facet.Own, supply, window, names, []);
        if (Further(facet, supply, window, names, runs: null) is { } perhaps) return Open([perhaps], supply, window, names, [Put(perhaps, facet, names)]);
        return facet.Own.Count == 0
            ? Finding.Unknown(Side.Part, names.PartVolts, $"The volts of its own {names.Noun} are not given, and none of the others is for {new There(supply)}.")
            : Fails(facet.Own, supply, window, names);
    }

    /// <summary>What a shortfall is in volts.</summary>
    /// <param name="window">How far its volts may be off.</param>
    /// <param name="names">What it is called.</param>
    public static OwnMeasure Measure(CoilWindow window, CoilNames names) => new("a voltage", $"under its {names.Noun}'s", 0, 100 * (1 - window.Least), "%") { Or = new("one", "over it", 0, 100 * (window.Most - 1), "%") };

    /// <summary>Whether a coil works at volts of a kind, which nothing speaks against where it is not known.</summary>
    internal static bool Works(CoilMade coil, double volts, CoilCurrent? there, CoilWindow window) => FitsVolts(coil, volts, window) && !coil.IsForOtherThan(there);

    /// <summary>Whether a coil takes the volts.</summary>
    internal static bool FitsVolts(CoilMade coil, double volts, CoilWindow window) => window.Of(coil).Holds(volts);

    private static CoilMade? Further(CoilFacet facet, CoilSupply supply, CoilWindow window, CoilNames names, bool? runs)
    {
        if (names.Change is null) return null;
        foreach (var coil in facet.Further.AsSpan())
        {
            if (supply.Runs([coil], window) == runs) return coil;
        }

        return null;
    }

    private static Change Put(CoilMade coil, CoilFacet facet, CoilNames names)
    {
        var number = new string([.. coil.Number]);
        return new(names.Change!, $"put on {names.Noun} {number}, {coil}, in place of the one for {new ListedCoils(facet.Own)}") { Kit = [new($"{names.Noun} {number}, {coil}")] };
    }

    private static Finding On(Sequence<CoilMade> own, CoilSupply supply, CoilWindow window, CoilNames names)
    {
        var right = supply.Volts is { } volts ? own.First(coil => FitsVolts(coil, volts, window)) : (CoilMade?)null;
        var found = right is { } coil ? OnVolts(coil, supply, supply.Volts!.Value, window, names)
            : Finding.Meets($"Its {names.Noun}, {new ListedCoils(own)}, takes all that the old one's, {new ListedCoils(supply.Old)}, could be fed.") with { Shortfall = supply.Old.Max(old => Math.Max(Shortfall(own, old.Low, window), Shortfall(own, old.High, window))) };
        if (names.Connect is null || own.Count < 2) return found;
        return found.With([new(names.Connect, right is { } one ? $"connect its {names.Noun} for {one}" : (FormattableString)$"connect its {names.Noun} for the volts there, which are to be measured")]);
    }

    private static Finding OnVolts(CoilMade coil, CoilSupply supply, double volts, CoilWindow window, CoilNames names)
    {
        var takes = window.Of(coil);
        return Finding.Meets($"{volts:0.#} V there{AsMarked(supply)}; its {names.Noun}, {coil}, takes {takes.Low:0.#} to {takes.High:0.#} V.") with
        {
            Shortfall = Shortfall([coil], volts, window),
            Margin = new(Math.Min(volts - takes.Low, takes.High - volts), "V"),
            CautionWords = Within.AtMost(volts, coil.High * window.Easy) ? null : (FormattableString)$"At {volts:0.#} V its {names.Noun} runs hotter than at the {coil.High * window.Easy:0.#} V it is meant for: it lasts less long.",
        };
    }

    private static string AsMarked(CoilSupply supply) => supply.AreAsMarked ? ", as the old one's is marked" : string.Empty;

    /// <summary>0 at its marked volts, 1 at the limit, of the voltage that takes them best.</summary>
    private static double Shortfall(Sequence<CoilMade> coils, double volts, CoilWindow window)
    {
        var least = double.PositiveInfinity;
        foreach (var coil in coils.AsSpan())
        {
            var (low, high) = (volts / coil.Low, volts / coil.High);
            least = Math.Min(least, low < 1 ? (1 - low) / (1 - window.Least) : high > 1 ? (high - 1) / (window.Most - 1) : 0);
        }

        return least;
    }

    /// <summary>What is missing of a coil that may run or not: the volts there, else whether that is direct current, the part's own gap, or a reading of the frequency.</summary>
    internal static Missing MissingOf(Sequence<CoilMade> coil, CoilSupply supply, CoilWindow window, CoilNames names) =>
        supply.Feeds(coil, window) is null ? coil.Count == 0 ? new(Side.Part, names.PartVolts) : new(Side.Site, names.SiteVolts)
        : coil[0].Current == CoilCurrent.Direct || (supply.Current is null && CoilSupply.TakesAnyMains(coil[0], window)) ? new(Side.Site, names.SiteCurrent)
        : coil[0].Hertz.Count > 0 ? new(Side.Site, names.SiteHertz)
        : new(Side.Part, supply.Current == CoilCurrent.Direct ? names.PartCurrent : names.PartHertz);

    private static Finding Open(Sequence<CoilMade> coil, CoilSupply supply, CoilWindow window, CoilNames names, IReadOnlyList<Change> likely)
    {
        var (side, field) = MissingOf(coil, supply, window, names);
        if (field == names.SiteVolts)
        {
            return supply.Old.Count == 0
                ? Finding.Unknown(side, field, likely, $"Its {names.Noun} is for {new ListedCoils(coil)}; the volts that will drive it are not known.")
                : Finding.Unknown(side, field, likely, $"Its {names.Noun} is for {new ListedCoils(coil)}, the old one's for {new ListedCoils(supply.Old)}; which volts are there is not known.");
        }

        var what = field == names.SiteCurrent ? "whether that is direct current is not known"
            : field == names.PartCurrent ? "whether it is made for direct current is not given"
            : side == Side.Part ? "the frequency it is made for is not given"
            : supply.Current == CoilCurrent.Alternating ? "of what frequency they are is not known"
            : "whether that is direct current, or of what frequency, is not known";
        return Finding.Unknown(side, field, likely, $"Its {names.Noun}, {new ListedCoils(coil)}, takes {new There(supply)}; {what}.");
    }

    private static Finding Fails(Sequence<CoilMade> own, CoilSupply supply, CoilWindow window, CoilNames names)
    {
        if (supply.Feeds(own, window) != false) return Finding.Fails($"Its {names.Noun} is for {new ListedCoils(own)}, and not for {new There(supply)}{new NoOther(names.Change)}.");
        if (supply.Volts is not { } volts) return Finding.Fails($"Its {names.Noun}, {new ListedCoils(own)}, takes nothing that the old one's, {new ListedCoils(supply.Old)}, could be fed{new NoOther(names.Change)}.");
        var nearest = own.MinBy(coil => Shortfall([coil], volts, window));
        var takes = window.Of(nearest);
        return Finding.Fails(new(volts < nearest.Low ? volts - takes.Low : takes.High - volts, "V"), $"{volts:0.#} V there{AsMarked(supply)}; its {names.Noun}, {nearest}, takes {takes.Low:0.#} to {takes.High:0.#} V{new NoOther(names.Change)}.");
    }

    /// <summary>That no other one goes on; formed only when it is shown, and only where another one could.</summary>
    private readonly record struct NoOther(ChangeKind? Change)
    {
        public override string ToString() => Change is null ? string.Empty : ", and no other for its body is listed";
    }

    /// <summary>What is there; formed only when it is shown.</summary>
    private readonly record struct There(CoilSupply Supply)
    {
        public override string ToString()
        {
            if (Supply.Volts is not { } volts) return Supply.Old.Count == 0 ? FormattableString.Invariant($"the {Supply.Hertz:0.##} Hz there") : $"what the old one's, {new ListedCoils(Supply.Old)}, was fed{(Supply.Hertz is { } known ? FormattableString.Invariant($", at {known:0.##} Hz") : string.Empty)}";
            return FormattableString.Invariant($"the {volts:0.#} V{(Supply.Current == CoilCurrent.Direct ? " DC" : Supply.Hertz is { } hertz ? FormattableString.Invariant($" {hertz:0.##} Hz") : string.Empty)} there");
        }
    }
}
