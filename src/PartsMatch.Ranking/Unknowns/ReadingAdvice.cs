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
    /// <summary>Whether none of the parts looked at can be told to fit yet for want of it, or of a reading in its place.</summary>
    public bool EveryPartWaits { get; init; }

    /// <summary>Bits a minute: what advice is sorted by, once what every part waits for stands first.</summary>
    public double Worth => Narrowing / Field.Tool.Minutes();

    /// <summary>What to do and why, in one sentence: "Measure with calipers: shaft diameter. It decides between 14 parts."</summary>
    public string Sentence => $"{Field.Tool.Verb()}: {InSentence.Of(Field.Label)}. {Why}";

    private string Why => (Parts, EveryPartWaits) switch
    {
        ( <= 1, true) => "Every part here waits for it.",
        (0, _) => "It tells which part is the best.",
        (1, _) => "It decides on 1 part.",
        _ => string.Create(CultureInfo.InvariantCulture, $"It decides between {Parts} parts{(EveryPartWaits ? ", and every part here waits for it" : string.Empty)}."),
    };
}
