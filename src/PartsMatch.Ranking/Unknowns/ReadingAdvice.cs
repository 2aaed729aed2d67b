using System.Globalization;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>A reading that is worth taking, and why.</summary>
/// <param name="Side">Whose field it is: the plate's or the site's.</param>
/// <param name="Field">The field.</param>
/// <param name="Narrowing">What it is expected to settle, in bits: see <see cref="NextReadings"/>.</param>
/// <param name="Parts">Of the parts looked at, how many it decides between: they do for some of its values and not for others.</param>
/// <param name="IsEstimated">Whether known machines tell its values; else an even chance is taken for each part that waits for it.</param>
public sealed record ReadingAdvice(Side Side, Field Field, double Narrowing, int Parts, bool IsEstimated)
{
    /// <summary>Bits a minute: what advice is sorted by.</summary>
    public double Worth => Narrowing / Field.Tool.Minutes();

    /// <summary>What to do and why, in one sentence: "Measure with calipers: shaft diameter. It decides between 14 parts."</summary>
    public string Sentence => Parts switch
    {
        0 => $"{Field.Tool.Verb()}: {InSentence.Of(Field.Label)}. It tells which part is the best.",
        1 => $"{Field.Tool.Verb()}: {InSentence.Of(Field.Label)}. It decides on 1 part.",
        _ => string.Create(CultureInfo.InvariantCulture, $"{Field.Tool.Verb()}: {InSentence.Of(Field.Label)}. It decides between {Parts} parts."),
    };
}
