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

    /// <summary>A person's judgement of what costs how much beside another, brought to the scale of outcomes of past installations.</summary>
    Rescaled,

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

    private readonly Dictionary<Aspect, AspectCost> byAspect;

    /// <summary>A step of scores, in millionths, for which the percent at its better end is kept: about a thirtieth of a unit.</summary>
    private const int StepBits = 15;

    private readonly bool[] arePaired;
    private readonly Score[] leastScores;
    private readonly byte[] percentFrom;

    private Weights(Family family, WeightsGiven given)
    {
        (Family, Origin, MadeOn, Intercept, Training) = (family, given.Origin, given.MadeOn, given.Intercept, given.Training);
        byAspect = family.Aspects.ToDictionary(aspect => aspect, aspect => given.Aspects.GetValueOrDefault(aspect.Name) ?? HandSetOf(aspect));
        Aspects = byAspect.ToDictionary(one => one.Key.Name, one => one.Value);
        Pairs = [.. family.Pairs.Select(pair => new PairCost(pair, IndexOf(pair.One), IndexOf(pair.Other), given.Pairs.GetValueOrDefault(pair.Name)))];
        arePaired = [.. family.Aspects.Select((_, aspect) => Pairs.Any(pair => pair.Cost > 0 && (pair.One == aspect || pair.Other == aspect)))];
        Records = given.Records;
        Id = IdOf(this);
        leastScores = [.. Enumerable.Range(0, 100).Select(FindLeastScoreOf)];
        percentFrom = [.. Enumerable.Range(0, int.MaxValue).Select(step => (byte)FindPercentOf(new(-(long)step << StepBits))).TakeWhile(percent => percent > 1), 1];

        int IndexOf(string name) => family.Aspects.Index().First(one => one.Item.Name == name).Index;
    }

    /// <summary>The kind of the family that they weigh.</summary>
    public string Kind => Family.Kind;

    /// <summary>The family that they weigh.</summary>
    internal Family Family { get; }

    /// <summary>Where they come from.</summary>
    public WeightsOrigin Origin { get; }

    /// <summary>Whether a person's judgement and not outcomes made them: a likelihood from them must say so.</summary>
    public bool IsHandSet => Origin == WeightsOrigin.HandSet;

    /// <summary>The day they were made; null when nobody wrote it down.</summary>
    public DateOnly? MadeOn { get; }

    /// <summary>What they were trained on, and how they did; null where nobody wrote it down.</summary>
    public Training? Training { get; }

    /// <summary>The log-odds of a part that nothing speaks against.</summary>
    public double Intercept { get; }

    /// <summary>What every aspect of the family costs, by the aspect's name.</summary>
    public IReadOnlyDictionary<string, AspectCost> Aspects { get; }

    /// <summary>What the family's pairs of aspects cost besides, those that cost nothing too.</summary>
    public IReadOnlyList<PairCost> Pairs { get; }

    /// <summary>What parts cost that have come back more often than their specs explain, by number; above 0.</summary>
    public IReadOnlyDictionary<string, double> Records { get; }

    /// <summary>A short hash of all that decides a ranking (kind, intercept, costs): equal weights have equal ids on every machine.</summary>
    public string Id { get; }

    /// <summary>Weights for a family; what is not given costs what it does by hand.</summary>
    /// <exception cref="ArgumentException">A name that is none of the family's, or a number out of range: what people write goes through <see cref="WeightsFile"/>, which complains instead.</exception>
    public static Weights Of(Family family, WeightsGiven given)
    {
        foreach (var name in given.Aspects.Keys.Except(family.Aspects.Select(aspect => aspect.Name))) throw new ArgumentException($"No aspect of {family.Kind} is called {name}.", nameof(given));
        foreach (var name in given.Pairs.Keys.Except(family.Pairs.Select(pair => pair.Name))) throw new ArgumentException($"No pair of {family.Kind} is called {name}.", nameof(given));
        if (!IsIntercept(given.Intercept)) throw new ArgumentException("The intercept is out of range.", nameof(given));
        if (!given.Aspects.Values.SelectMany(cost => cost.All).Concat(given.Pairs.Values).Concat(given.Records.Values).All(IsWeight)) throw new ArgumentException("A cost is out of range.", nameof(given));
        return new(family, given);
    }

    /// <summary>The weights that a family's aspects declare, with <see cref="HandSetIntercept"/>.</summary>
    public static Weights HandSet(Family family) => Of(family, new(WeightsOrigin.HandSet, HandSetIntercept));

    /// <summary>What an aspect costs by hand.</summary>
    public static AspectCost HandSetOf(Aspect aspect) => new(aspect.DefaultWeight.Shortfall, aspect.DefaultWeight.Effort, aspect.DefaultWeight.Unknown);

    /// <summary>What a finding about an aspect of this very family takes from the score. A failed aspect takes nothing: it is a gate, and no sum opens it.</summary>
    public Score Contribution(Aspect aspect, Finding finding) =>
        finding.Verdict == Verdict.Fails ? Score.Zero : Features.Of(aspect, finding).Under(byAspect[aspect]);

    /// <summary>What the record of the part with this number takes from the score; nothing of one that has none.</summary>
    public Score RecordOf(string number) => Records.TryGetValue(number, out var cost) ? Score.Less(cost) : Score.Zero;

    /// <summary>The likelihood of a part that passes every aspect: a logistic of intercept and score, in whole percent, halves up, 1 to 99.</summary>
    public Likelihood LikelihoodOf(Score score) => Shown(PercentOf(score));

    /// <summary>Whether a part's score hangs on more than what each aspect takes by itself.</summary>
    internal bool HasPartTerms => Records.Count > 0 || arePaired.Contains(true);

    /// <summary>Whether an aspect, by its place in the family's order, is in a pair that costs anything.</summary>
    internal bool IsPaired(int aspect) => arePaired[aspect];

    internal Likelihood Shown(int percent, int machines = 0) => new(percent, IsHandSet, machines) { IsOfInvented = Training is { Invented: > 0 } };

    /// <summary>The logistic of intercept and score in billionths.</summary>
    internal long ShareOf(Score score) => Logistic.BillionthsOf(Intercept + score.Value);

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
        foreach (var (name, cost) in weights.Aspects.OrderBy(pair => pair.Key, StringComparer.Ordinal)) Add(name, cost.All);
        foreach (var pair in weights.Pairs.Where(pair => pair.Cost > 0)) Add(pair.Pair.Name, [pair.Cost]);
        foreach (var (number, cost) in weights.Records.OrderBy(record => record.Key, StringComparer.Ordinal)) Add(number, [cost]);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(content.ToString())).AsSpan(0, 6));

        void Add(string name, IEnumerable<double> costs) => content.Append(CultureInfo.InvariantCulture, $"\n{name} {string.Join(' ', costs.Select(cost => cost.ToString("R", CultureInfo.InvariantCulture)))}");
    }
}
