using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.PressureControls.Proof;

/// <summary>What is to be known of contacts, and of where they move, before they are judged at all.</summary>
internal static class MeasuredContacts
{
    /// <summary>What is said where it is not known; null where it is.</summary>
    public static Ruling? NotKnown(PressureControlCase one)
    {
        if (one.IsSideOpen) return Ruling.CantTell($"Its contacts change over; which side of them is wired, and so was measured, is not known.").ThenRead("sidesWired", "See which sides of its change-over contacts have a wire.", Side.Site);
        if (one.IsOfOtherSide) return Ruling.CantTell($"The side that is wired is not the one that keeps the equipment running, whose cut-out and cut-in these are.");
        if (one.Misread is not { } misread) return null;
        return one.IsAsMarked
            ? Ruling.CantTell(misread).ThenRead("cutOut", "Look at its plate again: where it opens, and where it closes.", Side.Plate)
            : Ruling.CantTell(misread).ThenRead("cutOutNeeded", "Look again where it is to open, and where it is to close: on its scale, or in the equipment's papers.", Side.Site);
    }

    /// <summary>What is asked where it is not known which way they go; null where it is.</summary>
    public static Ruling? WayNotKnown(PressureControlCase one)
    {
        if (one.Way is not null) return null;
        var open = Ruling.CantTell($"Whether it opens on rise or on fall is not known.");
        return one.Need.Plate.Action is null
            ? open.ThenRead("action", "Find out whether its contacts open on rise or on fall.", Side.Plate)
            : open.ThenRead("function", "Find out what it is there for: that tells which of its two sides keeps the equipment running.", Side.Plate);
    }
}
