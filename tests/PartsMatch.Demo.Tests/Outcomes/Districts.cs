using System.Collections.Concurrent;
using PartsMatch.Demo.Outcomes;

namespace PartsMatch.Demo.Tests.Outcomes;

/// <summary>A family's parts, its district and what became of them, made once.</summary>
internal sealed record Districts(FamilyParts Made, District District, IReadOnlyList<DemoOutcome> Outcomes, IReadOnlyList<PartFigures> Figures)
{
    private static readonly DemoCatalogue Catalogue = DemoCatalogue.Make();
    private static readonly ConcurrentDictionary<string, Lazy<Districts>> Known = [];

    public static IEnumerable<string> Kinds => Catalogue.Families.Select(family => family.Family.Kind);

    public static Districts Of(string kind) => Known.GetOrAdd(kind, _ => new(() =>
    {
        var made = Catalogue.Families.Single(family => family.Family.Kind == kind);
        return new(made, DemoCatalogue.DistrictOf(made), DemoCatalogue.OutcomesOf(made), [.. made.Parts.Select(part => new PartFigures(made.Family, part))]);
    })).Value;
}
