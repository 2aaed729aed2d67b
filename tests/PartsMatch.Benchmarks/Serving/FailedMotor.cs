using System.Text.Json;
using PartsMatch.Benchmarks.Motors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>A failed motor as somebody asks about it: its plate's text, and what was read at its place.</summary>
internal sealed record FailedMotor(string PlateText, IReadOnlyList<NamedText> Site)
{
    private const string Query = "query($need: NeedInput!) { replacements(need: $need, first: 10) { edges { node { part { number } fit likelihood } } } }";

    /// <summary>Different ones, with all that decides on the plate and at the place, and a part that replaces each.</summary>
    public static IReadOnlyList<FailedMotor> Draw(ManyMotors motors, MotorStore store, int count, int seed)
    {
        var random = new Random(seed);
        var drawn = new Dictionary<string, FailedMotor>(StringComparer.Ordinal);
        while (drawn.Count < count)
        {
            var motor = motors.MotorBy(random);
            var failed = new FailedMotor(TextOf(motor), MotorFamily.Motor.SiteShape.Write(MotorNeeds.SiteOf(motor, random)));
            if (IsKnown(store, failed)) drawn.TryAdd(failed.PlateText, failed);
        }

        return [.. drawn.Values];
    }

    /// <summary>What is sent to ask for its replacements.</summary>
    public string Asked => JsonSerializer.Serialize(new
    {
        query = Query,
        variables = new { need = new { motor = new { plateText = PlateText, site = Site.ToDictionary(text => text.Name, text => text.Text) } } },
    });

    private static bool IsKnown(MotorStore store, FailedMotor failed)
    {
        var ranked = store.Judgements.Replacements(new(MotorFamily.Motor, [], failed.PlateText, OldPartNumber: null, failed.Site), first: 1, after: null, include: null).Value;
        return ranked is not null && ranked.Need.Completions.IsNone && !ranked.Need.Reading.Complaints.Any()
            && ranked.Parts.Any(one => one.Ranked.Explained.Sheet.Fit != PartFit.CantTellYet);
    }

    /// <summary>A plate on which every field stands in a line of its own, behind its label where it has one: words such as TEAO say by themselves what they are.</summary>
    private static string TextOf(MotorSpec motor) => string.Join('\n', MotorFamily.Motor.SpecShape.Write(motor).Select(text => $"{LabelOf(text.Name)} {text.Text}".Trim()));

    private static string? LabelOf(string field) => MotorVocabulary.All.Labels.FirstOrDefault(label => label.Field == field && !label.OnlyBehind)?.Labels[0];
}
