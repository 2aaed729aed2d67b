using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>Reads one weights document and gathers all that is wrong with it.</summary>
internal sealed class WeightsReader(Family family)
{
    private static readonly string[] RootNames = ["version", "kind", "origin", "madeOn", "intercept", "aspects"];
    private static readonly string[] FeatureNames = ["shortfall", "effort", "unknown"];

    private readonly List<Complaint> complaints = [];

    /// <summary>The weights, or everything that is wrong.</summary>
    public (Weights? Weights, IReadOnlyList<Complaint> Complaints) Read(JsonElement root)
    {
        var members = Members(root, "", RootNames);
        if (members is null) return (null, complaints);

        if (Required(members, "", "version") is { } version && !(version.ValueKind == JsonValueKind.Number && version.TryGetInt32(out var number) && number == WeightsFile.Version))
        {
            Complain("version", version, $"must be {WeightsFile.Version.ToString(CultureInfo.InvariantCulture)}, the version that this program reads");
        }

        if (Required(members, "", "kind") is { } kind && Text(kind) != family.Kind) Complain("kind", kind, $"must be “{family.Kind}”: weights of one kind of part say nothing of another");
        var origin = WeightsOrigin.HandSet;
        if (Required(members, "", "origin") is { } given && !WeightsFile.Origins.TryGetValue(Text(given) ?? "", out origin)) Complain("origin", given, "must be “hand-set” or “trained”");
        DateOnly? madeOn = null;
        if (members.TryGetValue("madeOn", out var day))
        {
            if (DateOnly.TryParseExact(Text(day), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read)) madeOn = read;
            else Complain("madeOn", day, "must be a day such as “2026-03-14”");
        }

        var intercept = Required(members, "", "intercept") is { } element ? Number(element, "intercept", Weights.IsIntercept, -Weights.MostIntercept, Weights.MostIntercept) : 0;
        var aspects = members.TryGetValue("aspects", out var all) ? Aspects(all) : [];
        return complaints.Count > 0 ? (null, complaints) : (Weights.Of(family, origin, madeOn, intercept, aspects), []);
    }

    private Dictionary<string, AspectWeight> Aspects(JsonElement all)
    {
        var weights = new Dictionary<string, AspectWeight>();
        foreach (var (name, element) in Members(all, "aspects", [.. family.Aspects.Select(aspect => aspect.Name)]) ?? [])
        {
            var place = $"aspects.{name}";
            if (Members(element, place, FeatureNames) is not { } features) continue;
            var numbers = FeatureNames
                .Select(feature => Required(features, place, feature) is { } value ? Number(value, $"{place}.{feature}", Weights.IsWeight, 0, Weights.MostWeight) : 0).ToList();
            weights.Add(name, new(numbers[0], numbers[1], numbers[2]));
        }

        return weights;
    }

    /// <summary>An object's members by name; unknown and repeated names are complained of and left out. Null when it is no object.</summary>
    private Dictionary<string, JsonElement>? Members(JsonElement element, string place, string[] names)
    {
        if (element.ValueKind != JsonValueKind.Object)
        {
            Complain(place, element, "must be an object in braces");
            return null;
        }

        var members = new Dictionary<string, JsonElement>();
        foreach (var member in element.EnumerateObject())
        {
            var name = Encoding.UTF8.GetString(JsonMarshal.GetRawUtf8PropertyName(member));
            var at = At(place, name);
            if (!names.Contains(name)) complaints.Add(new(ComplaintCode.UnknownField, at, Shown(member.Value), $"{at}: there is no such name here; the names are {(names.Length == 0 ? "none" : string.Join(", ", names))}."));
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

    private double Number(JsonElement element, string place, Func<double, bool> isInRange, double least, double most)
    {
        // A figure such as 1e999 reads as infinite, and is out of every range.
        if (element.ValueKind == JsonValueKind.Number && element.TryGetDouble(out var number) && isInRange(number)) return number;
        Complain(place, element, string.Create(CultureInfo.InvariantCulture, $"must be a number from {least} to {most}"));
        return 0;
    }

    private void Complain(string place, JsonElement given, string right) =>
        complaints.Add(new(ComplaintCode.Unreadable, place, Shown(given), $"{(place.Length == 0 ? "The weights file" : place)} {right}{(IsShort(given) ? $", not {Shown(given)}" : "")}."));

    private static string At(string place, string name) => place.Length == 0 ? name : $"{place}.{name}";

    /// <summary>A string as it is written: no word of the file needs an escape, and half an escaped pair cannot be unescaped.</summary>
    private static string? Text(JsonElement element) => element.ValueKind == JsonValueKind.String ? element.GetRawText()[1..^1] : null;

    private static bool IsShort(JsonElement element) => element.GetRawText().Length <= 40;

    private static string Shown(JsonElement element) => IsShort(element) ? element.GetRawText() : element.GetRawText()[..40] + "…";
}
