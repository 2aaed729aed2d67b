using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Tolerances of bands (0.06 in), studs (1/16 in) and faces (0.5 mm): practice. Frames and faces: NEMA MG 1 4.2, 4.4.1, 4.4.4 (published).</summary>
[Trait("Source", "motor.mount")]
public sealed class MountTests : BodyAspectTests<Mount, MountFacet>
{
    [Theory]
    [InlineData("5.6 in", "Meets")]
    [InlineData("143.76 mm", "Meets")] // 142.24 + 1.52
    [InlineData("143.77 mm", "MeetsWithChanges fitBand")]
    [InlineData("140.72 mm", "Meets")]
    [InlineData("140.71 mm", "MeetsWithChanges fitBand")]
    [InlineData("6.5 in", "MeetsWithChanges fitBand")]
    public void A_band_holds_a_body_of_its_diameter(string body, string answer) =>
        Answer("", "mountThere=belly band; mountDiameter=5.6 in", $"mounts=belly band; bodyDiameter={body}").ShouldBe(answer);

    [Theory]
    [InlineData("4.5 in", "Meets")]
    [InlineData("115.89 mm", "Meets")] // 114.3 + 1.59
    [InlineData("115.9 mm", "MeetsWithChanges fitStuds")]
    public void Studs_go_into_holes_of_their_circle(string circle, string answer) =>
        Answer("mounts=studs; studCircle=4.5 in", "", $"mounts=studs; studCircle={circle}").ShouldBe(answer);

    // NEMA MG 1 4.4.4 (published): 48C has a bolt circle of 3.75 in and a pilot of 3 in, 56C 5.875 and 4.5 in.
    [Theory]
    [InlineData("3.75 in", "3 in", "Meets")]
    [InlineData("95.75 mm", "3 in", "Meets")]
    [InlineData("95.76 mm", "3 in", "Fails")]
    [InlineData("3.75 in", "76.7 mm", "Meets")]
    [InlineData("3.75 in", "76.71 mm", "Fails")]
    [InlineData("5.875 in", "4.5 in", "Fails")]
    public void A_face_must_match_in_bolt_circle_and_pilot(string circle, string pilot, string answer) =>
        Answer("mounts=tapped face; faceBoltCircle=3.75 in; facePilot=3 in", "", $"mounts=tapped face; faceBoltCircle={circle}; facePilot={pilot}").ShouldBe(answer);

    // NEMA MG 1 4.2 and 4.4.1 (published): 143T has the shaft height of 56 but other feet; Y and Z promise only the shaft height.
    [Theory]
    [InlineData("56", "56", "Meets")]
    [InlineData("56", "56C", "Meets")]
    [InlineData("56", "56H", "MeetsWithChanges compareMount")]
    [InlineData("56H", "56", "MeetsWithChanges drillBase")]
    [InlineData("56", "143T", "MeetsWithChanges drillBase")]
    [InlineData("143T", "145T", "MeetsWithChanges drillBase")]
    [InlineData("56", "48", "Fails")]
    [InlineData("48", "56", "Fails")]
    [InlineData("182T", "56", "Fails")]
    [InlineData("IEC 71", "IEC 71", "Meets")]
    [InlineData("IEC 90S", "IEC 90L", "MeetsWithChanges drillBase")]
    [InlineData("IEC 90S", "56", "Fails")] // 90 against 88.9 mm
    [InlineData("56", "56Y", "Unknown Part frame")]
    [InlineData("56Z", "56", "Unknown Plate frame")]
    [InlineData("56Y", "48", "Fails")]
    public void Feet_follow_the_frame(string old, string frame, string answer)
    {
        Answer($"mounts=rigid base; frame={old}", "", $"mounts=rigid base; frame={frame}").ShouldBe(answer);
        Answer($"mounts=resilient cradle; frame={old}", "", $"mounts=resilient cradle; frame={frame}").ShouldBe(answer);
    }

    // NEMA MG 1 4.2 (published): digits / 16, and first two digits / 4, in inches.
    [Theory]
    [InlineData("42", 2.625)]
    [InlineData("48", 3)]
    [InlineData("56", 3.5)]
    [InlineData("66", 4.125)]
    [InlineData("143T", 3.5)]
    [InlineData("184T", 4.5)]
    [InlineData("215T", 5.25)]
    public void A_frame_number_tells_the_shaft_height(string frame, double inches) =>
        FootPattern.Of(Named.Record<MotorSpec>($"frame={frame}").Frame)!.Value.ShaftHeight.ShouldBe(inches * 25.4, 0.006); // rounded to 0.01 mm

    [Theory]
    [InlineData("belly band", "studs", "MeetsWithChanges fitBand")]
    [InlineData("belly band", "ears", "MeetsWithChanges fitBand")]
    [InlineData("studs", "belly band", "MeetsWithChanges fitStuds")]
    [InlineData("belly band", "rigid base", "Fails")]
    [InlineData("belly band", "tapped face", "Fails")]
    [InlineData("tapped face", "belly band", "Fails")]
    [InlineData("tapped face", "flange", "Fails")]
    [InlineData("flange", "tapped face", "Fails")]
    [InlineData("ears", "three-point", "Fails")]
    public void Another_way_of_holding_needs_a_kit_or_fails(string there, string offered, string answer) =>
        Answer("", $"mountThere={there}", $"mounts={offered}").ShouldBe(answer);

    [Fact]
    public void A_rigid_base_and_a_cradle_of_one_frame_go_for_each_other_after_a_look()
    {
        Answer("mounts=rigid base; frame=56", "", "mounts=resilient cradle; frame=56").ShouldBe("MeetsWithChanges compareMount");
        Answer("mounts=rigid base; frame=56", "", "mounts=resilient cradle; frame=48").ShouldBe("Fails");
    }

    [Theory]
    [InlineData("mounts=belly band, studs; bodyDiameter=5 in; studCircle=4.5 in", "Meets")]
    [InlineData("mounts=belly band, studs; bodyDiameter=5.6 in; studCircle=4 in", "Meets")]
    [InlineData("mounts=belly band, studs; bodyDiameter=5 in; studCircle=4 in", "MeetsWithChanges fitBand")]
    [InlineData("mounts=belly band, studs; bodyDiameter=5 in", "MeetsWithChanges fitBand")]
    public void Of_several_ways_the_best_counts(string part, string answer) =>
        Answer("", "mountThere=belly band, studs; mountDiameter=5.6 in; bracketStudCircle=4.5 in", part).ShouldBe(answer);

    [Theory]
    [InlineData("", "", "mounts=belly band", "Unknown Plate mounts")]
    [InlineData("mounts=belly band", "", "", "Unknown Part mounts")]
    [InlineData("mounts=belly band", "", "mounts=belly band; bodyDiameter=5 in", "Unknown Plate bodyDiameter")]
    [InlineData("mounts=belly band; bodyDiameter=5 in", "", "mounts=belly band", "Unknown Part bodyDiameter")]
    [InlineData("mounts=studs", "", "mounts=studs; studCircle=4 in", "Unknown Plate studCircle")]
    [InlineData("mounts=studs; studCircle=4 in", "", "mounts=studs", "Unknown Part studCircle")]
    [InlineData("mounts=flange", "", "mounts=flange", "Unknown Plate faceBoltCircle")]
    [InlineData("mounts=flange; faceBoltCircle=115 mm", "", "mounts=flange", "Unknown Part faceBoltCircle")]
    [InlineData("mounts=flange; faceBoltCircle=115 mm", "", "mounts=flange; faceBoltCircle=115 mm", "Unknown Plate facePilot")]
    [InlineData("mounts=flange; faceBoltCircle=115 mm; facePilot=95 mm", "", "mounts=flange; faceBoltCircle=115 mm", "Unknown Part facePilot")]
    [InlineData("mounts=rigid base", "", "mounts=rigid base; frame=56", "Unknown Plate frame")]
    [InlineData("mounts=rigid base; frame=56", "", "mounts=rigid base", "Unknown Part frame")]
    public void What_decides_and_is_not_known_is_named(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("5.6 in", "Meets")]
    [InlineData("142.25 mm", "Fails")]
    public void A_body_larger_than_its_room_fails_however_it_is_held(string body, string answer) =>
        Answer("mounts=ears; bodyDiameter=5.6 in", "bodyDiameterRoom=5.6 in", $"mounts=ears; bodyDiameter={body}").ShouldBe(answer);

    [Fact]
    public void With_a_measured_room_the_body_must_be_known() =>
        Answer("mounts=studs; studCircle=4 in", "bodyDiameterRoom=5.6 in", "mounts=studs; studCircle=4 in").ShouldBe("Unknown Part bodyDiameter");

    [Fact]
    public void A_larger_body_without_a_measured_room_is_looked_after() =>
        Answer("mounts=belly band; bodyDiameter=5 in", "", "mounts=belly band; bodyDiameter=5.6 in").ShouldBe("MeetsWithChanges fitBand checkBodyRoom");

    [Theory]
    [InlineData("bodyDiameter=5 in", "Meets")]
    [InlineData("bodyDiameter=4 in", "MeetsWithChanges compareMount")]
    [InlineData("", "MeetsWithChanges compareMount")]
    public void Ears_are_held_against_the_place_unless_the_body_is_the_old_one(string body, string answer) =>
        Answer("mounts=ears; bodyDiameter=5 in", "", $"mounts=ears; {body}").ShouldBe(answer);

    [Fact]
    public void The_band_is_named_by_both_diameters() =>
        Judge("", "mountThere=belly band; mountDiameter=5 in", "mounts=belly band; bodyDiameter=5.6 in").Changes.ShouldHaveSingleItem().Text
            .ShouldBe("fit a belly band for a body of 5.6 in (142.24 mm); the one there takes 5 in (127 mm)");

    [Fact]
    public void A_failure_names_both_ways_of_holding() =>
        Judge("", "mountThere=tapped face", "mounts=belly band, studs").Sentence
            .ShouldBe("The place holds a motor by tapped face; this one by belly band or through-bolt studs, and no adapter joins them.");
}
