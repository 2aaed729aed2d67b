using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Graph.Results;

[Name("Finding")]
[Description("One aspect's answer about one part: whether it meets, how near to the limit, what to change, and why.")]
internal sealed class FindingOut(AspectFinding one)
{
    [Description("The aspect's name.")]
    public string Aspect => one.Aspect.Name;

    [Description("A few words for the aspect.")]
    public string Title => one.Aspect.Title;

    [Description("Whether an unknown in it leaves the whole fit open (true), or becomes a check (false).")]
    public bool IsDeciding => one.Aspect.IsDeciding;

    [Description("The answer.")]
    public Verdict Verdict => one.Finding.Verdict;

    [Description("Why, in one sentence that names the limit.")]
    public string Sentence => one.Finding.Sentence;

    [Description("0 where nobody would give it a thought, 1 at the limit; dimensionless.")]
    public double Shortfall => one.Finding.Shortfall;

    [Description("The distance to the limit, where it is a number.")]
    public MarginOut? Margin => one.Finding.Margin is { } margin ? new(margin) : null;

    [Description("What to mind although the part meets.")]
    public string? Caution => one.Finding.Caution;

    [Description("What must be changed or checked on the part.")]
    public IEnumerable<ChangeOut> Changes => one.Finding.Changes.Select(change => new ChangeOut(change));

    [Description("What is not known, when the answer is unknown.")]
    public IEnumerable<MissingField> Missing => one.Finding.Missing.Select(missing => new MissingField(missing));

    [Description("Where the aspect's rule comes from.")]
    public SourceOut Source => new(one.Aspect.Source);

    internal static IEnumerable<FindingOut> AllOf(FitSheet sheet) => sheet.Findings.Select(one => new FindingOut(one));
}

[Name("Margin")]
[Description("How far inside (positive) or outside (negative) its limit something lies.")]
internal sealed class MarginOut(Margin margin)
{
    [Description("The distance to the limit, in the unit given beside it.")]
    public double Value => margin.Value;

    [Description("The distance's unit.")]
    public string Unit => margin.Unit;
}

[Name("Change")]
[Description("Something to change or check so that a part fits.")]
internal sealed class ChangeOut(Change change)
{
    [Description("The kind of change.")]
    public string Kind => change.Kind.Name;

    [Description("A few words with its numbers.")]
    public string Words => change.Text;

    [Description("Whether it is something to check rather than to alter.")]
    public bool IsCheck => change.Kind.IsCheck;

    internal static IEnumerable<ChangeOut> AllOf(FitSheet sheet) => sheet.Changes.Select(change => new ChangeOut(change));
}

[Name("Missing")]
[Description("A field whose value would decide an unknown.")]
internal sealed class MissingField(Missing missing)
{
    [Description("Whose field it is.")]
    public Side Side => missing.Side;

    [Description("The field's name.")]
    public string Field => missing.Field;
}

[Name("Source")]
[Description("Where a rule or figure comes from.")]
internal sealed class SourceOut(Source source)
{
    [Description("The standard and clause, or what the practice is.")]
    public string Text => source.Text;

    [Description("How far it was confirmed.")]
    public SourceStatus Status => source.Status;
}
