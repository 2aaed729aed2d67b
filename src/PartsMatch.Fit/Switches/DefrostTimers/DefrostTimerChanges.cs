using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What may have to be changed about a defrost timer. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class DefrostTimerChanges
{
    /// <summary>Connect the clock for the volts there are.</summary>
    public static ChangeKind ConnectClock { get; } = new("connectClock", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Its diagram shows the leads or the link of the clock motor for each voltage; insulate the lead that is not used.",
    };

    /// <summary>Connect the release solenoid for the volts there are.</summary>
    public static ChangeKind ConnectRelease { get; } = new("connectRelease", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Its diagram shows the leads or the link of the release solenoid for each voltage, which are not those of the clock; on the lower voltage's tap the higher one burns it.",
    };

    /// <summary>Feed the clock anew.</summary>
    public static ChangeKind FeedClock { get; } = new("feedClock", 0.4)
    {
        Stage = Stage.Wire,
        HowTo = "Follow the old clock's two wires to what switches them, and take the feed before it or behind it.",
    };

    /// <summary>Leave the release alone.</summary>
    public static ChangeKind LeaveRelease { get; } = new("leaveRelease", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Leave its release terminal without wire; then the fail-safe alone ends each defrost, so set it to what the coil takes.",
    };

    /// <summary>See what is wired.</summary>
    public static ChangeKind CheckContacts { get; } = new("checkTimerContacts", 0.1, IsCheck: true)
    {
        Stage = Stage.NoteWhatIsThere,
        HowTo = "Follow each wire from its terminal to what it feeds. Where one goes to what the new one has no contact for, say what the contacts are needed for, and ask again.",
    };

    /// <summary>See that pressure does not end the defrost.</summary>
    public static ChangeKind PutOutPressure { get; } = new("putOutPressure", 0.3, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Where it cannot be put out of use, it ends each defrost as soon as the suction pressure comes to its setting, and the timer does not go in.",
    };

    /// <summary>See how many lines were switched.</summary>
    public static ChangeKind CheckPoles { get; } = new("checkTimerPoles", 0.1, IsCheck: true)
    {
        Stage = Stage.NoteWhatIsThere,
        HowTo = "Count the common terminals that have a line on them: each is a pole. A heater of which both lines were opened must not stay live on one of them.",
    };

    /// <summary>Put fans and compressor on one contact.</summary>
    public static ChangeKind ShareContact { get; } = new("shareTimerContact", 0.3)
    {
        Stage = Stage.Wire,
        HowTo = "Both stop in defrost alike; see that the contact carries both together, as they start.",
    };

    /// <summary>Add a fan delay.</summary>
    public static ChangeKind AddFanDelay { get; } = new("addFanDelay", 0.6)
    {
        Stage = Stage.Mount,
        HowTo = "Strap the switch to the coil where it frosts last, and wire it in the fans' line: without it the fans blow meltwater into the box.",
    };

    /// <summary>See what longer heat does.</summary>
    public static ChangeKind CheckLongerDefrost { get; } = new("checkLongerDefrost", 0.2, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Where a switch on the coil ends the defrost, nothing changes while that switch is sound; else the box gets warmer.",
    };

    /// <summary>Map the terminals.</summary>
    public static ChangeKind MapTerminals { get; } = new("mapTerminals", 0.3)
    {
        Stage = Stage.Wire,
        HowTo = "Mark each wire by what it is there for before it comes off: common, heater, fans, compressor, release. Its diagram tells where each goes; numbers of two makers do not agree.",
    };

    /// <summary>Put up another box.</summary>
    public static ChangeKind PutUpBox { get; } = new("putUpTimerBox", 0.5)
    {
        Stage = Stage.Mount,
        HowTo = "Take down the old box, and bring every conduit into the new one with its connector.",
    };
}
