using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>What a need with unknowns may be in full: known machines that agree with what is known, those that aspects cannot tell apart counted together. For one thread at a time.</summary>
public sealed class Completions
{
    /// <summary>The most that are told apart in one query: shares are then known to about 6 of 100 at worst (half of √(1/64)), and passing is one bit of a word each.</summary>
    public const int Most = 64;

    /// <summary>From so many agreeing machines on nothing known is given up to find more (practice).</summary>
    public const int Enough = 20;

    private CompletedAnswers? answers;

    private Completions(IReadOnlyList<Completion> all, int agreeing, IReadOnlyList<Field> givenUp, IReadOnlyList<int[]> groupsByAspect) =>
        (All, Agreeing, GivenUp, GroupsByAspect, Machines, Weights) = (all, agreeing, givenUp, groupsByAspect, all.Sum(completion => completion.Weight), [.. all.Select(completion => completion.Weight)]);

    /// <summary>For a need in which nothing is open that a plate could tell.</summary>
    public static Completions None { get; } = new([], 0, [], []);

    /// <summary>The completions, the first machine's first.</summary>
    public IReadOnlyList<Completion> All { get; }

    /// <summary>Whether the need is taken as it is.</summary>
    public bool IsNone => All.Count == 0;

    /// <summary>How many machines agree with what is known, those beyond the first <see cref="Machines"/> among them.</summary>
    public int Agreeing { get; }

    /// <summary>How many machines the completions stand for.</summary>
    public int Machines { get; }

    /// <summary>What is known and was given up, the first first, since too few machines agreed with it.</summary>
    public IReadOnlyList<Field> GivenUp { get; }

    /// <summary>For how many machines each completion stands.</summary>
    internal int[] Weights { get; }

    /// <summary>A bit for every completion.</summary>
    internal ulong Everything => All.Count == 0 ? 0 : ulong.MaxValue >> (Most - All.Count);

    /// <summary>Of every aspect and completion: which completions the aspect cannot tell apart carry the same number, from 0 on.</summary>
    internal IReadOnlyList<int[]> GroupsByAspect { get; }

    /// <summary>What is found out about a catalogue; list, next readings and carry set share it.</summary>
    internal CompletedAnswers AnswersIn(Catalogue catalogue, Weights weights, Need need) =>
        answers is { } known && known.Catalogue == catalogue && known.Weights == weights ? known : answers = new(catalogue, new(catalogue, need, weights, [.. All.Select(completion => completion.Need)]), this, weights);

    /// <summary>What a facet means for the completions.</summary>
    internal CompletedAnswer Answer(Aspect aspect, int index, object facet, Weights weights) => new(
        completion =>
        {
            var finding = aspect.Judge(All[completion].Need, facet);
            return (finding.Verdict != Verdict.Fails, weights.Contribution(aspect, finding).Millionths, finding.Shortfall);
        },
        GroupsByAspect[index],
        weights.IsPaired(index));

    internal static Completions Of(Family family, Need need, int[] said, FieldCodes codes, IReadOnlyList<Machine> agreeing, IReadOnlyList<Field> givenUp, int most)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, Most);
        List<int> open = [.. codes.ReadBy.SelectMany(fields => fields).Distinct().Where(at => said[at] == FieldCodes.Unknown)];
        var (all, seen) = (new List<Completion>(), new Dictionary<string, int>(StringComparer.Ordinal));
        var values = new Dictionary<(int At, object Value), int>();
        foreach (var machine in agreeing)
        {
            var key = string.Join(',', open.Select(at => machine.Codes[at]));
            if (seen.TryGetValue(key, out var index)) all[index] = all[index] with { Weight = all[index].Weight + 1 };
            else if (all.Count == most) break;
            else
            {
                seen.Add(key, all.Count);
                var completed = family.Complete(need, machine.Spec);
                all.Add(new(completed, 1, open.ToDictionary(at => at, at => at < codes.SpecFields ? machine.Codes[at] : CodeOf(completed, at))));
            }
        }

        return new(all, agreeing.Count, givenUp, [.. codes.ReadBy.Select(fields => Groups(all, [.. fields.Intersect(open)]))]);

        // What follows for the site follows from plate and machine together, and may be what no machine alone says.
        int CodeOf(Need completed, int at)
        {
            if (codes.ValueOf(completed, at) is not { } value) return FieldCodes.Unknown;
            if (!values.TryGetValue((at, value), out var code)) values.Add((at, value), code = values.Count + 1);
            return code;
        }
    }

    private static int[] Groups(List<Completion> all, int[] fields)
    {
        var (groups, numbers) = (new int[all.Count], new Dictionary<string, int>(StringComparer.Ordinal));
        foreach (var (index, completion) in all.Index())
        {
            var key = string.Join(',', fields.Select(at => completion.Codes[at]));
            if (!numbers.TryGetValue(key, out groups[index])) numbers.Add(key, groups[index] = numbers.Count);
        }

        return groups;
    }
}

/// <summary>One thing that a need may be.</summary>
/// <param name="Need">The need, with what the machines say.</param>
/// <param name="Weight">How many machines say so.</param>
/// <param name="Codes">For every open field, by its place, a code of what it says.</param>
public sealed record Completion(Need Need, int Weight, IReadOnlyDictionary<int, int> Codes);
