using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

[Name("Diagnosis")]
[Description("What readings at an old part say before it is condemned. Nothing is condemned on an unknown.")]
internal sealed class DiagnosisOut(Diagnosed diagnosed) : NeedAnswer(diagnosed.Need)
{
    [Description("Whether it is the part.")]
    public Conclusion Conclusion => diagnosed.Diagnosis.Conclusion;

    [Description("How it failed, where to look instead, or what to find out.")]
    public string Sentence => diagnosed.Diagnosis.Sentence;

    [Description("The reading that brings it further; null when none is needed.")]
    public NextReadingOut? NextReading => diagnosed.Diagnosis.Next is { } next ? new(diagnosed.Need.Family, next) : null;

    [Description("What each reading says.")]
    public IEnumerable<ReadingCheckOut> Checks => diagnosed.Diagnosis.Checks.Select(check => new ReadingCheckOut(check));

    [Description("What killed it, as far as the readings show: mend it, or the new part dies the same way.")]
    public IEnumerable<MendFirstOut> MendFirst => diagnosed.Diagnosis.MendFirst.Select(mend => new MendFirstOut(mend));
}

[Name("AfterSwapReport")]
[Description("What readings at a new part say after the swap.")]
internal sealed class AfterSwapOut(SwapProved proved) : NeedAnswer(proved.Need)
{
    [Description("The part that was put in.")]
    public Part Part => new(proved.Part);

    [Description("What each reading says, in the order in which they are taken.")]
    public IEnumerable<ReadingCheckOut> Readings => proved.Report.Readings.Select(check => new ReadingCheckOut(check));

    [Description("What is likely wrong, the likeliest first; empty when nothing is.")]
    public IEnumerable<LikelyCauseOut> Causes => proved.Report.Causes.Select(cause => new LikelyCauseOut(cause));
}

[Name("NextReading")]
[Description("A reading to take next.")]
internal sealed class NextReadingOut(Family family, NextReading next)
{
    [Description("The field's name, of the readings, or of the side that is named.")]
    public string Field => next.Field;

    [Description("What a person calls it.")]
    public string Label => (next.Side switch
    {
        null => family.ReadingsShape,
        Fit.Judging.Side.Site => family.SiteShape,
        _ => family.SpecShape,
    }).Find(next.Field)!.Label;

    [Description("Whose field it is; null for one of the readings.")]
    public Side? Side => next.Side;

    [Description("What it will tell, and how to take it.")]
    public string Why => next.Why;
}

[Name("ReadingCheck")]
[Description("What one reading, or a few that belong together, say.")]
internal sealed class ReadingCheckOut(ReadingCheck check)
{
    [Description("A few words for what was looked at.")]
    public string Title => check.Title;

    [Description("What they say.")]
    public ReadingVerdict Verdict => check.Verdict;

    [Description("Why, with the limit.")]
    public string Sentence => check.Sentence;

    [Description("The limit alone, with its unit; null where there is none.")]
    public string? Limit => check.Limit;

    [Description("Where the limit comes from.")]
    public SourceOut Source => new(check.Source);
}

[Name("MendFirst")]
[Description("Something that kills parts, found here.")]
internal sealed class MendFirstOut(MendFirst mend)
{
    [Description("Its name.")]
    public string Name => mend.Name;

    [Description("What was found, with its limit.")]
    public string Cause => mend.Cause;

    [Description("What to do about it.")]
    public string Mend => mend.Mend;

    [Description("Where the limit comes from.")]
    public SourceOut Source => new(mend.Source);
}

[Name("LikelyCause")]
[Description("A cause that the readings make likely.")]
internal sealed class LikelyCauseOut(LikelyCause cause)
{
    [Description("Its name.")]
    public string Name => cause.Name;

    [Description("What it is, in a few words.")]
    public string Title => cause.Title;

    [Description("How much of the evidence speaks for it, in points of the table of causes; above 0.")]
    public int Weight => cause.Weight;

    [Description("What speaks for it, and what against.")]
    public IEnumerable<string> Evidence => cause.Evidence;

    [Description("What to look at to be sure.")]
    public string Check => cause.Check;
}
