using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Where the rules for thermostats come from.</summary>
public static class ThermostatSources
{
    /// <summary>The same function.</summary>
    public static Source Function { get; } = new("A thermostat is replaced by one of the same function; a fan delay and defrost end with three wires does for either alone", SourceStatus.Practice);

    /// <summary>The same action.</summary>
    public static Source Action { get; } = new("Contacts that open on rise for such, and those that close on rise for such; one side of change-over contacts does the same", SourceStatus.Practice);

    /// <summary>What each function's contacts do.</summary>
    public static Source ActionOfFunction { get; } = new("A box thermostat and a low limit mostly close on rise, a fan delay and a high limit open on rise: taken of an old one that does not say it, and of no new one", SourceStatus.Practice);

    /// <summary>What three wires do.</summary>
    public static Source ThreeWires { get; } = new("A fan delay and defrost end with three wires changes over: the side that ends the defrost closes on rise, the fans' side opens", SourceStatus.Practice);

    /// <summary>Reset.</summary>
    public static Source Reset { get; } = new("A manual-reset limit is never replaced by an automatic one; all but limits mostly reset by themselves, which is taken of an old one that does not say it", SourceStatus.Practice);

    /// <summary>Poles.</summary>
    public static Source Poles { get; } = new("As many poles as the old one; one too many stays unused; an old one that does not say it is taken for one with a single pole", SourceStatus.Practice);

    /// <summary>Where it switches.</summary>
    public static Source Temperatures { get; } = new("Temperatures within 5 °F (2.8 K) of each other do the same, up to 10 °F (5.6 K) they are checked, beyond they do not; one that can be set is set", SourceStatus.Practice);

    /// <summary>The distance between the two.</summary>
    public static Source Differential { get; } = new("The differential is the distance of cut-in and cut-out; 2 °F (1.1 K) off does the same, up to 5 °F (2.8 K) is checked", SourceStatus.Practice);

    /// <summary>Heat at the bulb.</summary>
    public static Source PeakAtBulb { get; } = new("A bulb bears the highest temperature that its place comes to in a defrost", SourceStatus.Practice);

    /// <summary>Form of the bulb.</summary>
    public static Source Bulb { get; } = new("A bulb goes where a bulb was and a disc where a disc was, held anew where it has another form; an averaging capillary feels a whole coil, and nothing else does", SourceStatus.Practice);

    /// <summary>Length of the bulb.</summary>
    public static Source BulbLength { get; } = new("A bulb that is no longer than its well, or than the old one, goes where that was: what sticks out feels something else", SourceStatus.Practice);

    /// <summary>Length of the capillary.</summary>
    public static Source Capillary { get; } = new("A capillary reaches from body to bulb; a longer one is coiled, a shorter one cannot be lengthened", SourceStatus.Practice);

    /// <summary>What is common.</summary>
    public static Source Common { get; } = new("The common wire goes onto what is common, however it is marked", SourceStatus.Practice);

    /// <summary>How wires go on.</summary>
    public static Source Terminals { get; } = new("Wires end in what a thermostat's terminals take", SourceStatus.Practice);
}
