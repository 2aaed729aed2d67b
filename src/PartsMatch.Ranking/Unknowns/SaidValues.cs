using PartsMatch.Fit.Quantities;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>The different values that machines give for one field, each with a code from 1 on. For one thread at a time.</summary>
/// <param name="form">How the field's values are written.</param>
internal sealed class SaidValues(TextForm form)
{
    /// <summary>How far apart two different things are, in hundredths of a step: whole numbers, so that a sum does not hang on its order.</summary>
    public const int Step = 100;

    /// <summary>A machine that does not say lies half a step from whatever is known: it neither agrees nor contradicts.</summary>
    public const int NotSaid = Step / 2;

    private readonly Dictionary<string, int> codes = new(StringComparer.Ordinal);
    private readonly List<(double[] Steps, double Place)> values = [];
    private double[] places = [double.NegativeInfinity];

    /// <summary>The code of a value, as it is written.</summary>
    public int CodeOf(string text, object value)
    {
        if (codes.TryGetValue(text, out var code)) return code;
        double[] steps = [.. form.StepsOf(value)];
        values.Add((steps, steps.Length > 0 ? steps[0] : Beginning(text)));
        return codes[text] = values.Count;
    }

    /// <summary>Of every code, how far from a value what it stands for lies, in hundredths of a step: nothing of what is written alike, and at least one of all else.</summary>
    public int[] Apart(string text, object value)
    {
        var (apart, steps) = (new int[values.Count + 1], form.StepsOf(value).ToArray());
        apart[FieldCodes.Unknown] = NotSaid;
        for (var code = 1; code < apart.Length; code++) apart[code] = Math.Max(1, (int)Math.Round(Step * Steps.Apart(steps, values[code - 1].Steps)));
        if (codes.TryGetValue(text, out var same)) apart[same] = 0;
        return apart;
    }

    /// <summary>Of every code, where its value stands among the others; what is not said stands first.</summary>
    public double[] Places() => places.Length > values.Count ? places : places = [double.NegativeInfinity, .. values.Select(value => value.Place)];

    /// <summary>Words in the order of their first three letters.</summary>
    private static double Beginning(string text) => text.Take(3).Aggregate(0.0, (place, letter) => (place * 65_536) + letter) * Math.Pow(65_536, 3 - Math.Min(3, text.Length));
}
