using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>What holds for turn, mount, shaft, enclosure and capacitor together.</summary>
public sealed class BodyPropertyTests
{
    private static readonly Aspect[] Aspects = [new Rotation(), new Mount(), new ShaftDiameter(), new ShaftLength(), new ShaftToHub(), new ShaftEnds(), new MotorEnclosure(), new RunCapacitor()];

    /// <summary>Few values, so that random needs and parts often meet, just miss and leave gaps.</summary>
    private static readonly (string Field, string[] Texts)[] SpecTexts =
    [
        ("type", ["shaded pole", "permanent split capacitor", "three-phase induction"]),
        ("runCapacitor", ["none", "5 µF 370 V", "5 µF 440 V", "5 µF", "7.5 µF 370 V"]),
        ("frame", ["48", "48Y", "56", "56H", "143T"]),
        ("mounts", ["belly band", "through-bolt studs", "belly band, through-bolt studs", "rigid base", "tapped face", "ears"]),
        ("bodyDiameter", ["5 in", "5.6 in", "6.5 in"]),
        ("studCircle", ["4 in", "4.5 in"]),
        ("faceBoltCircle", ["3.75 in", "5.875 in"]),
        ("facePilot", ["3 in", "4.5 in"]),
        ("shaftDiameter", ["8 mm", "5/16 in", "3/8 in", "1/2 in", "5/8 in"]),
        ("shaftLength", ["3 in", "4 in", "4.2 in", "6 in"]),
        ("shaftCanBeCut", ["yes", "no"]),
        ("shaftForm", ["round", "flat", "double flat", "keyway"]),
        ("flatLength", ["1 in", "3 in"]),
        ("shaftEnds", ["1", "2"]),
        ("rotation", ["CW shaft end", "CCW shaft end", "CW lead end", "CW"]),
        ("reversing", ["fixed", "by plug", "by leads", "by setting"]),
        ("enclosure", ["ODP", "TENV", "TEAO"]),
        ("ipCode", ["IP22", "IP44", "IP55"]),
        ("drainHoles", ["none", "both ends"]),
    ];

    private static readonly (string Field, string[] Texts)[] SiteTexts =
    [
        ("turnNeeded", ["CW shaft end", "CCW shaft end", "CW"]),
        ("fanKind", ["propeller", "blower wheel"]),
        ("hubBore", ["8 mm", "3/8 in", "1/2 in"]),
        ("hubHoldsOn", ["round", "flat", "double flat", "keyway"]),
        ("shaftLengthNeeded", ["3 in", "4 in"]),
        ("shaftRoom", ["4 in", "5 in"]),
        ("mountThere", ["belly band", "through-bolt studs", "rigid base", "tapped face", "ears"]),
        ("mountDiameter", ["5 in", "5.6 in"]),
        ("bracketStudCircle", ["4 in", "4.5 in"]),
        ("faceBoltCircleThere", ["3.75 in", "5.875 in"]),
        ("bodyDiameterRoom", ["5.3 in", "6 in"]),
        ("surroundings", ["dry", "rain", "wash-down", "condensing cold"]),
        ("shaftPosition", ["horizontal", "shaft up", "shaft down"]),
        ("capacitorThere", ["none", "5 µF 370 V", "45+5 µF 440 V"]),
    ];

    [Property(MaxTest = 1000)]
    public Property A_reading_neither_known_nor_deduced_never_turns_a_failed_aspect_into_a_passing_one() => Prop.ForAll(
        (from plate in Some(SpecTexts, 6) from site in Some(SiteTexts, 3) from part in Some(SpecTexts, 9) from added in One(SpecTexts) from there in One(SiteTexts) select (plate, site, part, added, there)).ToArbitrary(),
        one =>
        {
            var before = Findings(one.plate, one.site, one.part);
            var (old, place) = (Named.Record<MotorSpec>(one.plate), Deduced(one.plate, one.site));
            if (Shape<MotorSpec>.Of.Find(one.added.Name)!.Get(old) is null) Compare(before, Findings($"{one.plate}; {one.added.Name}={one.added.Text}", one.site, one.part), one);
            if (Shape<MotorSite>.Of.Find(one.there.Name)!.Get(place) is null) Compare(before, Findings(one.plate, $"{one.site}; {one.there.Name}={one.there.Text}", one.part), one);
        });

    [Property(MaxTest = 1000)]
    public Property A_gap_in_the_part_filled_never_turns_a_failed_aspect_into_a_passing_one() => Prop.ForAll(
        (from plate in Some(SpecTexts, 8) from site in Some(SiteTexts, 4) from part in Some(SpecTexts, 6) from added in One(SpecTexts) select (plate, site, part, added)).ToArbitrary(),
        one =>
        {
            // A type stands for fields that are not said (a shaded pole is fixed): what it stands for is deduced, not unknown.
            if (one.added.Name is "type" or "reversing" || Shape<MotorSpec>.Of.Find(one.added.Name)!.Get(Named.Record<MotorSpec>(one.part)) is not null) return;
            Compare(Findings(one.plate, one.site, one.part), Findings(one.plate, one.site, $"{one.part}; {one.added.Name}={one.added.Text}"), one);
        });

    [Property(MaxTest = 300)]
    public Property A_fully_specified_motor_meets_every_aspect_of_its_own_dry_place() => Prop.ForAll(
        Some(SpecTexts, 10).Where(part => Named.Record<MotorSpec>(part) is { Rotation.FacingShaft: not null, RunCapacitor: not { IsNone: false, Volts: null } }
            && !part.Contains("48Y", StringComparison.Ordinal)).ToArbitrary(),
        part =>
        {
            foreach (var (aspect, finding) in Aspects.Zip(Findings(part, "surroundings=dry", part))) finding.Verdict.ShouldBe(Verdict.Meets, $"{aspect.Name}: {finding.Sentence} {part}");
        });

    [Property(MaxTest = 300)]
    public Property Two_shafts_and_two_faces_fit_each_other_alike() => Prop.ForAll(
        Gen.Elements("8 mm", "5/16 in", "7.98 mm", "8.04 mm", "8.05 mm", "3/8 in").Two().ToArbitrary(),
        pair =>
        {
            Meets(new ShaftDiameter(), $"shaftDiameter={pair.Item1}", $"shaftDiameter={pair.Item2}").ShouldBe(Meets(new ShaftDiameter(), $"shaftDiameter={pair.Item2}", $"shaftDiameter={pair.Item1}"));
            string Face(string size) => $"mounts=flange; faceBoltCircle={size}; facePilot={size}";
            Meets(new Mount(), Face(pair.Item1), Face(pair.Item2)).ShouldBe(Meets(new Mount(), Face(pair.Item2), Face(pair.Item1)));
        });

    private static bool Meets(Aspect aspect, string plate, string part) => aspect.Judge(new Need(Named.Record<MotorSpec>(plate), Deduced(plate, "")), aspect.FacetOf(Named.Record<MotorSpec>(part))).Verdict == Verdict.Meets;

    private static MotorSite Deduced(string plate, string site) => BodyDeductions.DeduceSite(Named.Record<MotorSpec>(plate), Named.Record<MotorSite>(site)).Site;

    private static List<Finding> Findings(string plate, string site, string part)
    {
        var need = new Need(Named.Record<MotorSpec>(plate), Deduced(plate, site));
        return [.. Aspects.Select(aspect => aspect.Judge(need, aspect.FacetOf(Named.Record<MotorSpec>(part))))];
    }

    private static void Compare(List<Finding> before, List<Finding> after, object one)
    {
        foreach (var ((aspect, was), now) in Aspects.Zip(before).Zip(after))
        {
            if (was.Verdict == Verdict.Fails) now.Verdict.ShouldNotBeOneOf([Verdict.Meets, Verdict.MeetsWithChanges], $"{aspect.Name}: {was.Sentence} {now.Sentence} {one}");
        }
    }

    private static Gen<string> Some((string Field, string[] Texts)[] pool, int knownInTen) =>
        Gen.CollectToArray(pool, entry => Gen.Choose(1, 10).Zip(Gen.Elements(entry.Texts)).Select(pair => pair.Item1 <= knownInTen ? $"{entry.Field}={pair.Item2}" : string.Empty))
            .Select(all => string.Join("; ", all.Where(text => text.Length > 0)));

    private static Gen<NamedText> One((string Field, string[] Texts)[] pool) =>
        from entry in Gen.Elements(pool) from text in Gen.Elements(entry.Texts) select new NamedText(entry.Field, text);
}
