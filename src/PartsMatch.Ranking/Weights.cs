using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>Where weights come from.</summary>
public enum WeightsOrigin
{
    /// <summary>A person's judgement.</summary>
    HandSet,

    /// <summary>Outcomes of past installations.</summary>
    Trained,
}

/// <summary>What one family's features cost: penalties that are never negative, so that a lower shortfall never lowers a rank.</summary>
public sealed class Weights
{
    /// <summary>
    /// The intercept of hand-set weights: log-odds that give a part that nothing speaks against 97 % (1 / (1 + e^−3.5)).
    /// Practice, not measured: a swap that is right on paper still meets a wrong reading, a cracked blade or another fault about once in thirty.
    /// </summary>
    public const double HandSetIntercept = 3.5;

    /// <summary>The intercept lies between plus and minus this: beyond, every likelihood shows as 1 or 99 %.</summary>
    public const double MostIntercept = 20;

    /// <summary>A weight lies between 0 and this: at it, a hundredth of a shortfall costs more than an open reading.</summary>
    public const double MostWeight = 100;

    private readonly Dictionary<string, AspectWeight> byAspect;

    /// <summary>A step of scores, in millionths, for which the percent at its better end is kept: about a thirtieth of a unit.</summary>
    private const int StepBits = 15;

    private readonly Score[] leastScores;
    private readonly byte[] percentFrom;

    private Weights(Family family, WeightsOrigin origin, DateOnly? madeOn, double intercept, IReadOnlyDictionary<string, AspectWeight> given)
    {
        (Kind, Origin, MadeOn, Intercept) = (family.Kind, origin, madeOn, intercept);
        byAspect = family.Aspects.ToDictionary(aspect => aspect.Name, aspect => given.GetValueOrDefault(aspect.Name) ?? aspect.DefaultWeight);
        Id = IdOf(this);
        leastScores = [.. Enumerable.Range(0, 100).Select(FindLeastScoreOf)];
        percentFrom = [.. Enumerable.Range(0, int.MaxValue).Select(step => (byte)FindPercentOf(new(-(long)step << StepBits))).TakeWhile(percent => percent > 1), 1];
    }

    /// <summary>The kind of the family that they weigh.</summary>
    public string Kind { get; }

    /// <summary>Where they come from.</summary>
    public WeightsOrigin Origin { get; }

    /// <summary>Whether a person's judgement and not outcomes made them: a likelihood from them must say so.</summary>
    public bool IsHandSet => Origin == WeightsOrigin.HandSet;

    /// <summary>The day they were made; null when nobody wrote it down.</summary>
    public DateOnly? MadeOn { get; }

    /// <summary>The log-odds of a part that nothing speaks against.</summary>
    public double Intercept { get; }

    /// <summary>A weight for every aspect of the family, by the aspect's name.</summary>
    public IReadOnlyDictionary<string, AspectWeight> Aspects => byAspect;

    /// <summary>A short hash of all that decides a ranking (kind, intercept, weights): equal weights have equal ids on every machine.</summary>
    public string Id { get; }

    /// <summary>Weights for a family; an aspect that is not given has its default weight.</summary>
    /// <exception cref="ArgumentException">A name that is no aspect's, or a number out of range: what people write goes through <see cref="WeightsFile"/>, which complains instead.</exception>
    public static Weights Of(Family family, WeightsOrigin origin, DateOnly? madeOn, double intercept, IReadOnlyDictionary<string, AspectWeight> given)
    {
        foreach (var name in given.Keys.Except(family.Aspects.Select(aspect => aspect.Name))) throw new ArgumentException($"No aspect of {family.Kind} is called {name}.", nameof(given));
        var weights = new Weights(family, origin, madeOn, intercept, given);
        if (!IsIntercept(intercept)) throw new ArgumentException("The intercept is out of range.", nameof(intercept));
        foreach (var (name, weight) in weights.byAspect)
        {
            if (!(IsWeight(weight.Shortfall) && IsWeight(weight.Effort) && IsWeight(weight.Unknown))) throw new ArgumentException($"A weight of {name} is out of range.", nameof(given));
        }

        return weights;
    }

    /// <summary>The weights that a family's aspects declare, with <see cref="HandSetIntercept"/>.</summary>
    public static Weights HandSet(Family family) => Of(family, WeightsOrigin.HandSet, null, HandSetIntercept, new Dictionary<string, AspectWeight>());

    /// <summary>What a finding takes from the score. A failed aspect takes nothing: it is a gate, and no sum opens it.</summary>
    public Score Contribution(Aspect aspect, Finding finding) =>
        finding.Verdict == Verdict.Fails ? Score.Zero : Features.Of(aspect, finding).Under(byAspect[aspect.Name]);

    /// <summary>The likelihood of a part that passes every aspect: a logistic of intercept and score, in whole percent, halves up, 1 to 99.</summary>
    public Likelihood LikelihoodOf(Score score) => Shown(PercentOf(score));

    internal Likelihood Shown(int percent, int machines = 0) => new(percent, IsHandSet, machines);

    /// <summary>The logistic of intercept and score in billionths: whole numbers, so that a mean does not depend on the order in which it is summed.</summary>
    internal long ShareOf(Score score) => (long)Math.Round(MeanLikelihood.Whole / (1 + Math.Exp(-(Intercept + score.Value))));

    /// <summary>The least score that shows as so many percent or more: what cannot reach it need not be looked at.</summary>
    internal Score LeastScoreOf(int percent) => leastScores[percent];

    /// <summary>The least score for every percent, 0 to 99.</summary>
    internal Score[] LeastScores => leastScores;

    /// <summary>The likelihood in whole percent; looked up, since a query asks a thousand times.</summary>
    /// <param name="score">Never positive.</param>
    internal int PercentOf(Score score)
    {
        int percent = percentFrom[Math.Min(-score.Millionths >> StepBits, percentFrom.Length - 1)];
        while (leastScores[percent].Millionths > score.Millionths) percent--;
        return percent;
    }

    internal static bool IsIntercept(double value) => value is >= -MostIntercept and <= MostIntercept;

    internal static bool IsWeight(double value) => value is >= 0 and <= MostWeight;

    private int FindPercentOf(Score score) => Math.Clamp((int)Math.Floor((100 / (1 + Math.Exp(-(Intercept + score.Value)))) + 0.5), 1, 99);

    /// <summary>Found by halving, since it is the rounded logistic itself that must agree.</summary>
    private Score FindLeastScoreOf(int percent)
    {
        // Scores below this show 1 % whatever the intercept: e^−60.
        var (low, high) = (-(long)((MostIntercept + 60) * 1e6), 0L);
        if (FindPercentOf(new(low)) >= percent) return new(long.MinValue);
        if (FindPercentOf(new(high)) < percent) return new(1);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (FindPercentOf(new(middle)) >= percent) high = middle;
            else low = middle;
        }

        return new(high);
    }

    private static string IdOf(Weights weights)
    {
        var content = new StringBuilder(weights.Kind).Append('\n').Append(weights.Intercept.ToString("R", CultureInfo.InvariantCulture));
        foreach (var (name, weight) in weights.Aspects.OrderBy(pair => pair.Key, StringComparer.Ordinal))
        {
            content.Append(CultureInfo.InvariantCulture, $"\n{name} {weight.Shortfall:R} {weight.Effort:R} {weight.Unknown:R}");
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content.ToString())).AsSpan(0, 6));
    }
}
