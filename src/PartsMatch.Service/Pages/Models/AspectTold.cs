using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Ranking;

namespace PartsMatch.Service.Pages.Models;

/// <summary>What an aspect costs, as a page tells it.</summary>
/// <param name="aspect">The aspect.</param>
/// <param name="cost">What it costs.</param>
/// <param name="hour">What an hour's work usually costs; 0 where none costs anything.</param>
/// <param name="units">The units of whoever reads it.</param>
public sealed class AspectTold(Aspect aspect, AspectCost cost, double hour, Units units)
{
    private const double Width = 200;
    private const double Top = 4;
    private const double Floor = 60;
    private const int Steps = 32;

    public string Title => aspect.Title;

    /// <summary>Whether anything of it is worth a word.</summary>
    public bool Counts => Odds.Count(cost.Shortfall.At(Features.MostShortfall)) || Odds.Count(cost.Effort) || Odds.Count(cost.Unknown);

    /// <summary>What it costs to fall short, to be changed, and not to be known.</summary>
    public IEnumerable<string> Sentences => [.. OfShortfall(), .. OfEffort(), .. OfUnknown()];

    /// <summary>How much of the odds is left, from no shortfall to twice the limit; null where none is taken.</summary>
    public Sketch? Drawing => !Odds.Count(cost.Shortfall.At(Features.MostShortfall)) ? null : new(
        aspect.Name,
        "Odds left as it falls short",
        string.Join(' ', OfShortfall()),
        Width,
        Floor + 16,
        [
            new Outline(Role.Strong, [new(0, Floor), new(0, Top), .. Enumerable.Range(0, Steps + 1).Select(Left), new(Width, Floor)]),
            new Line(Role.Limit, new(Width / 2, Top), new(Width / 2, Floor)),
            new Caption(Role.Ink, new(Width / 2, Floor + 14), "at its limit"),
        ]);

    private Point Left(int step)
    {
        // The first point lies just behind 0, where any shortfall at all has its price.
        var shortfall = Math.Max(1e-6, Features.MostShortfall * step / Steps);
        return new(Width * shortfall / Features.MostShortfall, Floor - ((Floor - Top) * Odds.Left(cost.Shortfall.At(shortfall))));
    }

    private IEnumerable<string> OfShortfall()
    {
        var curve = cost.Shortfall;
        if (!Odds.Count(curve.At(Features.MostShortfall))) yield break;
        if (Odds.Count(curve.Any)) yield return $"However little it falls short, it {Odds.Of(curve.Any)}.";
        var work = hour > 0 && Odds.Count(curve.At(1)) ? $", {Odds.InWork(curve.At(1), hour)}" : string.Empty;
        var beyond = Odds.Count(curve.Beyond) ? $"; twice as far it {Odds.Of(curve.At(Features.MostShortfall))}" : string.Empty;
        yield return aspect.Measure is { } measure
            ? $"{Wording.Capital(measure.Words(0.5, units))} {Odds.Of(curve.At(0.5))}; at {measure.Figure(1, units)}, its limit, it {Odds.Of(curve.At(1))}{work}{beyond}."
            : $"Half way to its limit it {Odds.Of(curve.At(0.5))}; at its limit it {Odds.Of(curve.At(1))}{work}{beyond}.";
    }

    private IEnumerable<string> OfEffort()
    {
        if (Odds.Count(cost.Effort)) yield return $"An hour's work on it {Odds.Of(cost.Effort)}.";
    }

    private IEnumerable<string> OfUnknown()
    {
        if (Odds.Count(cost.Unknown)) yield return $"Where the part's own entry does not say, that {Odds.Of(cost.Unknown)}.";
    }
}
