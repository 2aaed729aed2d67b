using System.Numerics;
using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>What a need with unknowns may be in full: known machines, each counting the more, the nearer it comes to what is known, those that aspects cannot tell apart counted together. For one thread at a time.</summary>
public sealed class Completions
{
    /// <summary>The most that are told apart in one query: passing is one bit of a word each. Of more machines that differ some stand for their like (<see cref="Standing"/>).</summary>
    public const int Most = 64;

    /// <summary>So many are told apart where nobody asks for more: what a query costs grows with them, and a likelihood is told to a few of 100 (docs/performance.md).</summary>
    public const int Usual = 16;

    private readonly Nearness? nearness;
    private readonly IReadOnlyList<bool> areAlike;
    private CompletedAnswers? answers;

    private Completions(IReadOnlyList<Completion> all, IReadOnlyList<int> open, IReadOnlyList<ulong[]> groupsByAspect, IReadOnlyList<bool> areAlike, Nearness? nearness)
    {
        (All, Open, GroupsByAspect, this.areAlike, this.nearness) = (all, open, groupsByAspect, areAlike, nearness);
        Machines = nearness?.Weights.Count(weight => weight > 0) ?? 0;
        (Weight, Weights) = (all.Sum(completion => completion.Weight), [.. all.Select(completion => completion.Weight)]);
    }

    /// <summary>For a need in which nothing is open that a plate could tell.</summary>
    public static Completions None { get; } = new([], [], [], [], null);

    /// <summary>The completions.</summary>
    public IReadOnlyList<Completion> All { get; }

    /// <summary>Whether the need is taken as it is.</summary>
    public bool IsNone => All.Count == 0;

    /// <summary>How many known machines count at all.</summary>
    public int Machines { get; }

    /// <summary>How many known machines say nothing else than what is known.</summary>
    public int Agreeing => nearness?.Agreeing() ?? 0;

    /// <summary>As how many alike machines they count together: a few near ones may count more than hundreds far off.</summary>
    public double Effective => nearness?.Effective ?? 0;

    /// <summary>What is known, and is another thing in most of what counts.</summary>
    public IReadOnlyList<Field> Differing => nearness?.Differing() ?? [];

    /// <summary>What all completions count together.</summary>
    internal int Weight { get; }

    /// <summary>What each completion counts.</summary>
    internal int[] Weights { get; }

    /// <summary>A bit for every completion.</summary>
    internal ulong Everything => All.Count == 0 ? 0 : ulong.MaxValue >> (Most - All.Count);

    /// <summary>The places of the fields that the need leaves open and some aspect reads, the most telling first.</summary>
    internal IReadOnlyList<int> Open { get; }

    /// <summary>Of every aspect and completion, a bit for each completion that the aspect cannot tell from it.</summary>
    internal IReadOnlyList<ulong[]> GroupsByAspect { get; }

    /// <summary>Whether an aspect, by its place in the family's order, cannot tell any completion from the need itself: it looks at nothing open.</summary>
    internal bool AreAlikeFor(int aspect) => areAlike[aspect];

    /// <summary>What is found out about a catalogue; list, next readings and carry set share it.</summary>
    internal CompletedAnswers AnswersIn(Catalogue catalogue, Weights weights, Need need) =>
        answers is { } known && known.Catalogue == catalogue && known.Weights == weights ? known : answers = new(catalogue, new(catalogue, need, weights, [.. All.Select(completion => completion.Need)]), this, weights);

    /// <summary>Completes a need.</summary>
    /// <param name="family">The family.</param>
    /// <param name="need">The need.</param>
    /// <param name="codes">The codes of what machines say.</param>
    /// <param name="machines">The known machines; at least one.</param>
    /// <param name="known">What is known of the need.</param>
    /// <param name="most">How many different completions at most.</param>
    internal static Completions Of(Family family, Need need, FieldCodes codes, MachineTable machines, IReadOnlyList<KnownField> known, int most)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(most, Most);
        List<int> open = [.. codes.Read.Where(at => codes.ValueOf(need, at) is null)];
        var near = Nearness.Of(machines, known);
        var kept = Standing.Of(Alike(machines, near.Weights, open), most, open, machines, codes);
        var values = new Dictionary<(int At, object Value), int>();
        List<Completion> all = [.. kept.Select(one =>
        {
            var machine = machines.All[one.Machine];
            var completed = family.Complete(need, machine.Spec);
            int[] said = [.. machine.Codes];
            foreach (var at in open.Where(at => at >= codes.SpecFields)) said[at] = CodeOf(completed, at);
            return new Completion(completed, one.Weight, said);
        })];
        var isOpen = open.ToHashSet();
        var openOf = codes.ReadBy.Select(fields => fields.Where(isOpen.Contains).ToList()).ToList();
        return new(all, open, [.. openOf.Select(fields => Groups(all, fields))], [.. openOf.Select(fields => fields.Count == 0)], near);

        // What follows for the site follows from plate and machine together, and may be what no machine alone says.
        int CodeOf(Need completed, int at)
        {
            if (codes.ValueOf(completed, at) is not { } value) return FieldCodes.Unknown;
            if (!values.TryGetValue((at, value), out var code)) values.Add((at, value), code = values.Count + 1);
            return code;
        }
    }

    /// <summary>The machines that count, those together that say the same wherever the need says nothing.</summary>
    private static List<Standing> Alike(MachineTable machines, int[] weights, List<int> open)
    {
        var (all, seen) = (new List<Standing>(), new Dictionary<int, int>(machines.SayingTheSame(open)));
        for (var machine = 0; machine < weights.Length; machine++)
        {
            if (weights[machine] == 0) continue;
            ref var at = ref CollectionsMarshal.GetValueRefOrAddDefault(seen, machine, out var isKnown);
            if (isKnown) CollectionsMarshal.AsSpan(all)[at].Weight += weights[machine];
            else
            {
                at = all.Count;
                all.Add(new(machine, weights[machine]));
            }
        }

        return all;
    }

    private static ulong[] Groups(List<Completion> all, List<int> fields)
    {
        var groups = new ulong[all.Count];
        for (var one = 0; one < groups.Length; one++)
        {
            if (groups[one] != 0) continue;
            var group = 0UL;
            for (var other = one; other < groups.Length; other++)
            {
                if (SayTheSame(all[one].Codes, all[other].Codes, fields)) group |= 1UL << other;
            }

            for (var left = group; left != 0; left &= left - 1) groups[BitOperations.TrailingZeroCount(left)] = group;
        }

        return groups;
    }

    private static bool SayTheSame(int[] one, int[] other, List<int> fields)
    {
        foreach (var at in fields)
        {
            if (one[at] != other[at]) return false;
        }

        return true;
    }
}

/// <summary>One thing that a need may be.</summary>
/// <param name="Need">The need, with what the machines say.</param>
/// <param name="Weight">How much they count.</param>
public sealed record Completion(Need Need, int Weight)
{
    internal Completion(Need need, int weight, int[] codes)
        : this(need, weight) => Codes = codes;

    /// <summary>Of every open field, by its place, a code of what it says.</summary>
    internal int[] Codes { get; } = [];
}
