using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Coils;

/// <summary>The transformer that feeds a coil, as far as it is known. The one judgement of whether it carries the coil that goes in.</summary>
/// <param name="Most">VA that it has for the coil at most; null where nothing is known of it.</param>
/// <param name="IsLeft">Whether those are left for it, with all else on the transformer counted.</param>
/// <param name="Field">The site's field that is missing where they are not known, or not counted.</param>
/// <remarks>
/// Up to what it has left meets, the edge included, more than it could have fails. Where that is not known, a coil that takes no more than the old one meets; more is unknown, but from 100 V up where no transformer was named: such a coil is taken to hang on the line (practice).
/// </remarks>
internal readonly record struct CoilTransformer(double? Most, bool IsLeft, string Field)
{
    /// <summary>Volts from which on a coil hangs on the line (practice).</summary>
    private const double LineVolts = 100;

    /// <summary>The answer.</summary>
    /// <param name="coil">The coil at the beginning of a sentence.</param>
    /// <param name="va">What it takes, VA.</param>
    /// <param name="old">What the old one took, VA; null where not given.</param>
    /// <param name="supply">What is there to drive it.</param>
    public Finding Carries(CoilName coil, double va, double? old, CoilSupply supply)
    {
        if (Most is { } most)
        {
            var margin = new Margin(most - va, "VA");
            Reason sentence = $"{coil} takes {va:0.#} VA; {new Has(most, IsLeft)}.";
            if (!Within.AtMost(va, most)) return Finding.Fails(margin, sentence);
            if (IsLeft) return Finding.Meets(sentence) with { Margin = margin, Shortfall = va / most };
        }

        if (old is { } took && Within.AtMost(va, took)) return Finding.Meets($"{coil} takes {va:0.#} VA, no more than the old one's {took:0.#} VA.") with { Margin = new(took - va, "VA") };
        return Most is null && IsOfLine(supply)
            ? Finding.Meets($"{coil} takes {va:0.#} VA, and is taken to hang on the line: no transformer is named.")
            : Finding.Unknown(Side.Site, Field, $"{coil} takes {va:0.#} VA{new Before(old)}; what the transformer has left is not known.");
    }

    private static bool IsOfLine(CoilSupply supply) => (supply.Volts ?? (supply.Old.Count > 0 ? supply.Old.Min(coil => coil.Low) : null)) is >= LineVolts;

    private readonly record struct Has(double Most, bool IsLeft)
    {
        public override string ToString() => Most < 0
            ? FormattableString.Invariant($"the transformer has nothing left: all else on it takes {-Most:0.#} VA more than it gives")
            : FormattableString.Invariant($"the transformer has {Most:0.#} VA{(IsLeft ? " left" : " in all")}");
    }

    private readonly record struct Before(double? Va)
    {
        public override string ToString() => Va is { } took ? FormattableString.Invariant($", the old one took {took:0.#} VA") : string.Empty;
    }
}
