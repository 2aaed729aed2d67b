using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>What holds for unbalance, currents, protection, speed control and hazard together, on few values, so that needs and parts often meet, just miss and leave gaps.</summary>
public sealed class CircuitPropertyTests
{
    private static readonly Aspect[] Aspects = [new VoltageUnbalance(), new RunningCurrent(), new StartingCurrent(), new BranchFuse(), new OverloadProtection(), new ControlledSpeed(), new HazardousPlace()];

    private static readonly (string Field, string[] Texts)[] SpecTexts =
    [
        ("type", ["shaded pole", "PSC", "split phase", "three-phase induction", "ECM"]),
        ("power", ["1/3 hp", "3/4-1/3 hp"]),
        ("speed", ["1725 rpm", "1725/1140 rpm", "1425/1725 rpm"]),
        ("voltage", ["115 V", "230 V", "115/230 V", "208-230 V", "230/400 V"]),
        ("phase", ["1", "3"]),
        ("frequency", ["50 Hz", "60 Hz", "50/60 Hz"]),
        ("fullLoadAmps", ["2 A", "4 A", "4/2 A", "5/4-3 A"]),
        ("lockedRotorAmps", ["8 A", "16/8 A"]),
        ("codeLetter", ["G", "L"]),
        ("protection", ["none", "automatic", "manual", "thermal", "impedance"]),
        ("speedControls", ["none", "phase cut", "drive", "PWM signal"]),
        ("speedFeedback", ["yes", "no"]),
        ("hazards", ["A2L", "A2L, A3", "ordinary places", "class I division 1"]),
        ("enclosure", ["ODP", "TENV"]),
    ];

    private static readonly (string Field, string[] Texts)[] SiteTexts =
    [
        ("volts", ["115 V", "230 V", "400/400/400 V", "208/205/230 V"]),
        ("neutralVolts", ["115 V", "230 V"]),
        ("supplyArrangement", ["single-phase", "wye", "delta"]),
        ("supplyFrequency", ["50 Hz", "60 Hz"]),
        ("contactFullLoadAmps", ["2 A", "3 A", "10 A"]),
        ("contactLockedRotorAmps", ["8 A", "20 A"]),
        ("otherFullLoadAmps", ["1 A", "7 A"]),
        ("otherLockedRotorAmps", ["2 A", "12 A"]),
        ("cyclingSwitchFullLoadAmps", ["2 A", "4 A"]),
        ("cyclingSwitchLockedRotorAmps", ["7 A", "16 A"]),
        ("fuse", ["3 A", "15 A", "30 A"]),
        ("overloadSetting", ["2 A", "2.3 A"]),
        ("overloadInCircuit", ["yes", "no"]),
        ("equipmentFanAmps", ["2 A", "4 A"]),
        ("speedControl", ["none", "phase cut", "drive", "PWM signal"]),
        ("hazard", ["none", "A2L", "A3", "class I division 2"]),
    ];

    [Fact]
    public void A_reading_neither_known_nor_deduced_never_turns_a_failed_aspect_into_a_passing_one()
    {
        var cases =
            from plate in Some(SpecTexts, 4)
            from site in Some(SiteTexts, 4)
            from part in Some(SpecTexts, 8)
            from side in Gen.Elements(Side.Plate, Side.Site)
            from entry in Gen.Elements(side == Side.Plate ? SpecTexts : SiteTexts)
            from text in Gen.Elements(entry.Texts)
            select (plate, site, part, side, added: $"{entry.Field}={text}", entry.Field);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(4000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            var before = Need(one.plate, one.site);
            var known = one.side == Side.Plate ? Shape<MotorSpec>.Of.Find(one.Field)!.Get((MotorSpec)before.Plate) : Shape<MotorSite>.Of.Find(one.Field)!.Get((MotorSite)before.Site);
            if (known is not null) return;
            var after = one.side == Side.Plate ? Need($"{one.plate}; {one.added}", one.site) : Need(one.plate, $"{one.site}; {one.added}");
            var part = Part(one.part);
            foreach (var aspect in Aspects)
            {
                var was = aspect.Judge(before, aspect.FacetOf(part));
                if (was.Verdict == Verdict.Fails) aspect.Judge(after, aspect.FacetOf(part)).Verdict.ShouldNotBeOneOf([Verdict.Meets, Verdict.MeetsWithChanges], $"{aspect.Name}: {was.Sentence} {one}");
            }
        }));
    }

    [Fact]
    public void A_motor_takes_its_own_place_on_its_own_circuit() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(2000), Prop.ForAll(
        Some(SpecTexts, 10).Where(part => !part.Contains("type=split phase", StringComparison.Ordinal) && Ratings.Of((MotorSpec)Part(part)).Unpaired.Count == 0).ToArbitrary(),
        motor =>
        {
            var need = Need(motor, "overloadInCircuit=yes; volts=230/230/230 V");
            foreach (var aspect in Aspects)
            {
                var finding = aspect.Judge(need, aspect.FacetOf(Part(motor)));
                finding.Verdict.ShouldBe(Verdict.Meets, $"{aspect.Name}: {finding.Sentence} {motor}");
            }
        }));

    private static Need Need(string plate, string site) => MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;

    private static Spec Part(string part) => MotorFamily.Motor.Deduce((MotorSpec)MotorFamily.Motor.ReadSpec(Named.Texts(part)).Spec).Spec;

    private static Gen<string> Some((string Field, string[] Texts)[] pool, int knownInTen) =>
        Gen.CollectToArray(pool, entry => Gen.Choose(1, 10).Zip(Gen.Elements(entry.Texts)).Select(pair => pair.Item1 <= knownInTen ? $"{entry.Field}={pair.Item2}" : string.Empty))
            .Select(all => string.Join("; ", all.Where(text => text.Length > 0)));
}
