using PartsMatch.Fit.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>What is read at a condensing-pressure valve: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record CondensingPressureValveReadings : Readings
{
    private const string Running = "While it runs";

    /// <summary>Pressure at the receiver or in the liquid line.</summary>
    [Field("Head pressure", "Gauge pressure at the receiver or in the liquid line, running steadily.", Group = Running, Tool = Tool.Meter, Example = "175 psi")]
    public Pressure? HeadPressure { get; init; }

    /// <summary>Pressure of the hot gas before a differential check valve.</summary>
    [Field("Hot gas pressure", "Gauge pressure of the hot gas before a differential check valve, running steadily: less the head pressure at the receiver it is the difference that opens it.", Group = Running, Tool = Tool.Meter, Example = "195 psi")]
    public Pressure? HotGasPressure { get; init; }

    /// <summary>Pressure before an inlet regulator.</summary>
    [Field("Pressure at the condenser", "Gauge pressure at the condenser, before an inlet regulator, running steadily: that is what it holds.", Group = Running, Tool = Tool.Meter, Example = "185 psi")]
    public Pressure? CondenserPressure { get; init; }

    /// <summary>Whether the by-pass is warm.</summary>
    [Field("By-pass is hot", "Whether the pipe that lets hot gas by to the receiver is clearly hotter than the condenser's drain, by a thermometer.", Group = Running)]
    public bool? BypassHot { get; init; }

    /// <summary>Whether there is enough refrigerant to flood with.</summary>
    [Field("Enough charge", "Whether the receiver shows liquid and the sight glass is clear: without enough no valve floods a condenser.", Group = Running)]
    public bool? EnoughCharge { get; init; }

    /// <summary>Whether it follows as it is set anew.</summary>
    [Field("Follows its setting", "Of one that can be set, turned to what is needed and left a quarter of an hour: whether it then does what it should. Where a head is to be held, hot gas goes by below that and the head comes up to it; through a differential check valve it goes by above its difference alone.", Group = Running, Tool = Tool.Meter)]
    public bool? FollowsSetting { get; init; }
}
