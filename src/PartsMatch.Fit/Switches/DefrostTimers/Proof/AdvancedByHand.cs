using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>What a contact says that did not follow as the timer was advanced by hand into defrost.</summary>
/// <remarks>On a warm coil the switch that ends the defrost is closed, and bellows that end it feel a high pressure: either throws a good timer back into cooling at once, and its heater contact is open then, its fan contact closed.</remarks>
internal static class AdvancedByHand
{
    private const string Again = "advance it again on a frosted coil, or with the wire off its release terminal where no bellows in it feel the pressure (power off and proved dead before the wire comes off, and its end insulated), and see anew whether its heater contact closes and its fan contact opens";

    /// <summary>Whether it stood in defrost as its contacts were read; null when not known.</summary>
    internal static bool? StoodInDefrost(DefrostTimerCase one) => one.MayBeThrownBack ? one.Readings.KeptFromRelease : true;

    /// <summary>It has failed, or was thrown back: this tells which.</summary>
    internal static Ruling OrReleased(string seen) => Ruling.Bad($"Advanced into defrost, {seen}, or what ends its defrost on a warm coil threw it back into cooling.")
        .ThenRead("keptFromRelease", $"On a warm coil a switch that ends the defrost is closed, and bellows that end it feel a high pressure: either throws the timer back into cooling as it is advanced. Was it kept from that, by a coil well below the end temperature and no volts at its release terminal (a switch that sticks brings them to it on a frosted coil, too), or by no wire on its release terminal where it has no bellows? If not, {Again}.");

    /// <summary>Nothing kept it from being thrown back, so that its contact is to be read again. An old one in doubt is not cleared before that; of a new one nothing is held against it.</summary>
    internal static Ruling ToBeReadAgain(DefrostTimerCase one, string field, string seen)
    {
        var sentence = $"Advanced into defrost, {seen}, and what ends its defrost on a warm coil may have thrown it back into cooling: {Again}. Say then that it was kept from being released.";
        return (one.New is null ? Ruling.Bad($"{sentence}") : Ruling.CantTell($"{sentence}")).ThenRead(field, sentence);
    }
}
