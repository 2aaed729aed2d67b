using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Demo.Contactors;

/// <summary>A line of contactors or relays: what is alike in it, and how much of the catalogue it fills.</summary>
/// <param name="Title">What a counter calls them.</param>
/// <param name="Share">How many parts the catalogue has of them.</param>
/// <param name="Price">What one costs, roughly, by the amps of its largest pole.</param>
/// <param name="Draw">Draws one.</param>
public sealed record ContactorLine(string Title, int Share, Func<double, double> Price, Func<Draw, ContactorSpec> Draw);

/// <summary>The lines: steps of amps, coils and bodies of the trade are practice, from memory, unchecked; sizes by NEMA ICS 2 and pilot duties by NEMA ICS 5 are retyped from the published tables.</summary>
public static class ContactorLines
{
    private static readonly double[] DefinitePurpose = [20, 25, 30, 30, 40, 40, 50, 60, 75, 90];
    private static readonly double[] SmallDefinitePurpose = [20, 25, 30, 30, 40];
    private static readonly string[] Coils = ["24 V", "24 V", "24 V", "120 V", "208-240 V", "208-240 V", "277 V", "480 V"];
    private static readonly string[] EuropeanCoils = ["24 V", "110 V", "230 V", "230 V", "400 V"];

    /// <summary>NEMA ICS 2 tables 2-4-1 and 2-4-2, retyped: size, poles, volts, horsepower.</summary>
    private static readonly (NemaSize Size, PoleCount Poles, string Volts, string Horsepower, double Continuous)[] Sizes =
    [
        (NemaSize.DoubleZero, PoleCount.Three, "200/230/460/575 V", "1-1/2 hp / 1-1/2 hp / 2 hp / 2 hp", 9),
        (NemaSize.Zero, PoleCount.Three, "200/230/460/575 V", "3 hp / 3 hp / 5 hp / 5 hp", 18),
        (NemaSize.One, PoleCount.Three, "200/230/460/575 V", "7-1/2 hp / 7-1/2 hp / 10 hp / 10 hp", 27),
        (NemaSize.Two, PoleCount.Three, "200/230/460/575 V", "10 hp / 15 hp / 25 hp / 25 hp", 45),
        (NemaSize.DoubleZero, PoleCount.Two, "115/230 V", "1/3 hp / 1 hp", 9),
        (NemaSize.Zero, PoleCount.Two, "115/230 V", "1 hp / 2 hp", 18),
        (NemaSize.One, PoleCount.Two, "115/230 V", "2 hp / 3 hp", 27),
        (NemaSize.OneP, PoleCount.Two, "115/230 V", "3 hp / 5 hp", 36),
    ];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ContactorLine> All { get; } =
    [
        new("Definite purpose contactor", 220, amps => 12 + (0.7 * amps), draw => OfDefinitePurpose(draw, draw.Of((PoleCount.OneAndShunt, 2), (PoleCount.One, 2), (PoleCount.Two, 5), (PoleCount.Three, 5), (PoleCount.Four, 1)))),
        new("Contactor by NEMA size", 90, amps => 110 + (4 * amps), OfSize),
        new("Contactor by IEC", 90, amps => 30 + (1.6 * amps), OfEurope),
        new("Fan or power relay", 60, amps => 9 + (0.5 * amps), OfPower),
        new("Control relay", 40, amps => 8 + amps, OfControl),
    ];

    private static ContactorSpec OfDefinitePurpose(Draw draw, PoleCount poles)
    {
        var isSmall = poles is PoleCount.One or PoleCount.OneAndShunt;
        var amps = draw.Pick(isSmall ? SmallDefinitePurpose : DefinitePurpose);

        // Heavier ones switch less of their amps at 480 and 600 V; locked-rotor amps are five to six times the full load at 240 V.
        var (high, top) = (amps <= 30 ? amps : Math.Round(amps * 0.8), amps <= 30 ? amps : Math.Round(amps * 0.64));
        var locked = amps * draw.Of((5, 3), (6, 7));
        var lockedHigh = Math.Round(locked * 0.83 / 5) * 5;
        var lockedTop = Math.Round(locked * 0.67 / 5) * 5;
        var coil = draw.Pick(Coils);
        return Coiled(draw, coil, amps <= 40 ? 6 : amps <= 60 ? 11 : 22) with
        {
            PoleCount = poles,
            ContactAction = ContactAction.NormallyOpen,
            Auxiliaries = AuxiliaryContacts.None,
            TakesAuxiliaries = amps >= 40 && draw.Chance(0.7),
            HasInterlock = false,
            ContinuousAmps = ElectricCurrent.FromAmperes(amps + 10),
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("240/480/600 V"),
            FullLoadAmps = Amps(amps, high, top),
            LockedRotorAmps = Amps(locked, lockedHigh, lockedTop),
            ResistiveAmps = Amps(amps + 10, amps + 10, amps + 10),
            Contacts = ContactEnclosure.Open,
            Mounts = draw.Of((new Choices<ContactorMount>(ContactorMount.BasePlate), 8), (new Choices<ContactorMount>(ContactorMount.BasePlate, ContactorMount.Rail), 2)),
            Terminals = amps <= 40 ? new Choices<TerminalKind>(TerminalKind.Screws, TerminalKind.QuickConnects) : new Choices<TerminalKind>(TerminalKind.Lugs),
        };
    }

    private static ContactorSpec OfSize(Draw draw)
    {
        var (size, poles, volts, horsepower, continuous) = draw.Pick(Sizes);
        var power = TradeText.Read<Figures<Power>>(horsepower);
        return Coiled(draw, draw.Pick(Coils), continuous switch { <= 18 => 24, <= 36 => 27, _ => 37 }) with
        {
            PoleCount = poles,
            ContactAction = ContactAction.NormallyOpen,
            Size = size,
            ContinuousAmps = ElectricCurrent.FromAmperes(continuous),
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>(volts),
            SinglePhaseHorsepower = poles == PoleCount.Two ? power : null,
            ThreePhaseHorsepower = poles == PoleCount.Three ? power : null,
            Auxiliaries = draw.Of((new AuxiliaryContacts(1, 0), 7), (new AuxiliaryContacts(1, 1), 2), (AuxiliaryContacts.None, 1)),
            TakesAuxiliaries = true,
            HasInterlock = draw.Chance(0.15),
            PilotDuty = new("A600"),
            Contacts = ContactEnclosure.Open,
            Mounts = new(ContactorMount.BasePlate),
            Terminals = new(draw.Of((TerminalKind.Lugs, 6), (TerminalKind.Screws, 4))),
        };
    }

    private static ContactorSpec OfEurope(Draw draw)
    {
        // AC-3 and AC-1 of the usual steps; hermetic compressors get some more than AC-3 (practice).
        var (motors, resistance, compressors) = draw.Pick<(double, double, double)>([(9, 25, 11), (12, 25, 14), (18, 32, 20), (25, 40, 28), (32, 50, 36), (40, 60, 45), (50, 80, 55), (65, 80, 70)]);
        return Coiled(draw, draw.Pick(EuropeanCoils), motors <= 18 ? 7.5 : motors <= 38 ? 9.5 : 18) with
        {
            PoleCount = draw.Of((PoleCount.Three, 9), (PoleCount.Four, 1)),
            ContactAction = ContactAction.NormallyOpen,
            CoilFrequency = TradeText.Read<Figures<Frequency>>(draw.Of(("50/60 Hz", 7), ("50 Hz", 3))),
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("400 V"),
            AcOneAmps = Amps(resistance),
            AcThreeAmps = Amps(motors),
            AcEightAmps = draw.Chance(0.4) ? Amps(compressors) : null,
            ContinuousAmps = ElectricCurrent.FromAmperes(resistance),
            PilotDuty = draw.Chance(0.5) ? new("A600") : null,
            Auxiliaries = draw.Of((new AuxiliaryContacts(1, 1), 5), (new AuxiliaryContacts(1, 0), 3), (AuxiliaryContacts.None, 2)),
            TakesAuxiliaries = true,
            HasInterlock = draw.Chance(0.3),
            Contacts = ContactEnclosure.Open,
            Mounts = new(ContactorMount.Rail, ContactorMount.BasePlate),
            Terminals = new(motors <= 38 ? TerminalKind.Screws : TerminalKind.Lugs),
        };
    }

    private static ContactorSpec OfPower(Draw draw)
    {
        var (poles, action) = draw.Of(((PoleCount.One, ContactAction.ChangeOver), 4), ((PoleCount.One, ContactAction.NormallyOpen), 4), ((PoleCount.One, ContactAction.NormallyClosed), 1), ((PoleCount.Two, ContactAction.NormallyOpen), 2), ((PoleCount.Two, ContactAction.ChangeOver), 1));
        var amps = draw.Of((8.0, 3), (12.0, 5), (16.0, 3));
        return Coiled(draw, draw.Of(("24 V", 6), ("120 V", 2), ("208-240 V", 3)), 4.5) with
        {
            PoleCount = poles,
            ContactAction = action,
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            FullLoadAmps = Amps(amps + 4, amps),
            LockedRotorAmps = Amps((amps + 4) * 5, amps * 5),
            ResistiveAmps = Amps(amps + 6, amps + 6),
            DirectVolts = amps > 8 ? TradeText.Read<Figures<ElectricPotential>>("28 V") : null,
            DirectAmps = amps > 8 ? Amps(amps) : null,
            PilotDuty = new(draw.Of(("B300", 3), ("C300", 2), ("A300", 1))),
            Auxiliaries = AuxiliaryContacts.None,
            TakesAuxiliaries = false,
            HasInterlock = false,
            Contacts = draw.Of((ContactEnclosure.Open, 8), (ContactEnclosure.Sealed, 2)),
            Hazards = draw.Chance(0.1) ? new(HazardMarking.A2L) : null,
            Mounts = new(ContactorMount.Bracket),
            Terminals = new(TerminalKind.QuickConnects),
        };
    }

    /// <summary>Those of the lowest pilot duty with a coil for 24 V are for direct current, as electronic controls give it.</summary>
    private static ContactorSpec OfControl(Draw draw)
    {
        var poles = draw.Of((PoleCount.One, 2), (PoleCount.Two, 6), (PoleCount.Three, 2));
        var relay = Coiled(draw, draw.Of(("24 V", 5), ("120 V", 4), ("208-240 V", 1)), 1.8) with
        {
            PoleCount = poles,
            ContactAction = ContactAction.ChangeOver,
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            ResistiveAmps = Amps(10, 10),
            DirectVolts = TradeText.Read<Figures<ElectricPotential>>("28/125 V"),
            DirectAmps = Amps(10, 0.5),
            PilotDuty = new(draw.Of(("B300", 6), ("C300", 2), ("D300", 1))),
            Auxiliaries = AuxiliaryContacts.None,
            TakesAuxiliaries = false,
            HasInterlock = false,
            Contacts = draw.Of((ContactEnclosure.Open, 9), (ContactEnclosure.Sealed, 1)),
            Mounts = new(draw.Of((ContactorMount.Socket, 7), (ContactorMount.Bracket, 3))),
            Terminals = new(draw.Of((TerminalKind.Pins, 7), (TerminalKind.QuickConnects, 3))),
        };
        return relay.PilotDuty!.Designation == "D300" && relay.CoilVolts![0].First.Volts < 30 ? relay with { CoilFrequency = null, CoilCurrent = CoilCurrent.Direct } : relay;
    }

    /// <summary>Ohms of a coil go with the square of its volts over its VA; its wire has about a quarter of the impedance that holds it in (practice).</summary>
    private static ContactorSpec Coiled(Draw draw, string volts, double va)
    {
        var marked = TradeText.Read<Figures<Spread<ElectricPotential>>>(volts);
        var middle = (marked[0].First.Volts + marked[0].Last.Volts) / 2;
        var ohms = middle * middle / va * draw.Between(0.22, 0.28);
        return new()
        {
            CoilVolts = marked,
            CoilFrequency = TradeText.Read<Figures<Frequency>>(draw.Of(("50/60 Hz", 8), ("60 Hz", 2))),
            CoilVa = ElectricApparentPower.FromVoltamperes(va),
            CoilOhms = draw.Chance(0.4) ? TradeText.Read<Ohms>(FormattableString.Invariant($"{(ohms < 100 ? Math.Round(ohms, 1) : Math.Round(ohms))} Ω")) : null,
        };
    }

    private static Figures<ElectricCurrent> Amps(params double[] amps) => new((amps.Distinct().Count() == 1 ? amps[..1] : amps).Select(one => ElectricCurrent.FromAmperes(one)));
}
