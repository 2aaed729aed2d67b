using PartsMatch.Fit.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What is read at an expansion valve: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record ExpansionValveReadings : Readings
{
    private const string Superheated = "Superheat at the bulb";
    private const string Look = "Look and feel";

    /// <summary>Superheat at the bulb.</summary>
    [Field("Superheat", "At the bulb, running steadily: pipe temperature less dew temperature.", Group = Superheated, Example = "10 °F")]
    public TemperatureDelta? Superheat { get; init; }

    /// <summary>Suction pressure at the evaporator's outlet.</summary>
    [Field("Suction pressure", "Gauge pressure at the evaporator's outlet, beside the bulb.", Group = Superheated, Tool = Tool.Meter, Example = "45 psi")]
    public Pressure? SuctionPressure { get; init; }

    /// <summary>Suction pipe's temperature at the bulb.</summary>
    [Field("Pipe at the bulb", "A clamp on the suction pipe beside the bulb, wrapped.", Group = Superheated, Tool = Tool.Meter, Example = "30 °F")]
    public Temperature? BulbTemperature { get; init; }

    /// <summary>Altitude for the gauge.</summary>
    [Field("Altitude", "Above sea level: the air is thinner there, and at the same gauge pressure the refrigerant boils colder. Sea level is taken where it is not given.", Group = Superheated, Example = "3000 ft")]
    public Length? Altitude { get; init; }

    /// <summary>Whether the bulb is strapped and wrapped in its place.</summary>
    [Field("Bulb in place", "Whether the bulb is tight on a clean, level suction pipe, wrapped, and not on a trap.", Group = Look)]
    public bool? BulbInPlace { get; init; }

    /// <summary>Whether the liquid before it is clear.</summary>
    [Field("Clear liquid", "Whether the sight glass before it is clear, without bubbles.", Group = Look)]
    public bool? ClearLiquid { get; init; }

    /// <summary>Whether its fans run and its coil is clean.</summary>
    [Field("Coil has its air", "Whether the evaporator's fans run and its coil is free of ice and dirt.", Group = Look)]
    public bool? CoilHasAir { get; init; }

    /// <summary>Whether it opens when its bulb is warmed.</summary>
    [Field("Opens when warmed", "Whether suction pressure rises when the bulb is taken off and held in a warm hand.", Group = Look)]
    public bool? OpensWhenWarmed { get; init; }

    /// <summary>Whether it closes when its bulb is chilled.</summary>
    [Field("Closes when chilled", "Whether suction pressure falls when the bulb is held in something well below the pipe it was on: ice water, or dry ice or cold spray where the pipe is colder than 45 °F.", Group = Look)]
    public bool? ClosesWhenChilled { get; init; }
}
