using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.Pipes;
using PartsMatch.Fit.Valves.SolenoidValves;
using UnitsNet;
using Taps = PartsMatch.Fit.Quantities.Figures<PartsMatch.Fit.Quantities.Spread<UnitsNet.ElectricPotential>>;

namespace PartsMatch.Demo.Valves.SolenoidValves;

/// <summary>The invented solenoid valves: 350 of them.</summary>
public sealed class SolenoidValveCatalogue : FamilyCatalogue
{
    private static readonly (string Volts, string Letters)[] Coils = [("24 V", "24"), ("120 V", "120"), ("208-240 V", "240"), ("12 V", "12D"), ("24 V", "24D")];

    /// <summary>What a coil for direct current takes over one for alternating current on the same body (practice).</summary>
    private const double DirectTakes = 1.2;

    /// <summary>What a body opens against less with a coil for direct current, psi (practice: a fifth to a third); dear makers give it.</summary>
    private const int DirectLacks = 75;

    /// <summary>What a coil for alternating current takes as it pulls in over what it holds by (practice: 2 to 3); dear makers give it.</summary>
    private const double PullsIn = 2.5;

    public override string Kind => "solenoidValve";

    public override Shape Shape => Shape<SolenoidValveSpec>.Of;

    public override int SeedOffset => 4;

    public override string HowDrawn => "Solenoid valves are drawn by line (for common refrigerants, for high pressure, normally open, for hydrocarbons, carbon dioxide and ammonia) and tube size: what a body passes grows with its bore, small ports are direct-acting, and one coil of a few voltages comes on the body while others are listed for it.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look> { ["normalState"] = new(10), ["inletSize"] = new(4), ["flowCoefficient"] = new(20), ["coilVolts"] = new(15), ["coilCurrent"] = new(8), ["coilFrequency"] = new(8), ["openingDifferential"] = new(3, Less: 10), ["workingPressure"] = new(3, Less: 20), ["bothWays"] = new(8) };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var valve = (SolenoidValveSpec)old.Part.Spec;
        var outlet = Pressure.FromKilopascals(200);
        return Shape<SolenoidValveSite>.Of.Write(new SolenoidValveSite
        {
            Refrigerant = valve.Refrigerants?[0],
            Line = RefrigerantLine.Liquid,
            FlowReverses = valve.BothWays == true && draw.Chance(0.3),
            OutletLeast = outlet,
            InletMost = valve.OpeningDifferential is { } most ? outlet + (most.Value * draw.Between(0.5, 0.9)) : null,
            DesignPressure = valve.WorkingPressure * draw.Between(0.75, 0.98),
            CoilSupplyVolts = valve.CoilVolts is { } volts ? ElectricPotential.FromVolts(Math.Round(volts[0].Last.Volts * (1 + place.VoltsOff))) : null,
            CoilSupplyFrequency = valve.CoilFrequency?[0],
            CoilSupplyCurrent = valve.CoilCurrent,
        });
    }

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. SolenoidValveLine.All.SelectMany(line => Of(line, numbers, draw))];
    }

    /// <summary>A maker never lists the same valve with the same coil twice.</summary>
    private static List<DemoPart> Of(SolenoidValveLine line, PartNumbers numbers, Draw draw)
    {
        var makers = Maker.WhoMake(Programme.Valves);
        var listed = new HashSet<(Maker, ValveSize, PipeJoint, int Coil)>();
        var parts = new List<DemoPart>();
        while (parts.Count < line.Share)
        {
            var (maker, size, joint) = (draw.Pick(makers), draw.Pick(line.Sizes), draw.Pick(line.Joints));
            var coil = draw.Of((0, 4), (1, 3), (2, 4), (3, 1), (4, 1));
            if (joint == PipeJoint.Flare && size.Tube is not ("1/4 in" or "3/8 in" or "1/2 in" or "5/8 in")) continue;
            if (listed.Add((maker, size, joint, coil))) parts.Add(Offer(line, size, joint, coil, maker, numbers, draw));
        }

        return parts;
    }

    private static DemoPart Offer(SolenoidValveLine line, ValveSize size, PipeJoint joint, int coil, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var isDirect = coil >= 3;
        var tube = TradeText.Read<Length>(size.Tube);
        var kv = Math.Round(size.Kv * draw.Between(0.9, 1.12), 2);
        var watts = draw.Of((8, 2), (10, 3), (14, 3), (18, 2));
        var opens = isDirect ? draw.Of((200, 2), (250, 2)) : draw.Of((275, 1), (300, 4), (360, 2));
        var spec = new SolenoidValveSpec
        {
            NormalState = line.State,
            Lift = size.Lift,
            Refrigerants = line.Listed,
            Oils = ListedOils.Of(maker, line.Listed),
            FlowCoefficient = maker.PriceFactor < 1.05 ? new(Math.Round(kv * 1.156, 2), IsCv: true) : new(kv, IsCv: false),
            OpeningDifferential = new(Pressure.FromPoundsForcePerSquareInch(opens)),
            DirectDifferential = isDirect || maker.PriceFactor < 1.05 ? null : new(Pressure.FromPoundsForcePerSquareInch(opens - DirectLacks)),
            LeastDifferential = new(Pressure.FromPoundsForcePerSquareInch(size.Lift == Lift.Direct ? 0 : draw.Of((0.7, 2), (1, 3), (2, 2)))),
            WorkingPressure = Pressure.FromPoundsForcePerSquareInch(draw.Pick(line.WorkingPressures)),
            BothWays = draw.Chance(0.08),
            Hazards = line.Listed.Any(one => one.IsFlammable) ? (draw.Chance(0.8) ? MarkOf(line) : null) : draw.Chance(0.3) ? new(HazardMarking.Ordinary) : null,
            Body = line.Body,
            Joint = joint,
            InletSize = tube,
            OutletSize = tube,
            CoilVolts = TradeText.Read<Taps>(Coils[coil].Volts),
            CoilCurrent = isDirect ? CoilCurrent.Direct : CoilCurrent.Alternating,
            CoilFrequency = isDirect ? null : TradeText.Read<Figures<Frequency>>(draw.Of(("50/60 Hz", 4), ("60 Hz", 2))),
            CoilPower = ElectricApparentPower.FromVoltamperes(watts),
            CoilInrush = isDirect || maker.PriceFactor < 1.05 ? null : ElectricApparentPower.FromVoltamperes(watts * PullsIn),
            CoilNumber = $"{maker.Name[..2].ToUpperInvariant()}C-{Coils[coil].Letters}",
            FurtherCoils = new(Enumerable.Range(0, Coils.Length).Where(other => other != coil).Select(other => Further(other, maker, isDirect ? watts / DirectTakes : watts))),
        };
        return new(
            numbers.Next(maker),
            maker,
            $"{line.Title}, {size.Tube} {TradeText.Write(joint)}, {Coils[coil].Volts}{(isDirect ? " DC" : string.Empty)} coil",
            discontinued,
            WithGaps(spec, maker, draw),
            $"{line.Title} {size.Tube}",
            Stock.Price(45 + (28 * size.Kv) + (line.Body == BodyMaterial.Brass ? 0 : 90), maker, draw),
            Stock.OnHand(discontinued, universal: size.Kv < 3 && line.Body == BodyMaterial.Brass, draw));
    }

    /// <summary>By the class of what it is listed for that burns most; there is no mark for ammonia.</summary>
    private static Choices<HazardMarking>? MarkOf(SolenoidValveLine line) =>
        line.Listed.Any(one => one.SafetyClass == "A3") ? new(HazardMarking.A3) : line.Listed.Any(one => one.SafetyClass == "A2L") ? new(HazardMarking.A2L) : null;

    private static CoilOffer Further(int coil, Maker maker, double va) => new(
        TradeText.Read<Taps>(Coils[coil].Volts)[0],
        coil >= 3 ? null : TradeText.Read<Figures<Frequency>>("50/60 Hz"),
        coil >= 3 ? CoilCurrent.Direct : CoilCurrent.Alternating,
        $"{maker.Name[..2].ToUpperInvariant()}C-{Coils[coil].Letters}",
        maker.PriceFactor > 1.05 && coil >= 3 ? null : ElectricApparentPower.FromVoltamperes(Math.Round(coil >= 3 ? va * DirectTakes : va)));

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static SolenoidValveSpec WithGaps(SolenoidValveSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { LeastDifferential = null }, 3),
        (spec with { CoilPower = null, CoilInrush = null }, 4),
        (spec with { FurtherCoils = null, CoilNumber = null }, 3),
        (spec with { CoilFrequency = null }, 2),
        (spec with { FlowCoefficient = null }, 1),
        (spec with { BothWays = null, Body = null }, 3),
        (spec with { WorkingPressure = null }, 1));
}
