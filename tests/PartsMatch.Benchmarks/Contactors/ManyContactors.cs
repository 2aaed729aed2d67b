using PartsMatch.Benchmarks.Parts;
using PartsMatch.Demo.Contactors;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Benchmarks.Contactors;

/// <summary>Contactors and relays, as many as are asked for: variants of some thousands that are drawn as the invented catalogue draws them.</summary>
internal sealed class ManyContactors : ManyParts
{
    private const int DrawnOfLine = 600;

    /// <summary>Of so many entries one lacks the field: about as often as in the seed data.</summary>
    private static readonly (double Share, Func<ContactorSpec, ContactorSpec> Leave)[] Gaps =
    [
        (0.04, spec => spec with { CoilVa = null }),
        (0.03, spec => spec with { LockedRotorAmps = null }),
        (0.03, spec => spec with { Terminals = null }),
        (0.02, spec => spec with { CoilFrequency = null }),
        (0.02, spec => spec with { ResistiveAmps = null, AcOneAmps = null }),
        (0.03, spec => spec with { TakesAuxiliaries = null, HasInterlock = null }),
        (0.02, spec => spec with { Mounts = null }),
        (0.02, spec => spec with { Contacts = null }),
    ];

    private readonly ContactorSpec[] pool;

    public ManyContactors(int count, int seed)
        : base(ContactorFamily.Contactor, count, seed)
    {
        var draw = new Draw(seed);
        pool = [.. ContactorLines.All.SelectMany(line => Enumerable.Range(0, DrawnOfLine).Select(_ => line.Draw(draw)))];
    }

    public override IReadOnlyList<Need> Needs(int many, int from)
    {
        var random = new Random(from);
        var needs = new List<Need>();
        while (needs.Count < many)
        {
            var old = (ContactorSpec)Drawn(random);
            var need = Family.ReadNeed(new(null, Family.SpecShape.Write(old), Family.SiteShape.Write(SiteOf(old, random)))).Need;
            if (IsKnown(Family, need, old) && !needs.Contains(need)) needs.Add(need);
        }

        return needs;
    }

    /// <summary>What differs between two makers' contactors of one kind: their amps, their coil's VA and ohms.</summary>
    protected override Spec Drawn(Random random)
    {
        var spec = pool[random.Next(pool.Length)];
        var factor = 0.9 + (0.02 * random.Next(11));
        return spec with
        {
            FullLoadAmps = Times(spec.FullLoadAmps, factor),
            LockedRotorAmps = Times(spec.LockedRotorAmps, factor),
            ResistiveAmps = Times(spec.ResistiveAmps, factor + 0.02),
            CoilVa = spec.CoilVa * (0.8 + (0.05 * random.Next(9))),
        };
    }

    protected override Spec WithGaps(Spec whole, Random random)
    {
        var spec = (ContactorSpec)whole;
        foreach (var (share, leave) in Gaps)
        {
            if (random.NextDouble() < share) spec = leave(spec);
        }

        return spec;
    }

    /// <summary>A place that the contactor suits: motors on it, or where it has no such rating, heaters, or coils.</summary>
    private static ContactorSite SiteOf(ContactorSpec old, Random random)
    {
        var load = 0.5 + (0.5 * random.NextDouble());
        var row = random.Next(old.RatedVolts?.Count ?? 1);
        var site = new ContactorSite
        {
            LoadVolts = old.RatedVolts?[row],
            LoadPhase = old.PoleCount is PoleCount.Three or PoleCount.Four ? Phases.Three : Phases.Single,
            ControlVolts = old.CoilVolts![0].First,
            ControlFrequency = old.CoilFrequency![random.Next(old.CoilFrequency.Count)],
            TransformerVa = old.CoilVa * 4,
            OtherCoilsVa = old.CoilVa,
            LinesSwitched = old.PoleCount switch { PoleCount.Two => 2, PoleCount.Three => 3, PoleCount.Four => 4, _ => 1 },
            ShuntFeedsHeat = false,
            AuxiliariesUsed = old.Auxiliaries,
            Hazard = Hazard.None,
        };
        if (old is { FullLoadAmps: { } full, LockedRotorAmps: { } locked })
        {
            return site with { Loads = new(ContactLoad.Motor), Motors = new(new MotorLoad(Math.Round(At(full, row) * load, 1), Math.Round(At(locked, row) * load, 1), 1)) };
        }

        return old.ResistiveAmps is { } resistive && random.Next(2) == 0
            ? site with { Loads = new(ContactLoad.Heater), HeaterAmps = ElectricCurrent.FromAmperes(Math.Round(At(resistive, row) * load, 1)) }
            : site with { Loads = new(ContactLoad.Coil), CoilsVa = ElectricApparentPower.FromVoltamperes(Math.Round(40 * load)) };
    }

    private static double At(Figures<ElectricCurrent> amps, int row) => amps[Math.Min(row, amps.Count - 1)].Amperes;

    private static Figures<ElectricCurrent>? Times(Figures<ElectricCurrent>? amps, double factor) =>
        amps is null ? null : new(amps.Select(one => ElectricCurrent.FromAmperes(Math.Round(one.Amperes * factor, one.Amperes < 20 ? 1 : 0))));
}
