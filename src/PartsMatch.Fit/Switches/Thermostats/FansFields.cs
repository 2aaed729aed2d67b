using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>The fields of the fans' contacts that stand for those of a switch of one contact.</summary>
internal static class FansFields
{
    private static readonly Dictionary<string, string> OfSpec = new() { ["ratedVolts"] = "fanRatedVolts", ["fullLoadAmps"] = "fanFullLoadAmps", ["lockedRotorAmps"] = "fanLockedRotorAmps", ["resistiveAmps"] = "fanResistiveAmps", ["pilotDuty"] = "fanPilotDuty" };

    private static readonly Dictionary<string, string> OfSite = new() { ["motors"] = "fanMotors", ["loadVolts"] = "fanVolts", ["heaterAmps"] = "fanHeaterAmps", ["coilsVa"] = "fanCoilsVa", ["coilsInrushVa"] = "fanCoilsInrushVa" };

    /// <summary>All of them, of spec and site.</summary>
    public static IEnumerable<string> All => [.. OfSpec.Values, .. OfSite.Values];

    /// <summary>The field of the fans' contacts for one of plate or part.</summary>
    public static string InSpec(string field) => OfSpec.GetValueOrDefault(field, field);

    /// <summary>The field of the fans' contacts for one of the site.</summary>
    public static string InSite(string field) => OfSite.GetValueOrDefault(field, field);

    /// <summary>What is missing of the place, as the fans' contacts have it.</summary>
    public static Missing AskedOfSite(Missing missing) => missing.Side == Side.Site ? missing with { Field = InSite(missing.Field) } : missing;

    /// <summary>What is missing of the part, as the fans' contacts have it.</summary>
    public static Missing AskedOfPart(Missing missing) => missing.Side == Side.Part ? missing with { Field = InSpec(missing.Field) } : missing;

    /// <summary>What is missing of the place and of the old plate, as the fans' contacts have it.</summary>
    public static Missing Asked(Missing missing) => missing.Side == Side.Plate ? missing with { Field = InSpec(missing.Field) } : AskedOfSite(missing);
}
