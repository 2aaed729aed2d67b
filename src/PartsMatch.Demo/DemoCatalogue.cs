using PartsMatch.Demo.Capacitors;
using PartsMatch.Demo.Contactors;
using PartsMatch.Demo.DefrostTimers;
using PartsMatch.Demo.Motors;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.PressureControls;
using PartsMatch.Demo.Thermostats;
using PartsMatch.Demo.Trade;
using PartsMatch.Demo.Valves.CondensingPressureValves;
using PartsMatch.Demo.Valves.ExpansionValves;
using PartsMatch.Demo.Valves.SolenoidValves;

namespace PartsMatch.Demo;

/// <summary>A family with its parts.</summary>
public sealed record FamilyParts(FamilyCatalogue Family, IReadOnlyList<DemoPart> Parts);

/// <summary>All that seed-data/ holds.</summary>
/// <param name="Families">The parts, by family.</param>
/// <param name="Supersessions">Who took whose place.</param>
public sealed record DemoCatalogue(IReadOnlyList<FamilyParts> Families, IReadOnlyList<Supersession> Supersessions)
{
    /// <summary>Everything follows from it.</summary>
    public const int Seed = 31_415;

    /// <summary>To add a family: its folder, and a line at the end: makers number their parts in this order.</summary>
    private static readonly FamilyCatalogue[] All =
    [
        new MotorCatalogue(),
        new CapacitorCatalogue(),
        new SolenoidValveCatalogue(),
        new ExpansionValveCatalogue(),
        new ContactorCatalogue(),
        new PressureControlCatalogue(),
        new CondensingPressureValveCatalogue(),
        new ThermostatCatalogue(),
        new DefrostTimerCatalogue(),
    ];

    /// <summary>Makes it, the same every time.</summary>
    public static DemoCatalogue Make()
    {
        var numbers = new PartNumbers();
        var families = All.Select(family => new FamilyParts(family, family.Make(numbers, Seed + family.SeedOffset))).ToList();
        var supersessions = families.SelectMany(family => Supersession.Among(family.Parts, new Draw(Seed + 1000 + family.Family.SeedOffset)));
        return new(families, [.. supersessions.OrderBy(each => each.Number, StringComparer.Ordinal)]);
    }

    /// <summary>Where a family's parts are put in; drawn with chance of its own.</summary>
    public static District DistrictOf(FamilyParts family) => District.Of(family, Seed + 2000 + family.Family.SeedOffset);

    /// <summary>What became of a family's parts, as many as the demo data has of it.</summary>
    public static IReadOnlyList<DemoOutcome> OutcomesOf(FamilyParts family) => DistrictOf(family).Outcomes(family.Family.Outcomes);

    /// <summary>Every part of every family.</summary>
    public IEnumerable<DemoPart> Parts => Families.SelectMany(family => family.Parts);
}
