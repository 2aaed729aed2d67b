using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>What is to be known of contacts before they are judged at all.</summary>
internal static class MeasuredSide
{
    /// <summary>What is asked where it is not known; null where it is.</summary>
    public static Ruling? NotKnown(ThermostatCase one)
    {
        if (one.IsSideOpen) return Ruling.CantTell($"Its contacts change over; which side of them is wired, and so was measured, is not known.").ThenRead("sidesWired", "See which sides of its change-over contacts have a wire.", Side.Site);
        if (one.OpensOnRise is null) return Ruling.CantTell($"Whether it opens or closes on rise is not known.").ThenRead("action", "Find out whether its contacts open or close as it gets warmer.", Side.Plate);
        if (!one.IsOfOtherSide) return null;
        return one.Measured.Action is null
            ? Ruling.CantTell($"The side that opens on rise was measured; whether there is another one, of which its one temperature may be, is not known.").ThenRead("action", "See whether its contacts change over, or open or close alone.", Side.Plate)
            : Ruling.CantTell($"Of its change-over contacts the side that opens on rise was measured; its one temperature may be that of the other side.").ThenRead(WantedPoints.Of(one.Need).Unread, "Find out where its contacts move the other way: on its scale, or in the equipment's papers.", Side.Plate);
    }
}
