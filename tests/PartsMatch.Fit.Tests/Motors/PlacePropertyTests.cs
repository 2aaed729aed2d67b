using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>What holds for position, air, blade and room together, on few values, so that needs and parts often meet, just miss and leave gaps.</summary>
public sealed class PlacePropertyTests
{
    private static readonly Aspect[] Aspects = [new BearingsAndPosition(), new MotorCooling(), new Ambient(), new Insulation(), new AirDensity(), new Blade(), new BodyLength()];

    private static readonly (string Field, string[] Texts)[] SpecTexts =
    [
        ("power", ["1/3 hp", "1 hp"]),
        ("standard", ["NEMA", "IEC"]),
        ("serviceFactor", ["1", "1.15"]),
        ("bearings", ["sleeve", "ball"]),
        ("shaftPositions", ["horizontal", "horizontal, shaft down", "shaft up", "horizontal, shaft up, shaft down"]),
        ("enclosure", ["ODP", "TENV", "TEFC", "TEAO", "OAO"]),
        ("insulation", ["A", "B", "F", "H"]),
        ("ambientMost", ["30 °C", "40 °C", "60 °C"]),
        ("ambientLeast", ["0 °C", "-20 °C", "-30 °C"]),
        ("altitudeMost", ["800 m", "1000 m", "2000 m"]),
        ("rotation", ["CW shaft end", "CCW shaft end", "CW lead end", "CW"]),
        ("reversing", ["fixed", "by plug"]),
        ("bodyLength", ["5 in", "5.25 in", "6 in"]),
    ];

    private static readonly (string Field, string[] Texts)[] SiteTexts =
    [
        ("shaftPosition", ["horizontal", "shaft up", "shaft down"]),
        ("surroundings", ["dry", "rain"]),
        ("coolingAir", ["in the airstream", "still air"]),
        ("fanKind", ["propeller", "blower wheel"]),
        ("drive", ["direct", "belt"]),
        ("bladeStays", ["yes", "no"]),
        ("bladeHand", ["CW shaft end", "CCW shaft end", "CW"]),
        ("turnNeeded", ["CW shaft end", "CCW shaft end"]),
        ("airMost", ["20 °C", "40 °C", "60 °C"]),
        ("airLeast", ["5 °C", "-20 °C", "-25 °C"]),
        ("altitude", ["900 m", "1500 m", "2900 m"]),
        ("bodyRoom", ["5 in", "5.5 in"]),
    ];

    /// <summary>That the blade stays is taken until somebody says that it goes: the reading outranks it.</summary>
    [Fact]
    public void A_reading_neither_known_nor_deduced_never_turns_a_failed_aspect_into_a_passing_one()
    {
        var cases =
            from plate in Some(SpecTexts, 4)
            from site in Some(SiteTexts, 5)
            from part in Some(SpecTexts, 7)
            from side in Gen.Elements(Side.Plate, Side.Site)
            from entry in Gen.Elements((side == Side.Plate ? SpecTexts : SiteTexts).Where(entry => entry.Field != "bladeStays").ToArray())
            from text in Gen.Elements(entry.Texts)
            select (plate, site, part, side, added: $"{entry.Field}={text}", entry.Field);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(4000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            var before = Need(one.plate, one.site);
            var known = one.side == Side.Plate ? Shape<MotorSpec>.Of.Find(one.Field)!.Get((MotorSpec)before.Plate) : Shape<MotorSite>.Of.Find(one.Field)!.Get((MotorSite)before.Site);
            if (known is not null) return;
            var after = one.side == Side.Plate ? Need($"{one.plate}; {one.added}", one.site) : Need(one.plate, $"{one.site}; {one.added}");
            StayFailed(before, after, Part(one.part), Part(one.part), one);
        }));
    }

    [Fact]
    public void A_gap_in_the_part_filled_never_turns_a_failed_aspect_into_a_passing_one()
    {
        var cases = from plate in Some(SpecTexts, 5) from site in Some(SiteTexts, 6) from part in Some(SpecTexts, 5) from entry in Gen.Elements(SpecTexts) from text in Gen.Elements(entry.Texts) select (plate, site, part, entry.Field, text);
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(4000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            if (Shape<MotorSpec>.Of.Find(one.Field)!.Get((MotorSpec)Part(one.part)) is not null) return;
            var need = Need(one.plate, one.site);
            StayFailed(need, need, Part(one.part), Part($"{one.part}; {one.Field}={one.text}"), one);
        }));
    }

    [Fact]
    public void A_motor_takes_its_own_place_where_nothing_else_is_known_of_it() => Check.One(Config.QuickThrowOnFailure.WithMaxTest(1000), Prop.ForAll(
        Some(SpecTexts, 10).ToArbitrary(),
        motor =>
        {
            var need = Need(motor, "bladeStays=yes; drive=direct");
            foreach (var aspect in Aspects)
            {
                var finding = aspect.Judge(need, aspect.FacetOf(Part(motor)));
                finding.Verdict.ShouldBe(Verdict.Meets, $"{aspect.Name}: {finding.Sentence} {motor}");
            }
        }));

    private static void StayFailed(Need before, Need after, Spec part, Spec filled, object one)
    {
        foreach (var aspect in Aspects)
        {
            var was = aspect.Judge(before, aspect.FacetOf(part));
            if (was.Verdict == Verdict.Fails) aspect.Judge(after, aspect.FacetOf(filled)).Verdict.ShouldBe(Verdict.Fails, $"{aspect.Name}: {was.Sentence} {one}");
        }
    }

    private static Need Need(string plate, string site) => MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;

    private static Spec Part(string part) => MotorFamily.Motor.Deduce((MotorSpec)MotorFamily.Motor.ReadSpec(Named.Texts(part)).Spec).Spec;

    private static Gen<string> Some((string Field, string[] Texts)[] pool, int knownInTen) =>
        Gen.CollectToArray(pool, entry => Gen.Choose(1, 10).Zip(Gen.Elements(entry.Texts)).Select(pair => pair.Item1 <= knownInTen ? $"{entry.Field}={pair.Item2}" : string.Empty))
            .Select(all => string.Join("; ", all.Where(text => text.Length > 0)));
}
