using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.After;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>The condensing split against its limits, from the figures that <see cref="CondensingSplit"/> judges.</summary>
internal static class SplitScale
{
    private const double FahrenheitInKelvin = 1.8;

    /// <summary>The scale in °F; null where no split can be told.</summary>
    public static Scale? Of(SwapCase one)
    {
        if (CondensingSplit.Figures(one) is not { } figures) return null;
        var (most, ceiling) = (InFahrenheit(figures.Most), InFahrenheit(CondensingSplit.CeilingKelvin));
        var end = Math.Max(1.25 * Math.Max(most, ceiling), 1.1 * InFahrenheit(figures.Dew));
        List<ScaleMark> marks = [Measured(figures)];
        if (figures.Design is { } design)
        {
            marks.Add(new($"design: {Degrees.Apart(design)}", Role.Old, Band.Exactly(InFahrenheit(design))));
            marks.Add(new($"25 % over design: {Degrees.Apart(figures.Most)}", Role.Limit, Band.Exactly(most)));
        }

        marks.Add(new($"ceiling: {Degrees.Apart(CondensingSplit.CeilingKelvin)}", Role.Limit, Band.Exactly(ceiling)));
        return new(
            "condensingSplit",
            "Condensing split",
            new CondensingSplit().Judge(one).Sentence,
            "°F",
            new(0, end),
            [.. most > ceiling ? [new Zone("good", Role.Good, new(0, ceiling)), new Zone("open", Role.Open, new(ceiling, most))] : new[] { new Zone("good", Role.Good, new(0, most)) }, new Zone("too much", Role.Bad, new(most, end))],
            marks);
    }

    private static ScaleMark Measured(SplitFigures figures) => figures.Glides
        ? new($"bubble {Degrees.Apart(figures.Bubble)}, mean {Degrees.Apart(figures.Mean)}, dew {Degrees.Apart(figures.Dew)}", Role.New, new(InFahrenheit(figures.Bubble), InFahrenheit(figures.Dew)))
        : new($"measured: {Degrees.Apart(figures.Mean)}", Role.New, Band.Exactly(InFahrenheit(figures.Mean)));

    private static double InFahrenheit(double kelvin) => kelvin * FahrenheitInKelvin;
}
