using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Labels that the plates of several families of switches share.</summary>
internal static class ContactLabels
{
    /// <summary>FLA 16/8 AT 120/240, 3 HP AT 240, PILOT DUTY 125 VA AT 240: what stands behind AT without its unit is volts only behind a rating, for OPENS AT 36 and TRIPS AT 36 are none.</summary>
    /// <param name="amps">The family's further fields of amps.</param>
    public static PlateLabel At(params IEnumerable<string> amps) => new("ratedVolts", "AT") { BareBehind = [.. BesideVolts, "pilotDuty", .. amps], BareBehindUnits = ["VA"] };

    /// <summary>FLA 30 480 V, 240 V 2 HP: what stands beside the volts of contacts.</summary>
    public static IReadOnlyList<string> BesideVolts { get; } = ["fullLoadAmps", "lockedRotorAmps", "resistiveAmps", "singlePhaseHorsepower", "threePhaseHorsepower"];

    /// <summary>10(6) A: resistive amps, and in brackets those of an inductive load, a motor's at full load (EN 60730-1, from memory).</summary>
    public static IReadOnlyList<(string First, string InBrackets)> Bracketed { get; } = [("resistiveAmps", "fullLoadAmps")];

    /// <summary>OPENS ON RISE AT 55 F, MAKES ON TEMP FALL 35 F: a setting, and which way the contacts move.</summary>
    /// <param name="field">The setting's field.</param>
    /// <param name="unit">Its unit.</param>
    /// <param name="verbs">What they do there.</param>
    /// <param name="ways">What rises or falls there, shortest first.</param>
    /// <param name="action">The action that this says.</param>
    public static PlateLabel Moving(string field, string unit, IEnumerable<string> verbs, IReadOnlyList<string> ways, string action) =>
        new(field, [.. from verb in verbs from way in ways from at in (string[])[string.Empty, " AT"] select $"{verb} ON {way}{at}"]) { Unit = unit, Says = new("action", action) };

    /// <summary>What contacts do that open.</summary>
    public static IReadOnlyList<string> Opening { get; } = ["OPENS", "OPEN", "BREAKS", "BREAK"];

    /// <summary>What contacts do that close.</summary>
    public static IReadOnlyList<string> Closing { get; } = ["CLOSES", "CLOSE", "MAKES", "MAKE"];
}
