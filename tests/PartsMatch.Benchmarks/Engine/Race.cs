using System.Diagnostics;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>What one contender did: the milliseconds of every answer, and what it told of them.</summary>
internal sealed record Lap(Contender Contender, IReadOnlyList<double> Milliseconds, IReadOnlyList<EngineFigures> Figures)
{
    public double Median => At(0.5);

    public double Percentile99 => At(0.99);

    private double At(double share) => Milliseconds.Order().ElementAt((int)Math.Ceiling(share * Milliseconds.Count) - 1);
}

/// <summary>Two contenders answered differently, so that no time means anything.</summary>
internal sealed class AnswersDifferException(string message) : Exception(message);

/// <summary>Asks every contender every need, in turn and in changing order, and holds their answers against one another.</summary>
/// <remarks>
/// A need's rounds follow each other, since making code lists ready takes longer than answering. What a contender left in the caches the others' turns push out: so each answers once more just before it is measured,
/// the engine another need than the one measured, the others, whose lists are that need's, the same.
/// </remarks>
internal static class Race
{
    private const int Rounds = 3;

    /// <summary>So many needs are asked once before, unmeasured; the engine, whose code is compiled while it runs, is asked all of them.</summary>
    private const int WarmUps = 20;

    public static IReadOnlyList<Lap> Run(Family family, IReadOnlyList<Contender> contenders, IReadOnlyList<Asked> asked)
    {
        var laps = contenders.Select(contender => (Contender: contender, Times: new List<double>(), Figures: new List<EngineFigures>())).ToList();
        var warmUps = Math.Min(WarmUps, asked.Count);
        foreach (var contender in contenders) contender.WarmUp(asked);
        foreach (var (number, one) in asked.Take(warmUps).Concat(asked).Index())
        {
            foreach (var contender in contenders) contender.MakeReady(one);
            var answer = contenders[0].Best(one);
            for (var round = 0; round < Rounds; round++)
            {
                for (var turn = 0; turn < laps.Count; turn++)
                {
                    var lap = laps[(turn + round + number) % laps.Count];
                    lap.Contender.Resume(one);
                    var start = Stopwatch.GetTimestamp();
                    var rows = lap.Contender.Best(one);
                    var took = Stopwatch.GetElapsedTime(start);
                    if (!rows.SequenceEqual(answer)) throw new AnswersDifferException(Difference(family, one, contenders[0], answer, lap.Contender, rows));
                    if (number < warmUps) continue;
                    lap.Times.Add(took.TotalMilliseconds);
                    if (lap.Contender.Figures is { } figures) lap.Figures.Add(figures);
                }
            }
        }

        return [.. laps.Select(lap => new Lap(lap.Contender, lap.Times, lap.Figures))];
    }

    private static string Difference(Family family, Asked asked, Contender one, IReadOnlyList<int> answer, Contender other, IReadOnlyList<int> otherAnswer) => $"""
        {one.Name} and {other.Name} answer differently.
        Plate: {Texts(family.SpecShape, asked.Need.Plate)}
        Site: {Texts(family.SiteShape, asked.Need.Site)}
        {one.Name}: {string.Join(' ', answer)}
        {other.Name}: {string.Join(' ', otherAnswer)}
        """;

    private static string Texts(Shape shape, object record) => string.Join("; ", shape.Write(record).Select(field => $"{field.Name} {field.Text}"));
}
