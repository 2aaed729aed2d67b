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
        if (one.New is null && WantedPoints.Of(one.Need).Disagrees) return Ruling.CantTell($"What the old contacts do, and which side of them is wired, do not go together: one of the two is misread.").ThenRead("action", "Look at its plate and its wires again: what do its contacts do as it gets warmer?", Side.Plate);
        if (!one.IsOfOtherSide) return null;
        if (one.Measured.Action is null) return Ruling.CantTell($"The side that opens on rise was measured; whether there is another one, of which its one temperature may be, is not known.").ThenRead("action", "See whether its contacts change over, or open or close alone.", Side.Plate);
        var (field, side) = Unread(one.Need);
        return Ruling.CantTell($"Of its change-over contacts the side that opens on rise was measured; its one temperature may be that of the other side.").ThenRead(field, "Find out where its contacts move the other way: on its scale, or in the equipment's papers.", side);
    }

    /// <summary>The temperature that is not read: of the plate, unless that has it, or the other one is needed elsewhere than it is marked, so that the two do not belong together.</summary>
    private static (string Field, Side Side) Unread(ThermostatNeed need)
    {
        var unread = WantedPoints.Of(need).Unread;
        var (marked, isOtherNeeded) = unread == "cutOut"
            ? (need.Plate.CutOut, Degrees.AreOthers(need.Plate.CutIn, need.Site.CutInNeeded))
            : (need.Plate.CutIn, Degrees.AreOthers(need.Plate.CutOut, need.Site.CutOutNeeded));
        return marked is null && !isOtherNeeded ? (unread, Side.Plate) : ($"{unread}Needed", Side.Site);
    }
}
