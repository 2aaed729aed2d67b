using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Pages.Sheets;

/// <summary>All that is found about one part for one need, and how to put it in.</summary>
public sealed class SheetModel(NeedTyped typed, JudgedPart judged)
{
    /// <summary>More than so many entries do not go onto two pages with all that belongs to them (tried with the demo catalogue).</summary>
    private const int MostInShort = 40;

    /// <summary>A question that asks for something takes about twice the room of a step.</summary>
    private const int LinesOfQuestion = 2;

    public NeedTyped Typed => typed;

    public NeedRead Need => judged.Need;

    public Family Family => Need.Family;

    public CatalogueEntry Part => judged.Part;

    public FitSheet Sheet => judged.Explained.Sheet;

    public Ranking.Likelihood? Likelihood => judged.Explained.Likelihood;

    public InstallNotes Notes => judged.Notes;

    public IReadOnlyList<Difference> Differences { get; } = judged.Need.Family.WillDiffer(judged.Need.Reading.Need, judged.Part.Spec);

    public IReadOnlyList<Drawing> Drawings { get; } = judged.Need.Family.Drawings(judged.Need.Reading.Need, judged.Part.Spec);

    /// <summary>The stages that have steps or cautions, in working order, with the number of each step.</summary>
    public IReadOnlyList<(Stage Stage, IReadOnlyList<Caution> Cautions, IReadOnlyList<(int Number, Step Step)> Steps)> Stages { get; } =
    [
        .. judged.Notes.Stages.Select(stage => (
            stage,
            (IReadOnlyList<Caution>)[.. judged.Notes.Cautions.Where(caution => caution.Stage == stage)],
            (IReadOnlyList<(int, Step)>)[.. judged.Notes.Steps.Select((step, at) => (Number: at + 1, Step: step)).Where(one => one.Step.Stage == stage)])),
    ];

    /// <summary>The questions that ask for something, or are not known, or fail; then those that are met as it is.</summary>
    public IReadOnlyList<Comparison> Comparisons { get; } =
        Comparison.AllOf(judged.Need, judged.Part, judged.Explained.Sheet);

    /// <summary>Whether there is so much to say that paper has to leave out what is said twice.</summary>
    public bool IsLong => (LinesOfQuestion * Comparisons.Count(one => !one.IsMet)) + Notes.Steps.Count + Differences.Count > MostInShort;

    /// <summary>In which units most of old, new and site are written; as given where it is even.</summary>
    public Units WrittenIn => (Family.SpecShape.UnitsLean(Need.Reading.Need.Plate) + Family.SpecShape.UnitsLean(Part.Spec) + Family.SiteShape.UnitsLean(Need.Reading.Need.Site)) switch
    {
        > 0 => Units.Us,
        < 0 => Units.Si,
        _ => Units.AsGiven,
    };

    public IEnumerable<Missing> ToFindOut => Sheet.Findings.Where(one => one.Finding.Verdict == Verdict.Unknown).SelectMany(one => one.Finding.Missing).Distinct();

    public string Address => typed.To(SheetEndpoints.Path, new NamedText(SheetEndpoints.Part, Part.Stored.Number));

    public string Before => typed.To(Proofs.ProofPages.BeforePath);

    public string After => typed.To(Proofs.ProofPages.AfterPath, new NamedText(Proofs.ProofPages.Part, Part.Stored.Number));

    /// <summary>Where it is told how it went, once it is in.</summary>
    public string HowItWent => typed.To(Outcomes.OutcomeEndpoints.Path, new NamedText(Outcomes.OutcomeTyped.PartName, Part.Stored.Number));

    public string List => typed.To(Replacements.ReplacementsEndpoints.Path);
}
