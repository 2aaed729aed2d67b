using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Its windings, by whichever of the two rules is its own, and then by the ohms that its plate asks for.</summary>
internal static class Windings
{
    private static readonly SinglePhaseWindings Single = new();
    private static readonly ThreePhaseWindings Three = new();
    private static readonly OhmsAgainstPlate Plate = new();

    /// <summary>What they say; null when none was read or the motor is electronically commutated.</summary>
    public static Ruling? Of(MotorCase one) => (Single.Judge(one) ?? Three.Judge(one)) is { Verdict: ReadingVerdict.Good } alike ? Plate.Judge(one) ?? alike : Single.Judge(one) ?? Three.Judge(one);

    /// <summary>Whether they were measured, and are whole.</summary>
    public static bool AreGood(MotorCase one) => Of(one) is { Verdict: ReadingVerdict.Good };

    /// <summary>Whether they were measured and none is open, though it may not be known whether they are good.</summary>
    public static bool AreNotOpen(MotorCase one) => Of(one) is { Verdict: ReadingVerdict.Good } or { Verdict: ReadingVerdict.CantTell, Asks: null };

    /// <summary>A ruling that the windings would decide, while they are not known to be good: it waits for the next reading of them; where all are read and do not tell, neither does it.</summary>
    /// <param name="one">The case.</param>
    /// <param name="ruling">What is found so far.</param>
    /// <param name="why">Why they are to be measured.</param>
    public static Ruling Await(MotorCase one, Ruling ruling, string why) => Of(one) switch
    {
        { Verdict: ReadingVerdict.CantTell, Asks: null } => Ruling.CantTell($"{ruling.Sentence} The ohms of its windings do not tell."),
        { Asks: { Side: not null } asks } => ruling.ThenRead(asks.Field, asks.Why, asks.Side),
        var said => ruling.ThenRead(said?.Asks?.Field ?? (one.IsThreePhase == true ? "ohmsOneToTwo" : "ohmsCommonToRun"), why),
    };
}
