using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

/// <summary>What follows of a valve that does wrong by what it is to be set to.</summary>
/// <remarks>One that cannot be set is condemned. What an old one that can be set is set to nobody knows: it is set anew first, and condemned where it does not follow. A new one is told, and never condemned.</remarks>
internal static class WrongBySetting
{
    /// <summary>The same ruling with what follows from it.</summary>
    /// <param name="one">The case.</param>
    /// <param name="bad">What is wrong.</param>
    public static Ruling Judge(CondensingPressureValveCase one, Ruling bad) => one switch
    {
        { New: not null } => bad,
        { Measured.CanBeSet: true, Readings.FollowsSetting: true } => bad.NotThePart(),
        { How: null } => bad.ThenRead("arrangement", "See how it is arranged: a three-way valve holds a head, a check valve opens at a difference, and each is condemned by other signs.", Side.Plate),
        { Measured.CanBeSet: true, Readings.FollowsSetting: null } => bad.ThenRead("followsSetting", "It can be set, and nobody knows what it is set to: turn it to what is needed, wait a quarter of an hour, and see whether it follows. One that does not is replaced."),
        _ => bad.ThePartHasFailed(),
    };
}

/// <summary>What is wrong with it, and what else it may be where it can be set; formed only when it is shown.</summary>
/// <param name="One">The case.</param>
/// <param name="Wrong">What is wrong where its setting is right: "it is stuck shut".</param>
internal readonly record struct OrNotSet(CondensingPressureValveCase One, string Wrong)
{
    /// <inheritdoc/>
    public override string ToString() => (One.Measured.CanBeSet, One.New is null ? One.Readings.FollowsSetting : null) switch
    {
        (true, null) => $"{Wrong}, or is not set to that",
        (true, true) => "it follows as it is turned: set it to that",
        (true, false) => $"{Wrong}, and does not follow as it is turned",
        _ => Wrong,
    };
}
