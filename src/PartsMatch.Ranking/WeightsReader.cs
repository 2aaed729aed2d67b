using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>Reads one weights document and gathers all that is wrong with it.</summary>
internal sealed class WeightsReader(Family family, Func<string, string> numberInRanking)
{
    private static readonly string[] RootNames = ["version", "kind", "origin", "madeOn", "intercept", "aspects", "pairs", "records", "training"];
    private static readonly string[] FeatureNames = ["shortfall", "effort", "unknown"];
    private static readonly string[] TrainingNames = ["outcomes", "invented", "from", "to", "figures", "calibration"];
    private static readonly string[] PointNames = ["told", "happened", "outcomes"];

    private readonly List<Complaint> complaints = [];

    /// <summary>The weights, or everything that is wrong.</summary>
    public (Weights? Weights, IReadOnlyList<Complaint> Complaints) Read(JsonElement root)
    {
        var members = Members(root, "", RootNames);
        if (members is null) return (null, complaints);

        if (Required(members, "", "version") is { } version && !(version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) && number is >= 1 and <= WeightsFile.Version))
        {
            Complain("version", version, $"must be 1 or {WeightsFile.Version.ToString(CultureInfo.InvariantCulture)}, the versions that this program reads");
        }

        if (Required(members, "", "kind") is { } kind && Text(kind) != family.Kind) Complain("kind", kind, $"must be “{family.Kind}”: weights of one kind of part say nothing of another");
        var origin = WeightsOrigin.HandSet;
        if (Required(members, "", "origin") is { } from && !WeightsFile.Origins.TryGetValue(Text(from) ?? "", out origin)) Complain("origin", from, "must be “hand-set”, “rescaled” or “trained”");
        var madeOn = members.TryGetValue("madeOn", out var day) ? Day(day, "madeOn") : null;
        var intercept = Required(members, "", "intercept") is { } element ? Number(element, "intercept", Weights.IsIntercept, -Weights.MostIntercept, Weights.MostIntercept) : 0;
        var aspects = members.TryGetValue("aspects", out var all) ? Aspects(all) : [];
        var pairs = Costs(members, "pairs", [.. family.Pairs.Select(pair => pair.Name)]);
        var records = Costs(members, "records", names: null).GroupBy(record => numberInRanking(record.Key), StringComparer.Ordinal).ToDictionary(part => part.Key, part => part.Max(record => record.Value), StringComparer.Ordinal);
        var training = members.TryGetValue("training", out var trainedOn) ? Trained(trainedOn) : null;

        // Older files have no word of their own for those that were only rescaled.
        if (origin == WeightsOrigin.Trained && training?.Figures.GetValueOrDefault(WeightsFile.IsTrained, 1) == 0) origin = WeightsOrigin.Rescaled;
        var given = new WeightsGiven(origin, intercept)
        {
            MadeOn = madeOn,
            Aspects = aspects,
            Pairs = pairs,
            Records = records,
            Training = training is null ? null : training with { Figures = training.Figures.Where(figure => figure.Key != WeightsFile.IsTrained).ToDictionary() },
        };
        return complaints.Count > 0 ? (null, complaints) : (Weights.Of(family, given), []);
    }

    private Dictionary<string, AspectCost> Aspects(JsonElement all)
    {
        var costs = new Dictionary<string, AspectCost>();
        var members = Members(all, "aspects", [.. family.Aspects.Select(aspect => aspect.Name)], [.. family.FormerAspects.Keys]) ?? [];
        foreach (var (name, element) in members)
        {
            var place = $"aspects.{name}";
            if (Members(element, place, FeatureNames) is not { } features) continue;
            var curve = Required(features, place, "shortfall") is { } shortfall ? Curve(shortfall, $"{place}.shortfall") : ShortfallCurve.Even(0);
            var cost = new AspectCost(curve, Cost("effort"), Cost("unknown"));
            if (Asked(name) is { } asked) costs.TryAdd(asked, cost);

            double Cost(string feature) => Required(features, place, feature) is { } value ? Number(value, $"{place}.{feature}", Weights.IsWeight, 0, Weights.MostWeight) : 0;
        }

        return costs;

        // What an aspect cost under its name of before it costs still, unless the file has the new name as well; of two names of before the first in the file counts.
        string? Asked(string name) => !family.FormerAspects.TryGetValue(name, out var now) ? name : now is null || members.ContainsKey(now) ? null : now;
    }

    /// <summary>One number for the same cost all the way, or a curve's heights.</summary>
    private ShortfallCurve Curve(JsonElement element, string place)
    {
        if (element.ValueKind != JsonValueKind.Array) return ShortfallCurve.Even(Number(element, place, Weights.IsWeight, 0, Weights.MostWeight));
        if (element.GetArrayLength() == ShortfallCurve.Count)
        {
            return ShortfallCurve.Of([.. element.EnumerateArray().Select((height, at) => Number(height, string.Create(CultureInfo.InvariantCulture, $"{place}[{at}]"), Weights.IsWeight, 0, Weights.MostWeight))]);
        }

        Complain(place, element, string.Create(CultureInfo.InvariantCulture, $"must be one number, or {ShortfallCurve.Count} in brackets"));
        return ShortfallCurve.Even(0);
    }

    /// <summary>Costs by name; none where there is no such member.</summary>
    private Dictionary<string, double> Costs(Dictionary<string, JsonElement> root, string name, string[]? names) => root.TryGetValue(name, out var all)
        ? (Members(all, name, names) ?? []).ToDictionary(one => one.Key, one => Number(one.Value, At(name, one.Key), Weights.IsWeight, 0, Weights.MostWeight))
        : [];

    private Training? Trained(JsonElement element)
    {
        const string place = "training";
        if (Members(element, place, TrainingNames) is not { } members) return null;
        var outcomes = Required(members, place, "outcomes") is { } count ? Count(count, At(place, "outcomes"), least: 0) : 0;
        var invented = members.TryGetValue("invented", out var demo) ? Count(demo, At(place, "invented"), least: 0) : (int?)null;
        var (from, to) = (Required(members, place, "from"), Required(members, place, "to"));
        var figures = Required(members, place, "figures") is { } measured ? (Members(measured, At(place, "figures"), names: null) ?? []).ToDictionary(one => one.Key, one => Number(one.Value, $"{place}.figures.{one.Key}", double.IsFinite, "a number")) : [];
        var (first, last) = (from is { } start ? Day(start, At(place, "from")) : null, to is { } end ? Day(end, At(place, "to")) : null);
        return new(outcomes, first ?? default, last ?? default, figures) { Invented = invented, Calibration = members.TryGetValue("calibration", out var points) ? Points(points, At(place, "calibration")) : [] };
    }

    private List<CalibrationPoint> Points(JsonElement element, string place)
    {
        if (element.ValueKind == JsonValueKind.Array) return [.. element.EnumerateArray().Select((point, at) => Point(point, string.Create(CultureInfo.InvariantCulture, $"{place}[{at}]"))).OfType<CalibrationPoint>()];
        Complain(place, element, "must be a list in brackets");
        return [];
    }

    private CalibrationPoint? Point(JsonElement element, string place)
    {
        if (Members(element, place, PointNames) is not { } members) return null;
        var (told, happened) = (Share("told"), Share("happened"));
        return new(told, happened, Required(members, place, "outcomes") is { } count ? Count(count, At(place, "outcomes"), least: 1) : 1);

        double Share(string name) => Required(members, place, name) is { } share ? Number(share, At(place, name), number => number is >= 0 and <= 1, 0, 1) : 0;
    }

    private int Count(JsonElement element, string place, int least) =>
        (int)Number(element, place, number => number >= least && number <= int.MaxValue && double.IsInteger(number), string.Create(CultureInfo.InvariantCulture, $"a whole number, {least} or more"));

    private DateOnly? Day(JsonElement element, string place)
    {
        if (DateOnly.TryParseExact(Text(element), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        Complain(place, element, "must be a day such as “2026-03-14”");
        return null;
    }

    /// <summary>An object's members by name; unknown and repeated names are complained of and left out. Null when it is no object. Any name will do where none are given.</summary>
    private Dictionary<string, JsonElement>? Members(JsonElement element, string place, string[]? names, params string[] formerNames)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            Complain(place, element, "must be an object in braces");
            return null;
        }

        var members = new Dictionary<string, JsonElement>();
        foreach (var member in element.EnumerateObject())
        {
            var name = names is null ? NameOf(member) : Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8PropertyName(member));
            var at = At(place, name);
            if (names?.Contains(name) == false && !formerNames.Contains(name)) complaints.Add(new(ComplaintCode.UnknownField, at, Shown(member.Value), $"{at}: there is no such name here; the names are {(names.Length == 0 ? "none" : string.Join(", ", names))}."));
            else if (!members.TryAdd(name, member.Value)) complaints.Add(new(ComplaintCode.GivenTwice, at, Shown(member.Value), $"{at} is given twice; give it once."));
        }

        return members;
    }

    private JsonElement? Required(Dictionary<string, JsonElement> members, string place, string name)
    {
        if (members.TryGetValue(name, out var element)) return element;
        var at = At(place, name);
        complaints.Add(new(ComplaintCode.Empty, at, "", $"{at} is missing."));
        return null;
    }

    private double Number(JsonElement element, string place, Func<double, bool> isInRange, double least, double most) =>
        Number(element, place, isInRange, string.Create(CultureInfo.InvariantCulture, $"a number from {least} to {most}"));

    private double Number(JsonElement element, string place, Func<double, bool> isRight, string right)
    {
        // A figure such as 1e999 reads as infinite, and is out of every range.
        if (element.ValueKind == JsonValueKind.Number && element.TryGetDouble(out var number) && isRight(number)) return number;
        Complain(place, element, $"must be {right}");
        return 0;
    }

    private void Complain(string place, JsonElement given, string right) =>
        complaints.Add(new(ComplaintCode.Unreadable, place, Shown(given), $"{(place.Length == 0 ? "The weights file" : place)} {right}{(IsShort(given) ? $", not {Shown(given)}" : "")}."));

    /// <summary>A name that may be anything, such as a part's number; one that is no text stands as it was written.</summary>
    private static string NameOf(JsonProperty member)
    {
        try
        {
            return member.Name;
        }
        catch (InvalidOperationException)
        {
            return Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8PropertyName(member));
        }
    }

    private static string At(string place, string name) => place.Length == 0 ? name : $"{place}.{name}";

    /// <summary>A string as it is written: no word of the file needs an escape, and half an escaped pair cannot be unescaped.</summary>
    private static string? Text(JsonElement element) => element.ValueKind == JsonValueKind.String ? element.GetRawText()[1..^1] : null;

    private static bool IsShort(JsonElement element) => element.GetRawText().Length <= 40;

    private static string Shown(JsonElement element) => IsShort(element) ? element.GetRawText() : element.GetRawText()[..40] + "…";
}
