namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>Which ports an arrangement has. All have one to the receiver.</summary>
internal static class ArrangementPorts
{
    /// <summary>Whether it has one from the condenser; null where the arrangement is not known.</summary>
    public static bool? HasCondenserPort(this Arrangement? arrangement) => arrangement is { } how ? how != Arrangement.DifferentialCheck : null;

    /// <summary>Whether it has one for hot gas; null where the arrangement is not known.</summary>
    public static bool? HasDischargePort(this Arrangement? arrangement) => arrangement is { } how ? how != Arrangement.InletRegulator : null;
}
