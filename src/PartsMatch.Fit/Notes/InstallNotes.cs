using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Notes;

/// <summary>How to put a part in: made from its findings, never from its name, so that the same part has other notes at another site.</summary>
/// <param name="Steps">What to do, in working order. Every change and check of the fit sheet is exactly one step, and so is every field that is not known.</param>
/// <param name="Kit">What to bring besides the part; equal things are added up.</param>
/// <param name="Cautions">What to mind, in working order, each said once.</param>
public sealed record InstallNotes(IReadOnlyList<Step> Steps, IReadOnlyList<KitItem> Kit, IReadOnlyList<Caution> Cautions)
{
    /// <summary>The stages that have a step or a caution, in working order. A caution counts without a step beside it.</summary>
    public IReadOnlyList<Stage> Stages => [.. Steps.Select(step => step.Stage).Concat(Cautions.Select(caution => caution.Stage)).Distinct().Order()];

    /// <summary>None: a part that does not fit is not put in.</summary>
    public static InstallNotes None { get; } = new([], [], []);

    /// <summary>The notes that follow from findings; <see cref="None"/> when an aspect fails.</summary>
    /// <param name="sheet">All findings about the part.</param>
    /// <param name="job">What the family says of every job.</param>
    /// <param name="mend">What killed the old part, as far as readings told; it is mended before the new one goes in.</param>
    /// <param name="spec">The fields of a plate or part, for what is not known of them.</param>
    /// <param name="site">The fields of a site, likewise.</param>
    public static InstallNotes Of(FitSheet sheet, JobSteps job, IReadOnlyList<MendFirst> mend, Shape spec, Shape site)
    {
        if (sheet.Fit == PartFit.DoesntFit) return None;
        var changes = sheet.Changes.DistinctBy(change => (change.Kind, change.Text)).ToList();
        IEnumerable<Step> steps =
        [
            .. job.Before,
            .. FindOut.Steps(sheet, spec, site),
            .. mend.Select(one => new Step(Stage.MendFirst, one.Mend, $"{one.Cause} {one.Source}.")),
            .. changes.Select(change => new Step(change.Kind.Stage, change.Text, change.Kind.HowTo, job.Diagram(change), change.Kind)),
            .. job.After,
        ];
        IEnumerable<Caution> cautions = [.. job.Cautions, .. sheet.Findings.Where(one => one.Finding.Caution is not null).Select(one => new Caution(one.Finding.CautionAt, one.Finding.Caution!))];

        // OrderBy keeps the order of what stands in one stage.
        return new(
            [.. DrawnOnce(steps.OrderBy(step => step.Stage))],
            Merged([.. changes.SelectMany(change => change.Kit), .. job.Kit]),
            [.. cautions.DistinctBy(caution => caution.Words).OrderBy(caution => caution.Stage)]);
    }

    /// <summary>A drawing stands at the first step that needs it, and is not repeated at the next.</summary>
    private static IEnumerable<Step> DrawnOnce(IEnumerable<Step> steps)
    {
        HashSet<string> drawn = [];
        return steps.Select(step => step.Diagram is null || drawn.Add(step.Diagram) ? step : step with { Diagram = null });
    }

    private static IReadOnlyList<KitItem> Merged(IReadOnlyList<KitItem> kit) =>
        [.. kit.GroupBy(item => item.What).Select(same => same.First() with { Quantity = same.Sum(item => item.Quantity) })];
}
