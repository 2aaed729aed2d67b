using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Service.Graph.Results;

[Name("InstallNotes")]
[Description("How to put a part in, made from its findings: the same part has other notes at another site.")]
internal sealed class NotesOut(InstallNotes notes)
{
    [Description("What to do, in working order: every change, every check and every field that is not known is exactly one step.")]
    public IEnumerable<StepOut> Steps => notes.Steps.Select(step => new StepOut(step));
}

[Name("Step")]
[Description("One thing to do.")]
internal sealed class StepOut(Step step)
{
    [Description("When it is done.")]
    public Stage Stage => step.Stage;

    [Description("What to do, in a few words with its numbers and units.")]
    public string Words => step.Words;

    [Description("How and why; null when the words say it all.")]
    public string? Detail => step.Detail;

    [Description("A drawing in plain text, to be shown in a font of fixed width: lines of at most 40 characters. Null when there is none.")]
    public string? Diagram => step.Diagram;

    [Description("The kind of change that it carries out; null for what every job needs, and for what is to be found out.")]
    public string? Change => step.Kind?.Name;
}

[Name("KitItem")]
[Description("Something to bring besides the part.")]
internal sealed class KitItemOut(KitItem item)
{
    [Description("What it is, with its numbers and units.")]
    public string What => item.What;

    [Description("How many.")]
    public int Quantity => item.Quantity;
}

[Name("Caution")]
[Description("Something to mind, said once.")]
internal sealed class CautionOut(Caution caution)
{
    [Description("The stage of the job at which it matters.")]
    public Stage Stage => caution.Stage;

    [Description("The caution, in whole sentences.")]
    public string Words => caution.Words;
}
