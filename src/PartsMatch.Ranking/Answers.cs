using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>A finding, and what it means for any part that carries its facet.</summary>
/// <param name="Finding">The aspect's answer.</param>
/// <param name="Fit">What the whole fit is at best.</param>
/// <param name="Contribution">What it takes from the score.</param>
internal sealed record Answer(Finding Finding, PartFit Fit, Score Contribution);

/// <summary>What one query has found out: each distinct facet is judged once, and only when a part asks for it.</summary>
internal sealed class Answers(Catalogue catalogue, Need need, Weights? weights)
{
    private readonly Answer?[][] known = [.. catalogue.Columns.Select(column => new Answer?[column.Facets.Count])];

    /// <summary>Walks over one part's aspects in order until more of them fail than allowed.</summary>
    /// <param name="row">The part's row.</param>
    /// <param name="mostFailures">How many may fail before the walk stops.</param>
    /// <returns>How many failed; the score without them; the fit, which is final unless the walk stopped.</returns>
    public (int Failures, Score Score, PartFit Fit) Walk(int row, int mostFailures)
    {
        var (failures, score, fit) = (0, Score.Zero, PartFit.DropIn);
        for (var aspect = 0; aspect < known.Length && failures <= mostFailures; aspect++)
        {
            var answer = At(aspect, row);
            score += answer.Contribution;
            if (answer.Fit == PartFit.DoesntFit) failures++;
            if (answer.Fit > fit) fit = answer.Fit;
        }

        return (failures, score, fit);
    }

    /// <summary>All findings about the part in a row.</summary>
    public FitSheet SheetOf(int row) => new([.. catalogue.Family.Aspects.Select((aspect, index) => new AspectFinding(aspect, At(index, row).Finding))]);

    private Answer At(int aspect, int row)
    {
        var code = catalogue.Columns[aspect].Codes[row];
        return known[aspect][code] ??= Judge(catalogue.Family.Aspects[aspect], catalogue.Columns[aspect].Facets[code]);
    }

    private Answer Judge(Aspect aspect, object facet)
    {
        var finding = aspect.Judge(need, facet);
        return new(finding, FitSheet.FitOf(finding.Verdict, aspect.IsDeciding), weights?.Contribution(aspect, finding) ?? Score.Zero);
    }
}
