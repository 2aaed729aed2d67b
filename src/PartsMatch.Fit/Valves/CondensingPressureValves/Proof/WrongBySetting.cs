using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

/// <summary>What follows of a valve that does wrong by what it is to be set to.</summary>
/// <remarks>What an old one is set to nobody knows: it is set anew first, and condemned where it does not follow, or where it is known that it cannot be set. One that follows can be set, whatever is marked on it. A new one is told, and never condemned.</remarks>
internal static class WrongBySetting
{
    /// <summary>The same ruling with what follows from it.</summary>
    /// <param name="one">The case.</param>
    /// <param name="bad">What is wrong.</param>
    public static Ruling Judge(CondensingPressureValveCase one, Ruling bad) => one switch
    {
        { New: not null } => bad,
        { Readings.FollowsSetting: true } => bad.NotThePart(),
        { How: null } => bad.ThenRead("arrangement", "See how it is arranged: a three-way valve holds a head, a check valve opens at a difference, and each is condemned by other signs.", Side.Plate),
        { Readings.FollowsSetting: false } or { Measured.CanBeSet: false } => bad.ThePartHasFailed(),
        { Measured.CanBeSet: true } => bad.ThenRead("followsSetting", "It can be set, and nobody knows what it is set to: turn it to what is needed, wait a quarter of an hour, and see whether it follows. One that does not is replaced."),
        _ => bad.ThenRead("followsSetting", "See whether it has a stem to set it by. Where it has, turn it to what is needed, wait a quarter of an hour, and see whether it follows: one that does not, or has none to turn, is replaced."),
    };
}

/// <summary>What follows of a valve that does what it should by its pressures.</summary>
internal static class RightBySetting
{
    /// <summary>It is good, unless it is said not to follow as it is set, of which by its pressures it does what it should.</summary>
    /// <param name="one">The case.</param>
    /// <param name="right">What it does.</param>
    /// <param name="limit">The limit.</param>
    public static Ruling Judge(CondensingPressureValveCase one, FormattableString right, FormattableString limit) => one is { Readings.FollowsSetting: false, Measured.CanBeSet: not false }
        ? Ruling.CantTell($"{FormattableString.Invariant(right)} By its pressures it does what it should, and it is said not to follow its setting: to be sure turn it to what is needed once more, wait a quarter of an hour, and read both again.", limit)
        : Ruling.Good(right, limit);
}

/// <summary>What is wrong with it, and what else it may be where it can be set; formed only when it is shown.</summary>
/// <param name="One">The case.</param>
/// <param name="Wrong">What is wrong where its setting is right: "it is stuck shut".</param>
internal readonly record struct OrNotSet(CondensingPressureValveCase One, string Wrong)
{
    /// <inheritdoc/>
    public override string ToString() => (One.Readings.FollowsSetting, One.Measured.CanBeSet) switch
    {
        (true, _) => "it follows as it is turned: set it to that",
        (_, false) => Wrong,
        (false, _) => $"{Wrong}, and does not follow as it is turned",
        (null, true) => $"{Wrong}, or is not set to that",
        _ => $"{Wrong}, or is not set to that where it can be set",
    };
}
