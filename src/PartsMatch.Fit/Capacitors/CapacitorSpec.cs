using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What a capacitor is made to do.</summary>
public enum CapacitorDuty
{
    /// <summary>To stay in circuit: IEC 60252-1.</summary>
    [Words("run", "motor run", "RUN CAP", "RUN CAPACITOR")]
    Run,

    /// <summary>To be in circuit for seconds: IEC 60252-2.</summary>
    [Words("start", "motor start", "START CAP", "START CAPACITOR")]
    Start,
}

/// <summary>The shape of a capacitor's can.</summary>
public enum CanShape
{
    /// <summary>Round.</summary>
    [Words("round", "RND")]
    Round,

    /// <summary>Oval.</summary>
    [Words("oval", "OVL")]
    Oval,
}

/// <summary>What a capacitor is: a marking, or a catalogue entry. Null is unknown.</summary>
public sealed record CapacitorSpec : Spec
{
    private const string Marking = "Marking";
    private const string Body = "Body";

    /// <summary>The marked capacitance and volts, of one or two sections.</summary>
    [Field("Rating", "µF (MFD) and volts on the can: 5 MFD 370 VAC, or 45+5 MFD 440 VAC for one of two sections.", Group = Marking)]
    public CapacitorRating? Rating { get; init; }

    /// <summary>Tolerance either way.</summary>
    [Field("Tolerance", "± percent on the can, such as 6 %.", Group = Marking, Example = "6 %")]
    public Ratio? Tolerance { get; init; }

    /// <summary>Frequency.</summary>
    [Field("Frequency", "50/60 Hz on the can.", Group = Marking)]
    public Figures<Frequency>? Frequency { get; init; }

    /// <summary>Run or start.</summary>
    [Field("Made to", "Run (metal can or hard plastic, a single figure) or start (black plastic, a range of µF).", Group = Marking)]
    public CapacitorDuty? Duty { get; init; }

    /// <summary>Whether it disconnects itself when it fails.</summary>
    [Field("Protected", "Protected type: P2, S2, 10000 AFC on the can; it disconnects itself when it fails.", Group = Marking)]
    public bool? IsProtected { get; init; }

    /// <summary>Greatest case temperature.</summary>
    [Field("Highest temperature", "The upper figure of the temperatures on the can, such as 70 °C.", Group = Marking)]
    public Temperature? TemperatureMost { get; init; }

    /// <summary>Can shape.</summary>
    [Field("Can", "Round or oval.", Group = Body)]
    public CanShape? Can { get; init; }

    /// <summary>Diameter, or width of an oval can.</summary>
    [Field("Diameter", "Across the can; the wider way of an oval one.", Group = Body, Tool = Tool.Tape, Example = "2 in")]
    public Length? Diameter { get; init; }

    /// <summary>Height without terminals.</summary>
    [Field("Height", "Of the can without its terminals.", Group = Body, Tool = Tool.Tape, Example = "3-7/8 in")]
    public Length? Height { get; init; }
}
