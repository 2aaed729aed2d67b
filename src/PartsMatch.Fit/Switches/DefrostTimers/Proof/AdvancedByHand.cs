using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>What a contact says that did not follow as the timer was advanced by hand into defrost.</summary>
/// <remarks>On a warm coil the switch that ends the defrost is closed, and throws a good timer back into cooling at once: its heater contact is open then, and its fan contact closed.</remarks>
internal static class AdvancedByHand
{
    private const string Again = "advance it again on a frosted coil, or with the wire off its release terminal (power off and proved dead before the wire comes off, and its end insulated), and see anew whether its heater contact closes and its fan contact opens";

    /// <summary>Whether it stood in defrost as its contacts were read; null when not known.</summary>
    internal static bool? StoodInDefrost(DefrostTimerCase one) => one.EndsByTemperature == false ? true : one.Readings.KeptFromRelease;

    /// <summary>It has failed, or was thrown back: this tells which.</summary>
    internal static Ruling OrReleased(string seen) => Ruling.Bad($"Advanced into defrost, {seen}, or a switch on the coil threw the timer back into cooling.")
        .ThenRead("keptFromRelease", $"On a warm coil a switch that ends the defrost is closed, and throws the timer back into cooling as it is advanced. Was it kept from that, by no wire on its release terminal or by a coil well below the end temperature? If not, {Again}.");

    /// <summary>Nothing kept it from being thrown back, so that its contact is to be read again.</summary>
    internal static Ruling ToBeReadAgain(string field, string seen)
    {
        var sentence = $"Advanced into defrost, {seen}, and a switch on the coil may have thrown the timer back into cooling: {Again}. Say then that it was kept from being released.";
        return Ruling.CantTell($"{sentence}").ThenRead(field, sentence);
    }
}
