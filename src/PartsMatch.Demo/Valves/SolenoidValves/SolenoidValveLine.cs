using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using PartsMatch.Fit.Valves.SolenoidValves;

namespace PartsMatch.Demo.Valves.SolenoidValves;

/// <summary>A size of a line: what its body passes and how it is joined.</summary>
/// <param name="Tube">Inches.</param>
/// <param name="Kv">m³/h; about what a port of that tube's bore passes.</param>
/// <param name="Lift">Small ports are lifted by the magnet, large ones by the flow.</param>
public sealed record ValveSize(string Tube, double Kv, Lift Lift);

/// <summary>A line of solenoid valves that several makers offer.</summary>
/// <param name="Title">What a counter calls it.</param>
/// <param name="Share">How many entries it gets.</param>
/// <param name="Refrigerants">What it is listed for.</param>
/// <param name="WorkingPressures">psi.</param>
/// <param name="Sizes">Its sizes.</param>
/// <param name="Joints">How it is joined.</param>
/// <param name="Body">What it is made of.</param>
/// <param name="State">How it stands without power.</param>
public sealed record SolenoidValveLine(
    string Title,
    int Share,
    string Refrigerants,
    IReadOnlyList<int> WorkingPressures,
    IReadOnlyList<ValveSize> Sizes,
    IReadOnlyList<PipeJoint> Joints,
    BodyMaterial Body,
    NormalState State)
{
    private const string Calm = "R-22, R-134a, R-404A, R-407C, R-448A, R-449A, R-507A";

    private static readonly ValveSize[] Usual =
    [
        new("1/4 in", 0.22, Lift.Direct), new("3/8 in", 0.8, Lift.Pilot), new("1/2 in", 1.4, Lift.Pilot), new("5/8 in", 2.4, Lift.Pilot), new("7/8 in", 4.6, Lift.Pilot), new("1-1/8 in", 7.5, Lift.Pilot), new("1-3/8 in", 10, Lift.Pilot),
    ];

    /// <summary>All lines.</summary>
    public static IReadOnlyList<SolenoidValveLine> All { get; } =
    [
        new("solenoid valve, normally closed", 170, Calm, [500, 500, 600], Usual, [PipeJoint.Solder, PipeJoint.Solder, PipeJoint.Flare], BodyMaterial.Brass, NormalState.Closed),
        new("solenoid valve for high pressure, normally closed", 70, $"{Calm}, R-32, R-410A, R-452A, R-454B, R-454C, R-455A", [680, 700], Usual[..6], [PipeJoint.Solder], BodyMaterial.Brass, NormalState.Closed),
        new("solenoid valve, normally open", 40, Calm, [500, 500, 600], Usual[1..5], [PipeJoint.Solder, PipeJoint.Flare], BodyMaterial.Brass, NormalState.Open),
        new("solenoid valve for hydrocarbons", 25, "R-290, R-600a, R-1270", [450], Usual[..3], [PipeJoint.Solder], BodyMaterial.Brass, NormalState.Closed),
        new("solenoid valve for carbon dioxide", 25, "R-744", [1300, 1740], [new("3/8 in", 0.5, Lift.Pilot), new("1/2 in", 0.9, Lift.Pilot), new("5/8 in", 1.6, Lift.Pilot)], [PipeJoint.Solder, PipeJoint.ButtWeld], BodyMaterial.Stainless, NormalState.Closed),
        new("solenoid valve for ammonia", 20, "R-22, R-134a, R-404A, R-717", [400, 580], [new("1/2 in", 1.6, Lift.Pilot), new("3/4 in", 3.5, Lift.Pilot), new("1 in", 6.5, Lift.Pilot)], [PipeJoint.PipeThread, PipeJoint.ButtWeld], BodyMaterial.Steel, NormalState.Closed),
    ];

    /// <summary>What it is listed for, as a spec holds it.</summary>
    public RefrigerantList Listed => Trade.TradeText.Read<RefrigerantList>(Refrigerants);
}
