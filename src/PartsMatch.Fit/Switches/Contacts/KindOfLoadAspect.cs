using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What the kind of load reads of a contact: what it is marked for at all.</summary>
/// <param name="MotorLoads">Full-load or locked-rotor amps, or horsepower.</param>
/// <param name="Resistance">Resistive amps.</param>
/// <param name="Coils">Pilot duty.</param>
public readonly record struct KindOfLoadFacet(bool MotorLoads, bool Resistance, bool Coils);

/// <summary>Is the contact marked for motors where a motor is on it?</summary>
/// <remarks>Marked for coils or heaters alone it fails for a motor; their amounts are asked for by aspects of their own. Where nobody named what is on it, nothing is asked here.</remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class KindOfLoadAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, KindOfLoadFacet>(KindOfLoadQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class KindOfLoadQuestion
{
    /// <summary>The question.</summary>
    public static ContactQuestion<KindOfLoadFacet> Asked { get; } = new(
        "Kind of load",
        ContactSources.KindOfLoad,
        new(0.3, 0.5, 0.5),
        new(["pilotDuty", "fullLoadAmps", "resistiveAmps"], ["loads"]) { Besides = ["lockedRotorAmps", "singlePhaseHorsepower", "threePhaseHorsepower"] },
        part => new(
            part.FullLoadAmps is not null || part.LockedRotorAmps is not null || part.SinglePhaseHorsepower is not null || part.ThreePhaseHorsepower is not null,
            part.ResistiveAmps is not null,
            part.PilotDuty is not null),
        Judge);

    private static Finding Judge(OnTheContact on, KindOfLoadFacet facet) => (on.HasMotor, facet) switch
    {
        (null, _) => Finding.Meets($"What is on it was not named: its ratings are held against the old one's."),
        (false, _) => Finding.Meets($"No motor is on it."),
        (_, { MotorLoads: true }) => Finding.Meets($"A motor is on it, and it is marked for motors."),
        (_, { Resistance: true } or { Coils: true }) => Finding.Fails($"A motor is on it; it is marked for {(facet.Coils ? "coils" : "heaters")} alone."),
        _ => Finding.Unknown(Side.Part, "fullLoadAmps", $"A motor is on it; what it is marked for is not known."),
    };
}
