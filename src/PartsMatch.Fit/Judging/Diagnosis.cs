using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Fit.Judging;

/// <summary>Whether it is the part.</summary>
public enum Conclusion
{
    /// <summary>The part has failed; the sentence says how.</summary>
    PartHasFailed,

    /// <summary>Something else is to be mended; the sentence says where to look.</summary>
    NotThePart,

    /// <summary>The readings do not tell yet; the next one is named.</summary>
    ReadNext,

    /// <summary>Nothing that was read is surely wrong; what of it does not tell is named.</summary>
    NothingWrongFound,
}

/// <summary>A reading to take next.</summary>
/// <param name="Field">The field's name.</param>
/// <param name="Why">What it will tell, in a sentence that says how to take it.</param>
/// <param name="Side">Whose field it is; null for one of the readings.</param>
public sealed record NextReading(string Field, string Why, Side? Side = null);

/// <summary>Something that kills parts, found here: mend it, or the new part dies the same way.</summary>
/// <param name="Name">Its name at every edge, in camel case: supplyUnbalanced.</param>
/// <param name="Cause">What was found, in one sentence with its limit.</param>
/// <param name="Mend">What to do about it, as a step of the notes.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record MendFirst(string Name, string Cause, string Mend, Source Source)
{
    /// <summary>The part of another kind that is to be replaced; null where nothing is, or nobody can tell what.</summary>
    public OtherPart? Replace { get; init; }
}

/// <summary>A part of another kind than the one that was read at, with what is known of it and of its place from there: empty records where nothing is.</summary>
/// <param name="Family">Its kind.</param>
/// <param name="Plate">What it is.</param>
/// <param name="Site">What it serves.</param>
public sealed record OtherPart(Family Family, Spec Plate, Site Site);

/// <summary>What readings at an old part say before it is condemned.</summary>
/// <param name="Conclusion">Whether it is the part.</param>
/// <param name="Sentence">How it failed, where to look instead, or what to find out.</param>
/// <param name="Next">The reading that brings it further; null when none is needed.</param>
/// <param name="Checks">What each reading says, in the order of the rules.</param>
/// <param name="MendFirst">What killed it, as far as the readings show.</param>
public sealed record Diagnosis(Conclusion Conclusion, string Sentence, NextReading? Next, IReadOnlyList<ReadingCheck> Checks, IReadOnlyList<MendFirst> MendFirst)
{
    /// <summary>Measured figures against their limits; none of what was not measured.</summary>
    public IReadOnlyList<Drawing> Drawings { get; init; } = [];

    /// <summary>Asks every rule. The first that concludes decides, but nothing is cleared past a bad reading that waits for another one; else the first that would have something read asks for it. What is bad when nothing is left to ask and nothing condemns the part is something else's to mend.</summary>
    /// <param name="rules">The rules in order: what condemns a part by itself stands before what clears it, and both before what asks.</param>
    /// <param name="one">The case.</param>
    /// <param name="mendFirst">What was found to mend.</param>
    public static Diagnosis Of<TCase>(IReadOnlyList<ReadingRule<TCase>> rules, TCase one, IReadOnlyList<MendFirst> mendFirst)
    {
        var rulings = rules.Select(rule => (Rule: rule, Ruling: rule.Judge(one))).Where(pair => pair.Ruling is not null).ToList();
        IReadOnlyList<ReadingCheck> checks = [.. rulings.Select(pair => pair.Rule.CheckOf(pair.Ruling)).OfType<ReadingCheck>()];
        var before = rulings.TakeWhile(pair => pair.Ruling!.Concludes is null).ToList();
        var waits = before.Exists(pair => pair.Ruling is { Verdict: ReadingVerdict.Bad, Asks: not null });
        if (rulings.Skip(before.Count).FirstOrDefault().Ruling is { } decided && !(waits && decided.Concludes == Conclusion.NotThePart)) return new(decided.Concludes!.Value, decided.Sentence, decided.Asks, checks, mendFirst);
        if (rulings.Find(pair => pair.Ruling!.Asks is not null).Ruling?.Asks is { } next) return new(Conclusion.ReadNext, next.Why, next, checks, mendFirst);
        if (checks.FirstOrDefault(check => check.Verdict == ReadingVerdict.Bad) is { } bad) return new(Conclusion.NotThePart, bad.Sentence, null, checks, mendFirst);
        var open = checks.FirstOrDefault(check => check.Verdict == ReadingVerdict.CantTell);
        return new(Conclusion.NothingWrongFound, open is null ? "Nothing that was read is wrong." : $"Nothing that was read is surely wrong, and not all of it tells. {open.Title}: {open.Sentence}", null, checks, mendFirst);
    }
}
