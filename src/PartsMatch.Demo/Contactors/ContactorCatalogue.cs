using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Demo.Contactors;

/// <summary>The invented contactors and relays: 500 of them.</summary>
public sealed class ContactorCatalogue : FamilyCatalogue
{
    /// <summary>What further coils are made for.</summary>
    private static readonly string[] CoilVolts = ["24 V", "120 V", "208-240 V", "480 V"];

    public override string Kind => "contactor";

    public override Shape Shape => Shape<ContactorSpec>.Of;

    public override int SeedOffset => 2;

    public override string HowDrawn => "Contactors are drawn by line (definite purpose, by NEMA size, by IEC category, power and control relays): sizes and pilot duties as NEMA ICS 2 and ICS 5 have them, amps by volts of which heavier ones keep less at 480 and 600 V, locked-rotor amps five or six times the full load, coils with the VA of their body, and for some bodies further coils with their numbers.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look> { ["poleCount"] = new(20), ["contactAction"] = new(20), ["coilVolts"] = new(12), ["hasInterlock"] = new(6), ["fullLoadAmps"] = new(8), ["resistiveAmps"] = new(3), ["ratedVolts"] = new(4) };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var contactor = (ContactorSpec)old.Part.Spec;
        var load = draw.Between(0.5, 0.95);
        var site = new ContactorSite
        {
            LoadVolts = contactor.RatedVolts?[0],
            LoadPhase = contactor.PoleCount is PoleCount.Three or PoleCount.Four ? Phases.Three : Phases.Single,
            ControlVolts = contactor.CoilVolts is { } volts ? ElectricPotential.FromVolts(Math.Round(volts[0].Last.Volts * (1 + place.VoltsOff), 1)) : null,
            ControlFrequency = contactor.CoilFrequency?[0],
            ControlCurrent = contactor.CoilCurrent,
            TransformerVa = contactor.CoilVa * 4,
            OtherCoilsVa = contactor.CoilVa,
            LinesSwitched = contactor.PoleCount switch { PoleCount.Two => 2, PoleCount.Three => 3, PoleCount.Four => 4, _ => 1 },
            ShuntFeedsHeat = false,
            AuxiliariesUsed = contactor.Auxiliaries,
            IsInterlocked = contactor.HasInterlock == true,
            Hazard = Hazard.None,
        };
        return Shape<ContactorSite>.Of.Write(contactor is { FullLoadAmps: { } full, LockedRotorAmps: { } locked }
            ? site with { Loads = new(ContactLoad.Motor), Motors = new(new MotorLoad(Math.Round(full[0].Amperes * load, 1), Math.Round(locked[0].Amperes * load, 1), 1)) }
            : site with { Loads = new(ContactLoad.Coil), CoilsVa = ElectricApparentPower.FromVoltamperes(Math.Round(30 * load)) });
    }

    public override string WhatLacks => "As many contactors lack one of: coil VA or frequency, locked-rotor or resistive amps, terminals, mount, auxiliary contacts, what may be added, whether contacts are open. Of those by size, horsepower alone is given; of those by IEC category, AC amps alone.";

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. ContactorLines.All.SelectMany(line => Of(line, numbers, draw))];
    }

    /// <summary>A maker never lists the same contactor twice.</summary>
    private static List<DemoPart> Of(ContactorLine line, PartNumbers numbers, Draw draw)
    {
        var makers = Maker.WhoMake(Programme.Contactors);
        var listed = new HashSet<(Maker, PoleCount, ContactAction, string, string)>();
        var parts = new List<DemoPart>();
        while (parts.Count < line.Share)
        {
            var spec = line.Draw(draw);
            var maker = draw.Pick(makers);
            if (listed.Add((maker, spec.PoleCount!.Value, spec.ContactAction!.Value, Rated(spec), TradeText.Write(spec.CoilVolts!)))) parts.Add(Offer(line, spec, maker, numbers, draw));
        }

        return parts;
    }

    private static DemoPart Offer(ContactorLine line, ContactorSpec spec, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var number = numbers.Next(maker);
        var poles = TradeText.Write(spec.PoleCount!.Value);
        return new(
            number,
            maker,
            $"{line.Title}, {poles}, {Rated(spec)}, coil {TradeText.Write(spec.CoilVolts!)}",
            discontinued,
            WithGaps(WithCoils(spec, number, draw), maker, draw),
            $"{line.Title} {poles} {Rated(spec)}",
            Stock.Price(line.Price((spec.ContinuousAmps ?? spec.ResistiveAmps![0]).Amperes), maker, draw),
            Stock.OnHand(discontinued, universal: spec.PoleCount is PoleCount.OneAndShunt or PoleCount.Two, draw));
    }

    /// <summary>The largest rating, as a counter names it.</summary>
    private static string Rated(ContactorSpec spec) =>
        spec.Size is { } size ? TradeText.Write(size)
        : spec.AcThreeAmps is { } motors ? $"AC-3 {TradeText.Write(motors)}"
        : spec.FullLoadAmps is { } full ? $"{(spec.ContactAction == ContactAction.NormallyOpen ? string.Empty : $"{TradeText.Write(spec.ContactAction!.Value)}, ")}{TradeText.Write(new Figures<ElectricCurrent>(full[0]))} full load"
        : $"{TradeText.Write(spec.ContactAction!.Value)}, {TradeText.Write(spec.PilotDuty!)}";

    /// <summary>Larger bodies take other coils; their numbers follow the body's.</summary>
    private static ContactorSpec WithCoils(ContactorSpec spec, string number, Draw draw)
    {
        var takesCoils = spec.Size is not null || (spec.ContinuousAmps?.Amperes >= 50 && draw.Chance(0.6));
        if (!takesCoils) return spec;
        var own = TradeText.Write(spec.CoilVolts!);
        return spec with
        {
            FurtherCoils = new(CoilVolts.Where(volts => volts != own).Select((volts, at) => new CoilOffer(
                TradeText.Read<Figures<Spread<ElectricPotential>>>(volts)[0], spec.CoilFrequency, CoilCurrent.Alternating, FormattableString.Invariant($"{number} C{at + 1}"), spec.CoilVa))),
        };
    }

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static ContactorSpec WithGaps(ContactorSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { CoilVa = null, FurtherCoils = WithoutVa(spec.FurtherCoils) }, 4),
        (spec with { LockedRotorAmps = null }, 3),
        (spec with { Terminals = null }, 3),
        (spec with { CoilFrequency = null }, 2),
        (spec with { ResistiveAmps = null, AcOneAmps = null }, 2),
        (spec with { TakesAuxiliaries = null, HasInterlock = null }, 3),
        (spec with { Auxiliaries = null }, 1),
        (spec with { Mounts = null }, 2),
        (spec with { Contacts = null }, 2));

    private static CoilOffers? WithoutVa(CoilOffers? coils) => coils is null ? null : new(coils.Select(coil => coil with { Va = null }));
}
