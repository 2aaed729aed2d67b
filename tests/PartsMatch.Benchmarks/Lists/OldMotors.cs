using System.Text;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Benchmarks.Parts;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Benchmarks.Lists;

/// <summary>One row of a list: a motor of the catalogue that failed, and where it sits.</summary>
internal sealed record OldMotor(string Number, IReadOnlyList<NamedText> Site);

/// <summary>Motors of the catalogue in places that they suit, each drawn once.</summary>
internal sealed class OldMotors(ManyMotors motors, ListService service, int seed)
{
    /// <summary>So many draws for a row that is wanted; a small catalogue may not have as many of a kind.</summary>
    private const int MostDraws = 40;

    /// <summary>Rows whose plates leave something open that decides, or rows of which none does; fewer than asked for where the catalogue has no more.</summary>
    public IReadOnlyList<OldMotor> Draw(int count, bool areOpen)
    {
        var random = new Random(seed);
        var (seen, rows) = (new HashSet<int>(), new List<OldMotor>());
        for (var draw = 0; draw < count * MostDraws && rows.Count < count; draw++)
        {
            var row = random.Next(motors.Count);
            if (!seen.Add(row)) continue;
            var site = MotorFamily.Motor.SiteShape.Write(MotorNeeds.SiteOf(motors.WholeAt(row), random));
            var old = new OldMotor(ManyParts.NumberAt(row), site);
            if (service.LeavesOpen(old) == areOpen) rows.Add(old);
        }

        return rows;
    }

    /// <summary>The rows as a shop would send them: numbers, and a column for every field of the site.</summary>
    public static string List(IEnumerable<OldMotor> rows)
    {
        List<string> fields = [.. MotorFamily.Motor.SiteShape.Fields.Select(field => field.Name)];
        var text = new StringBuilder().AppendJoin(',', fields.Select(field => $"site.{field}").Prepend("number")).Append('\n');
        foreach (var row in rows)
        {
            var said = row.Site.ToDictionary(one => one.Name, one => one.Text, StringComparer.Ordinal);
            text.AppendJoin(',', fields.Select(field => $"\"{said.GetValueOrDefault(field)?.Replace("\"", "\"\"", StringComparison.Ordinal)}\"").Prepend(row.Number)).Append('\n');
        }

        return text.ToString();
    }
}
