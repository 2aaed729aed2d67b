using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Physics;

/// <summary>The refrigerants known here: ASHRAE 34 designations and safety classes, some with equations for their saturation.</summary>
public static class Refrigerants
{
    /// <summary>All of them, by rising number.</summary>
    public static IReadOnlyList<Refrigerant> All { get; } = Load();

    private static readonly Dictionary<string, Refrigerant> ByName = All
        .SelectMany(one => one.AlsoCalled.Append(one.Name).Append(one.Name[1..]).Select(name => (Key: Plain(name), Refrigerant: one)))
        .ToDictionary(pair => pair.Key, pair => pair.Refrigerant);

    /// <summary>The refrigerant of a name: R-404A, R404A, 404a, R 404 A, propane. Case, spaces and dashes do not count; every other letter does.</summary>
    /// <returns>Null for a name that is not known, however near it is to one that is: R-404 is nothing.</returns>
    public static Refrigerant? Find(string name) => ByName.GetValueOrDefault(Plain(name));

    private static string Plain(string name) => string.Concat(name.Where(letter => !char.IsWhiteSpace(letter) && letter is not ('-' or '‑' or '–'))).ToUpperInvariant();

    private static List<Refrigerant> Load()
    {
        var curves = PublishedTable.Read("refrigerants").ToDictionary(row => (row.Text("refrigerant"), row.Text("curve")), row => new SaturationCurve(row));
        var states = SaturatedStates.Load();
        return [.. PublishedTable.Read("refrigerant-classes").Select(row =>
        {
            var name = row.Text("refrigerant");
            var pure = curves.GetValueOrDefault((name, "saturation"));
            return new Refrigerant(
                name,
                row.Text("safety_class"),
                row.Text("also").Split(';', StringSplitOptions.RemoveEmptyEntries),
                row.Source,
                pure ?? curves.GetValueOrDefault((name, "bubble")),
                pure ?? curves.GetValueOrDefault((name, "dew")),
                states.GetValueOrDefault(name));
        })];
    }
}
