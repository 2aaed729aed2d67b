using System.Text;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Exchange;

/// <summary>Named texts in one cell: name=text, joined by semicolons, with a backslash before a semicolon or a backslash inside a text.</summary>
internal static class FieldsCell
{
    public const string Expected = "Fields are written as name=text with a semicolon between them, such as power=1/4 hp; speed=1075 rpm. A backslash goes before a semicolon inside a text.";

    private const char Between = ';';
    private const char Escape = '\\';

    public static string Write(IEnumerable<Store.NamedText> texts) => string.Join($"{Between} ", texts.Select(text => $"{text.Name}={Escaped(text.Text)}"));

    /// <summary>The texts; null when a field has no name.</summary>
    public static IReadOnlyList<NamedText>? Read(string cell)
    {
        List<string> fields = [.. Apart(cell)];
        return fields.TrueForAll(field => field.IndexOf('=', StringComparison.Ordinal) > 0) ? [.. fields.Select(Field)] : null;
    }

    private static NamedText Field(string field)
    {
        var at = field.IndexOf('=', StringComparison.Ordinal);
        return new(field[..at].Trim(), field[(at + 1)..].Trim());
    }

    private static string Escaped(string text) => text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace(";", "\\;", StringComparison.Ordinal);

    /// <summary>The fields with what was escaped in them as it is meant; blank ones are left out.</summary>
    private static IEnumerable<string> Apart(string cell)
    {
        var field = new StringBuilder();
        for (var at = 0; at <= cell.Length; at++)
        {
            if (at < cell.Length && cell[at] != Between)
            {
                if (cell[at] == Escape && at + 1 < cell.Length && cell[at + 1] is (Between or Escape)) at++;
                field.Append(cell[at]);
                continue;
            }

            if (!string.IsNullOrWhiteSpace(field.ToString())) yield return field.ToString();
            field.Clear();
        }
    }
}
