using System.Globalization;
using System.Text;
using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>Writes down what was measured, as a page that says what the figures are and where an aim was missed.</summary>
internal sealed class ModelCard
{
    /// <summary>A column of a calibration plot is so many characters high.</summary>
    private const int PlotRows = 11;

    private readonly StringBuilder text = new();

    /// <summary>The page so far.</summary>
    public string Text => text.ToString();

    public void Say(FormattableString sentence) => text.Append(FormattableString.Invariant(sentence)).Append('\n');

    public void Paragraph(string words) => text.Append(words).Append("\n\n");

    /// <summary>A table; the first column is words, the others figures.</summary>
    public void Table(IReadOnlyList<string> heads, IEnumerable<IReadOnlyList<string>> rows)
    {
        Row(heads);
        Row([.. heads.Select((_, at) => at == 0 ? "---" : "---:")]);
        foreach (var row in rows) Row(row);
        text.Append('\n');
    }

    /// <summary>What was told beside what happened, in ten bins of equally many: as figures, and drawn with the line on which both are the same.</summary>
    public void Calibration(IReadOnlyCollection<HeldOut> told)
    {
        var bins = Quality.Calibration(told);
        Table(["told, %", .. bins.Select(bin => Percent(bin.Told))], [["happened, %", .. bins.Select(bin => Percent(bin.Happened))], ["outcomes", .. bins.Select(bin => bin.Outcomes.ToString("0", CultureInfo.InvariantCulture))]]);
        text.Append("```text\n");
        for (var row = PlotRows - 1; row >= 0; row--)
        {
            var cells = Enumerable.Range(0, (PlotRows * 4) - 3).Select(at => Cell(bins, row, at));
            text.Append(CultureInfo.InvariantCulture, $"{row * 10,3} % |{string.Concat(cells).TrimEnd()}\n");
        }

        text.Append("       ").Append(string.Concat(Enumerable.Range(0, PlotRows).Select(at => (at * 10).ToString(CultureInfo.InvariantCulture).PadRight(4)))).Append("% told (o: happened; .: as told)\n```\n\n");
    }

    public static string Figure(double? value) => value?.ToString("0.0000", CultureInfo.InvariantCulture) ?? "–";

    private static string Percent(double share) => (100 * share).ToString("0", CultureInfo.InvariantCulture);

    private static char Cell(IReadOnlyList<CalibrationBin> bins, int row, int at) =>
        bins.Any(bin => Math.Round(bin.Told * 40) == at && Math.Round(bin.Happened * 10) == row) ? 'o' : at == row * 4 ? '.' : ' ';

    private void Row(IEnumerable<string> cells) => text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");
}
