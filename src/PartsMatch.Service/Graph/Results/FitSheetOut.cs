using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

[Name("FitSheet")]
[Description("Everything found about one part for one need.")]
internal sealed class FitSheetOut(JudgedPart judged) : NeedAnswer(judged.Need)
{
    [Description("The part.")]
    public Part Part => new(judged.Part);

    [Description("Whether it does the job.")]
    public PartFit Fit => judged.Explained.Sheet.Fit;

    [Description("In one sentence: what must be changed on it, what checked, what is not known, or why it does not fit.")]
    public string Summary => judged.Explained.Sheet.Summary;

    [Description("How likely it does the job the first time, in whole percent, 1 to 99; null when an aspect fails.")]
    public int? Likelihood => judged.Explained.Likelihood?.Percent;

    [Description("What the likelihood is worked out from: hand-set weights, or outcomes of past installations; null when there is none.")]
    public string? LikelihoodFrom => judged.Explained.Likelihood is { } likelihood ? Words.From(likelihood) : null;

    [Description("Over how many known machines the likelihood was averaged, the nearer to what is known the more each counts, since the plate does not tell enough; 0 when it is the need's own, null when there is none.")]
    public int? LikelihoodOver => judged.Explained.Likelihood?.Machines;

    [Description("The sum of the contributions, in units of log-odds; never positive.")]
    public double Score => judged.Explained.Score.Value;

    [Description("What each aspect takes from the score, and behind them pairs of aspects and the part's record where they take anything. They sum to it.")]
    public IEnumerable<ContributionOut> Contributions => judged.Explained.Contributions.Select(one => new ContributionOut(one));

    [Description("All that must be changed or checked.")]
    public IEnumerable<ChangeOut> Changes => ChangeOut.AllOf(judged.Explained.Sheet);

    [Description("What will be different once it runs: estimates, each with its band and what it assumes; empty when the plates tell too little.")]
    public IEnumerable<DifferenceOut> WillDiffer => judged.Need.Family.WillDiffer(judged.Need.Reading.Need, judged.Part.Spec).Select(one => new DifferenceOut(one));

    [Description("How to put it in, in working order; null when it does not fit.")]
    public NotesOut? Notes => judged.Explained.Sheet.Fit == PartFit.DoesntFit ? null : new(judged.Notes);

    [Description("What to bring besides the part; empty when it does not fit.")]
    public IEnumerable<KitItemOut> Kit => judged.Notes.Kit.Select(item => new KitItemOut(item));

    [Description("What to mind, in working order, each said once; empty when it does not fit.")]
    public IEnumerable<CautionOut> Cautions => judged.Notes.Cautions.Select(caution => new CautionOut(caution));

    [Description("One finding an aspect, in the family's order.")]
    public IEnumerable<FindingOut> Findings => FindingOut.AllOf(judged.Explained.Sheet);
}

[Name("Contribution")]
[Description("What an aspect, a pair of aspects or a part's own record takes from its score.")]
internal sealed class ContributionOut(Contribution contribution)
{
    [Description("The aspect's name; of a pair both names with a plus between; of a part's record partRecord.")]
    public string Aspect => contribution.Name;

    [Description("A few words for it.")]
    public string Title => contribution.Title;

    [Description("In units of log-odds, to a millionth; never positive. A failed aspect takes nothing: it is a gate.")]
    public double Amount => contribution.Amount.Value;
}
