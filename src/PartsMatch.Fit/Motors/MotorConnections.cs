using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>Which published connections go with a motor: only where a standard fixes its lead marks. Fan motors with coloured leads have none.</summary>
internal static class MotorConnections
{
    /// <summary>Volts of two taps stand as 1 to 2 within so much (practice).</summary>
    private const double RatioWithin = 0.05;

    private static readonly HashSet<ChangeKind> OfTheTurn = [BodyChanges.Reverse, BodyChanges.SeeTurn];

    private static readonly HashSet<ChangeKind> OfTheTap = [SupplyChanges.SetTap, SupplyChanges.CheckTap];

    /// <summary>The drawing for a change that sets or proves the tap or the turn; null for other changes and for other leads.</summary>
    public static string? Diagram(MotorNeed need, MotorSpec part, Change change)
    {
        var rows = OfTheTap.Contains(change.Kind) ? ForTap(need, part) : OfTheTurn.Contains(change.Kind) ? ForTurn(need, part) : [];
        return rows.Count > 0 ? ConnectionDrawing.Of(rows) : null;
    }

    /// <summary>The drawing for joining its leads at the site, whether or not a tap or a turn is set; null where no standard marks them.</summary>
    public static string? OfLeads(MotorNeed need, MotorSpec part)
    {
        var rows = part.Voltage is { Count: > 1 } ? ForTap(need, part) : ForOnlyVolts(need, part);
        return rows.Count > 0 ? ConnectionDrawing.Of(rows) : null;
    }

    /// <summary>Ways to connect it for its tap; empty when no standard marks its leads.</summary>
    public static IReadOnlyList<Connection> ForTap(MotorNeed need, MotorSpec part)
    {
        var taps = VoltTap.Of(part.Voltage);
        if (ChosenTap.Of(need, part) is not { } chosen || taps.Count != 2) return [];
        var (low, high) = (taps.Min(tap => tap.High), taps.Max(tap => tap.High));
        var volts = chosen.Tap.High < high ? ConnectedVolts.Low : ConnectedVolts.High;
        var isDouble = Within.Ratio(high / low, 2, 1 + RatioWithin);
        if (part.LeadMarks is [LeadNames.Coloured]) return [];
        if (part.Phase == Phases.Three)
        {
            return HasSixIecTerminals(part) ? Rows(volts, LeadMarks.IecSixTerminals)

                // For high volts star and triangle are connected alike: one drawing does.
                : isDouble && !HasIecTerminals(part) ? volts == ConnectedVolts.High ? Rows(volts, LeadMarks.NemaNineLeadsWye) : Rows(volts, LeadMarks.NemaNineLeadsWye, LeadMarks.NemaNineLeadsDelta)
                : [];
        }

        return isDouble && HasNemaSinglePhaseLeads(part) ? OfTurn(need, Rows(volts, LeadMarks.NemaSinglePhase)) : [];
    }

    private static IReadOnlyList<Connection> ForTurn(MotorNeed need, MotorSpec part)
    {
        if (part.Reversing is Reversing.ByPlug or Reversing.BySetting || part.LeadMarks is [LeadNames.Coloured]) return [];
        if (part.Phase == Phases.Three || part.Type == MotorType.ThreePhaseInduction) return Rows(ConnectedVolts.Any, HasIecTerminals(part) ? LeadMarks.IecThreeLines : LeadMarks.NemaThreeLines);
        return HasNemaSinglePhaseLeads(part) && part.Voltage is not { Count: 1 } ? ForTap(need, part) : ForOnlyVolts(need, part);
    }

    /// <summary>A single-phase motor of one voltage: between lines its leads leave nothing to choose but the turn. Three leads of three lines need no drawing.</summary>
    private static IReadOnlyList<Connection> ForOnlyVolts(MotorNeed need, MotorSpec part) =>
        part.LeadMarks is [LeadNames.Coloured] ? []
        : HasIecTerminals(part) && part.Type == MotorType.PermanentSplitCapacitor ? Rows(ConnectedVolts.Only, LeadMarks.IecRunCapacitor)
        : HasNemaSinglePhaseLeads(part) && part.Voltage is { Count: 1 } ? OfTurn(need, Rows(ConnectedVolts.Only, LeadMarks.NemaSinglePhase))
        : [];

    /// <summary>Whether delta and star are joined at U1 to W2.</summary>
    internal static bool HasSixIecTerminals(MotorSpec part) =>
        part.StarDelta == true && StarAndDelta.AreVolts(part) && HasIecTerminals(part) && part.LeadMarks is not [LeadNames.Coloured];

    private static bool HasNemaSinglePhaseLeads(MotorSpec part) =>
        !HasIecTerminals(part) && part.Type is MotorType.SplitPhase or MotorType.CapacitorStart or MotorType.CapacitorStartCapacitorRun;

    /// <summary>The marks that the plate itself shows stand before the habits of its standard.</summary>
    private static bool HasIecTerminals(MotorSpec part) =>
        part.LeadMarks?.Contains(LeadNames.IecTerminals) == true || (part.LeadMarks?.Contains(LeadNames.NemaMarks) != true && part.Standard == PlateStandard.Iec);

    private static IReadOnlyList<Connection> OfTurn(MotorNeed need, IReadOnlyList<Connection> rows) =>
        MotorSteps.TurnNeeded(need) is { } turn ? [.. rows.Where(row => row.FacingShaft == turn)] : rows;

    private static IReadOnlyList<Connection> Rows(ConnectedVolts volts, params IReadOnlyList<LeadMarks> leads) =>
        [.. Connections.All.Where(row => row.Volts == volts && leads.Contains(row.Leads))];
}
