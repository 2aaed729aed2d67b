using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Notes;
using PartsMatch.Fit.Valves;
using PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.CondensingPressureValves;

/// <summary>The same arrangement, else it fails: practice.</summary>
[Trait("Source", "condensingPressureValve.sameArrangement")]
public sealed class SameArrangementTests : HeadAspectTests<SameArrangement, ArrangementFacet>
{
    [Theory]
    [InlineData("arrangement=three-way", "", "arrangement=three-way", "Meets")]
    [InlineData("arrangement=three-way", "", "arrangement=inlet regulator", "Fails")]
    [InlineData("", "", "arrangement=three-way", "Unknown Site needsArrangement")]
    [InlineData("arrangement=three-way", "", "", "Unknown Part arrangement")]
    public void The_pipes_are_laid_for_one(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>Listed meets, unlisted is unknown, a class that burns more readily (ASHRAE 34: 1, 2L, 2, 3) fails: practice.</summary>
[Trait("Source", "condensingPressureValve.headRefrigerant")]
public sealed class HeadRefrigerantTests : HeadAspectTests<HeadRefrigerant, HeadRefrigerantFacet>
{
    [Theory]
    [InlineData("refrigerant=R-404A", "refrigerants=R-404A, R-507A", "Meets")]
    [InlineData("refrigerant=R-410A", "refrigerants=R-404A, R-507A", "Unknown Part refrigerants")]
    [InlineData("refrigerant=R-290", "refrigerants=R-22, R-404A", "Fails")]
    [InlineData("refrigerant=R-454C", "refrigerants=R-22, R-404A", "Fails")]
    [InlineData("refrigerant=R-290", "refrigerants=R-404A, R-32", "Fails")] // A2L burns less readily than A3
    [InlineData("refrigerant=R-454C", "refrigerants=R-404A, R-32", "Unknown Part refrigerants")] // one of its class is listed
    [InlineData("refrigerant=R-600a", "refrigerants=R-290", "Unknown Part refrigerants")]
    [InlineData("refrigerant=R-404A", "refrigerants=R-290", "Unknown Part refrigerants")] // one that burns less
    [InlineData("refrigerant=R-717", "refrigerants=R-22", "Fails")]
    [InlineData("refrigerant=R-717", "refrigerants=R-717; joint=butt weld", "Meets")]
    [InlineData("refrigerant=R-717", "refrigerants=R-717; joint=ODF", "Fails")] // ammonia attacks copper
    [InlineData("refrigerant=R-717", "refrigerants=R-717; joint=SAE", "Fails")]
    [InlineData("refrigerant=R-717", "refrigerants=R-717", "Unknown Part joint")]
    [InlineData("", "refrigerants=R-404A", "Unknown Site refrigerant")]
    [InlineData("refrigerant=R-404A", "", "Unknown Part refrigerants")]
    public void A_valve_is_used_with_what_it_lists(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    /// <summary>As for solenoid valves: practice.</summary>
    [Theory]
    [InlineData("", "refrigerants=R-22, R-407C, R-134a", "Meets")]
    [InlineData("", "refrigerants=R-22", "Unknown Site refrigerant")]
    [InlineData("", "refrigerants=R-404A, R-507A", "Unknown Part refrigerants")]
    [InlineData("refrigerant=R-404A", "refrigerants=R-404A, R-507A", "Meets")] // what was read outranks the list
    public void Where_the_refrigerant_was_not_read_the_old_valves_list_stands_for_it(string site, string part, string answer) => Answer("refrigerants=R-22, R-407C", site, part).ShouldBe(answer);
}

/// <summary>Within 10 psi; lower only while the expansion valves still get their drop: practice.</summary>
[Trait("Source", "condensingPressureValve.headSetting")]
public sealed class HeadSettingTests : HeadAspectTests<HeadSetting, SettingFacet>
{
    [Theory]
    [InlineData("settingNeeded=180 psi", "setting=190 psi", "Meets")]
    [InlineData("settingNeeded=180 psi", "setting=170 psi", "Meets")]
    [InlineData("settingNeeded=180 psi", "setting=191 psi; isAdjustable=no", "MeetsWithChanges checkHead")]
    [InlineData("settingNeeded=180 psi", "setting=169 psi; isAdjustable=no", "Unknown Site leastHead")]
    [InlineData("settingNeeded=180 psi; leastHead=160 psi", "setting=160 psi; isAdjustable=no", "MeetsWithChanges checkHead")]
    [InlineData("settingNeeded=180 psi; leastHead=160 psi", "arrangement=three-way; setting=159 psi; isAdjustable=no", "Fails")]
    [InlineData("settingNeeded=180 psi; leastHead=170 psi", "setting=170 psi", "Meets")]
    [InlineData("settingNeeded=180 psi; leastHead=171 psi", "arrangement=three-way; setting=170 psi; isAdjustable=no", "Fails")] // within 10 psi, and yet the expansion valves starve
    [InlineData("settingNeeded=180 psi; leastHead=171 psi", "setting=170 psi; settingLeast=100 psi; settingMost=225 psi", "MeetsWithChanges setPressure")]
    [InlineData("settingNeeded=180 psi; leastHead=180 psi", "setting=180 psi", "Meets")]
    [InlineData("settingNeeded=180 psi; leastHead=181 psi", "arrangement=three-way; setting=180 psi; isAdjustable=no", "MeetsWithChanges checkHead")] // what is needed is said to be too little
    [InlineData("settingNeeded=180 psi; leastHead=185 psi", "setting=185 psi", "Meets")]
    [InlineData("settingNeeded=180 psi; leastHead=185 psi", "arrangement=three-way; setting=179 psi; isAdjustable=no", "Fails")]
    [InlineData("settingNeeded=180 psi", "setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "MeetsWithChanges setPressure")]
    [InlineData("settingNeeded=181 psi", "setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "MeetsWithChanges setPressure")] // 180 psi are near enough
    [InlineData("settingNeeded=191 psi", "setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "Unknown Site leastHead")]
    [InlineData("settingNeeded=191 psi; leastHead=180 psi", "setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "MeetsWithChanges setPressure checkHead")]
    [InlineData("settingNeeded=191 psi; leastHead=181 psi", "arrangement=three-way; setting=100 psi; settingLeast=100 psi; settingMost=180 psi", "Fails")]
    [InlineData("settingNeeded=180 psi; leastHead=150 psi", "setting=100 psi; settingLeast=100 psi; settingMost=175 psi", "MeetsWithChanges setPressure")]
    [InlineData("settingNeeded=180 psi; leastHead=181 psi", "arrangement=three-way; setting=100 psi; settingLeast=100 psi; settingMost=225 psi", "MeetsWithChanges setPressure")] // no lower than the expansion valves need
    [InlineData("settingNeeded=180 psi", "settingLeast=200 psi; settingMost=300 psi", "MeetsWithChanges setPressure checkHead")]
    [InlineData("settingNeeded=180 psi", "setting=100 psi; settingLeast=225 psi; settingMost=100 psi", "Unknown Site leastHead")] // a span misread says nothing
    [InlineData("", "setting=180 psi", "Unknown Site settingNeeded")]
    [InlineData("settingNeeded=180 psi", "", "Unknown Part setting")]
    public void It_holds_the_pressure_that_is_needed(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Fact]
    public void One_that_can_be_set_is_set_as_near_as_it_comes_to_what_is_needed()
    {
        var found = Judge("", "settingNeeded=180 psi; leastHead=150 psi", "setting=100 psi; settingLeast=100 psi; settingMost=175 psi");
        found.Changes.ShouldHaveSingleItem().Text.ShouldBe("set it to 175 psi (1207 kPa)");
        found.Sentence.ShouldBe("It can be set to hold 175 psi (1207 kPa); 180 psi (1241 kPa) are needed, within 10 psi (69 kPa). It is set from 100 psi (690 kPa) to 175 psi (1207 kPa).");
    }

    /// <summary>The two ends of a fixed one's range are its only setting.</summary>
    [Theory]
    [InlineData("settingLeast=180 psi; settingMost=180 psi", "Meets", "It holds 180 psi (1241 kPa); 180 psi (1241 kPa) are needed, within 10 psi (69 kPa).")]
    [InlineData("settingLeast=200 psi; settingMost=200 psi", "MeetsWithChanges checkHead", "It holds 200 psi (1379 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed.")]
    [InlineData("setting=200 psi; settingLeast=200 psi; settingMost=200 psi", "MeetsWithChanges checkHead", "It holds 200 psi (1379 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed.")]
    [InlineData("setting=200 psi; settingLeast=185 psi; settingMost=185 psi", "MeetsWithChanges checkHead", "It holds 200 psi (1379 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed.")] // whichever is misread, it cannot be set
    public void A_fixed_one_is_never_told_to_be_set(string part, string answer, string sentence)
    {
        const string There = "needsArrangement=three-way; settingNeeded=180 psi";
        Answer("", There, $"arrangement=three-way; {part}").ShouldBe(answer);
        Judge("", There, $"arrangement=three-way; {part}").Sentence.ShouldBe(sentence);
    }

    /// <summary>One that is marked to be set, and of which no range is given, may come to what is needed, and one of which neither is given may be such a one; a fixed one is what it is. One that does as it comes, or is a check then, comes to no worse by being set; of one that is too low the highest setting decides.</summary>
    [Theory]
    [InlineData("setting=180 psi; isAdjustable=yes", "Meets")]
    [InlineData("setting=100 psi; isAdjustable=yes", "Unknown Part settingMost")]
    [InlineData("setting=100 psi; isAdjustable=yes; settingLeast=100 psi", "Unknown Part settingMost")]
    [InlineData("setting=100 psi; isAdjustable=yes; settingMost=120 psi", "Fails")] // wherever its range begins
    [InlineData("setting=100 psi; isAdjustable=yes; settingMost=159 psi", "Fails")]
    [InlineData("setting=100 psi; isAdjustable=yes; settingMost=160 psi", "MeetsWithChanges setPressure checkHead")]
    [InlineData("setting=100 psi; isAdjustable=yes; settingMost=225 psi", "MeetsWithChanges setPressure")]
    [InlineData("isAdjustable=yes; settingMost=120 psi", "Fails")]
    [InlineData("isAdjustable=yes; settingMost=225 psi", "Unknown Part setting")] // it may begin above what is needed
    [InlineData("isAdjustable=yes; settingLeast=220 psi", "MeetsWithChanges setPressure checkHead")]
    [InlineData("setting=220 psi; isAdjustable=yes", "MeetsWithChanges checkHead")]
    [InlineData("setting=220 psi; isAdjustable=yes; settingLeast=100 psi", "MeetsWithChanges setPressure")]
    [InlineData("setting=220 psi; isAdjustable=yes; settingMost=225 psi", "MeetsWithChanges checkHead")]
    [InlineData("setting=100 psi; isAdjustable=yes; settingLeast=100 psi; settingMost=225 psi", "MeetsWithChanges setPressure")]
    [InlineData("setting=180 psi", "Meets")]
    [InlineData("setting=100 psi", "Unknown Part isAdjustable")]
    [InlineData("setting=159 psi", "Unknown Part isAdjustable")]
    [InlineData("setting=160 psi", "MeetsWithChanges checkHead")]
    [InlineData("setting=220 psi", "MeetsWithChanges checkHead")]
    [InlineData("setting=100 psi; settingLeast=100 psi", "Unknown Part settingMost")] // an end of a range is that of one that can be set
    [InlineData("setting=220 psi; isAdjustable=no", "MeetsWithChanges checkHead")]
    [InlineData("setting=159 psi; isAdjustable=no", "Fails")]
    public void Whether_it_can_be_set_is_taken_as_it_is_marked(string part, string answer) =>
        Answer("", "needsArrangement=three-way; settingNeeded=180 psi; leastHead=160 psi", $"arrangement=three-way; {part}").ShouldBe(answer);

    /// <summary>What is needed least of all is named where that is what it lacks.</summary>
    [Theory]
    [InlineData("", "setting=100 psi", "It comes set to 100 psi (690 kPa); 180 psi (1241 kPa) are needed. Whether it can be set anew is not given.")]
    [InlineData("leastHead=171 psi", "setting=170 psi", "It comes set to 170 psi (1172 kPa); 180 psi (1241 kPa) are needed, and 171 psi (1179 kPa) by the expansion valves. Whether it can be set anew is not given.")]
    [InlineData("leastHead=160 psi", "setting=100 psi; isAdjustable=yes", "It comes set to 100 psi (690 kPa); 180 psi (1241 kPa) are needed, and 160 psi (1103 kPa) by the expansion valves. It can be set anew, and how high is not given.")]
    [InlineData("leastHead=160 psi", "setting=220 psi", "It holds 220 psi (1517 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed. Whether it can be set anew is not given.")]
    [InlineData("leastHead=160 psi", "setting=220 psi; isAdjustable=yes", "It holds 220 psi (1517 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed. How low it can be set is not given.")]
    [InlineData("leastHead=160 psi", "setting=225 psi; settingMost=300 psi", "It holds 225 psi (1551 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed. How low it can be set is not given.")]
    [InlineData("leastHead=160 psi", "setting=165 psi; isAdjustable=yes", "It holds 165 psi (1138 kPa), below the 180 psi (1241 kPa) needed; the expansion valves bear 160 psi (1103 kPa). How high it can be set is not given.")]
    [InlineData("leastHead=185 psi", "setting=180 psi; isAdjustable=yes", "It holds 180 psi (1241 kPa), no less than the 180 psi (1241 kPa) needed; the expansion valves are said to need 185 psi (1276 kPa) to pass their load. How high it can be set is not given.")]
    [InlineData("leastHead=185 psi", "setting=180 psi", "It holds 180 psi (1241 kPa), no less than the 180 psi (1241 kPa) needed; the expansion valves are said to need 185 psi (1276 kPa) to pass their load. Whether it can be set anew is not given.")]
    [InlineData("leastHead=160 psi", "setting=100 psi; settingMost=120 psi", "It can be set to hold 120 psi (827 kPa); the expansion valves need 160 psi (1103 kPa) to pass their load. It is set up to 120 psi (827 kPa).")]
    [InlineData("leastHead=160 psi", "settingLeast=220 psi", "It can be set to hold 220 psi (1517 kPa), over 10 psi (69 kPa) above the 180 psi (1241 kPa) needed. It is set from 220 psi (1517 kPa) upwards.")]
    public void Whether_and_how_far_it_can_be_set_is_said(string site, string part, string sentence) =>
        Judge("", $"needsArrangement=three-way; settingNeeded=180 psi; {site}", $"arrangement=three-way; {part}").Sentence.ShouldBe(sentence);

    [Theory]
    [InlineData("no", "100 psi", "225 psi", true)]
    [InlineData("no", "180 psi", "180 psi", false)]
    [InlineData("yes", "180 psi", "180 psi", true)]
    [InlineData("yes", "100 psi", "225 psi", false)]
    public void A_range_that_goes_against_its_mark_is_a_contradiction(string isAdjustable, string least, string most, bool isSaid) =>
        Families.Find("condensingPressureValve")!.ReadNeed(new(null, [new("isAdjustable", isAdjustable), new("settingLeast", least), new("settingMost", most)], [])).Contradictions.Any(one => one.Fields.Contains("isAdjustable")).ShouldBe(isSaid);

    [Fact]
    public void An_old_fixed_one_tells_what_is_needed_by_its_range_and_one_set_outside_its_range_is_misread()
    {
        Answer("arrangement=three-way; settingLeast=180 psi; settingMost=180 psi", "", "arrangement=three-way; setting=180 psi").ShouldBe("Meets");
        var family = Families.Find("condensingPressureValve")!;
        family.ReadNeed(new(null, [new("setting", "180 psi"), new("settingLeast", "185 psi"), new("settingMost", "225 psi")], [])).Contradictions.Single().Fields.ShouldBe(["setting", "settingLeast", "settingMost"]);
        family.ReadNeed(new(null, [new("setting", "12.41 bar"), new("settingLeast", "180 psi"), new("settingMost", "180 psi")], [])).Contradictions.ShouldBeEmpty("rounded to 0.01 bar");
    }

    /// <summary>It is not set to starve them, where its range allows more.</summary>
    [Theory]
    [InlineData("settingLeast=150 psi; settingMost=300 psi", "set it to 155 psi (1069 kPa)")]
    [InlineData("settingLeast=160 psi; settingMost=300 psi", "set it to 160 psi (1103 kPa)")]
    [InlineData("settingLeast=100 psi; settingMost=150 psi", "set it to 150 psi (1034 kPa)")]
    public void One_that_can_be_set_is_set_no_lower_than_the_expansion_valves_need(string span, string change) =>
        Judge("", "needsArrangement=three-way; settingNeeded=140 psi; leastHead=155 psi", $"arrangement=three-way; setting=180 psi; {span}").Changes.Select(one => one.Text).ShouldContain(change);

    [Fact]
    public void A_head_to_be_held_that_the_expansion_valves_do_not_bear_is_a_contradiction()
    {
        var family = Families.Find("condensingPressureValve")!;
        family.ReadNeed(new(null, [], [new("needsArrangement", "three-way"), new("settingNeeded", "180 psi"), new("leastHead", "181 psi")])).Contradictions.Single().SiteFields.ShouldBe(["settingNeeded", "leastHead"]);
        family.ReadNeed(new(null, [new("arrangement", "inlet regulator")], [new("settingNeeded", "180 psi"), new("leastHead", "181 psi")])).Contradictions.Single().SiteFields.ShouldBe(["settingNeeded", "leastHead"]);
        family.ReadNeed(new(null, [], [new("needsArrangement", "three-way"), new("settingNeeded", "180 psi"), new("leastHead", "180 psi")])).Contradictions.ShouldBeEmpty();
        family.ReadNeed(new(null, [], [new("settingNeeded", "20 psi"), new("leastHead", "150 psi")])).Contradictions.ShouldBeEmpty("they may be a check valve's difference");
        family.ReadNeed(new(null, [], [new("needsArrangement", "differential check"), new("settingNeeded", "20 psi"), new("leastHead", "150 psi")])).Contradictions.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("needsArrangement=three-way; settingNeeded=180 psi", "arrangement=differential check; setting=20 psi", "It opens at a difference of pressures, and a valve is needed that holds a head: neither does what the other does.")]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi", "arrangement=three-way; setting=180 psi", "It holds a head, and a valve is needed that opens at a difference of pressures: neither does what the other does.")]
    public void Which_of_two_holds_a_head_is_said(string site, string part, string sentence) => Judge("", site, part).Sentence.ShouldBe(sentence);

    /// <summary>A differential check valve is set to a difference: no head is held against it.</summary>
    [Theory]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi; leastHead=150 psi", "arrangement=differential check; setting=20 psi", "Meets")]
    [InlineData("needsArrangement=differential check; settingNeeded=35 psi; leastHead=150 psi", "arrangement=differential check; setting=20 psi; isAdjustable=no", "MeetsWithChanges checkHead")]
    [InlineData("needsArrangement=differential check; settingNeeded=35 psi", "arrangement=differential check; setting=20 psi; isAdjustable=no", "MeetsWithChanges checkHead")]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi", "arrangement=differential check; setting=35 psi; isAdjustable=no", "MeetsWithChanges checkHead")]
    [InlineData("needsArrangement=differential check; settingNeeded=20 psi", "setting=20 psi", "Unknown Part arrangement")]
    [InlineData("settingNeeded=20 psi", "arrangement=differential check; setting=20 psi", "Unknown Site needsArrangement")]
    [InlineData("settingNeeded=180 psi; leastHead=160 psi", "setting=159 psi; isAdjustable=no", "Unknown Site needsArrangement")] // neither says what it is
    [InlineData("settingNeeded=30 psi; leastHead=150 psi", "setting=30 psi", "Unknown Site needsArrangement")] // of differences it meets
    [InlineData("settingNeeded=30 psi; leastHead=150 psi", "setting=30 psi; isAdjustable=yes", "Unknown Site needsArrangement")]
    [InlineData("settingNeeded=180 psi; leastHead=160 psi", "setting=100 psi", "Unknown Site needsArrangement")] // of heads whether it can be set decides
    [InlineData("needsArrangement=inlet regulator; settingNeeded=180 psi; leastHead=160 psi", "setting=159 psi; isAdjustable=no", "Fails")]
    [InlineData("needsArrangement=three-way; settingNeeded=20 psi", "arrangement=differential check; setting=20 psi", "Fails")]
    public void A_difference_is_not_a_head(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}

/// <summary>Capacity at least the load, down to the ambient that it was given for, by the root of the drop: practice.</summary>
[Trait("Source", "condensingPressureValve.headCapacity")]
public sealed class HeadCapacityTests : HeadAspectTests<HeadCapacity, HeadCapacityFacet>
{
    private const string Rated = "ratedWith=R-404A; ratedDrop=2 psi; ratedAmbient=0 °F";
    private const string There = "refrigerant=R-404A; leastAmbient=0 °F";

    [Theory]
    [InlineData("", $"{There}; load=20 kW", $"ratedCapacity=20 kW; {Rated}", "Meets")]
    [InlineData("", $"{There}; load=20.01 kW; dropAllowed=2 psi", $"ratedCapacity=20 kW; {Rated}", "Fails")]
    [InlineData("", $"{There}; load=20.01 kW", $"ratedCapacity=20 kW; {Rated}", "Unknown Site dropAllowed")] // more may pass at a greater drop
    [InlineData("", "refrigerant=R-134a; leastAmbient=0 °F; load=10 kW", $"ratedCapacity=20 kW; {Rated}", "Unknown Part ratedWith")]
    [InlineData("", "leastAmbient=0 °F; load=10 kW", $"ratedCapacity=20 kW; {Rated}", "Unknown Site refrigerant")]
    [InlineData("", $"{There}; load=10 kW", "ratedCapacity=20 kW; ratedWith=R-404A; ratedAmbient=0 °F", "Unknown Part ratedDrop")]
    [InlineData("", $"{There}; load=10 kW", "ratedCapacity=20 kW; ratedWith=R-404A; ratedDrop=0 psi; ratedAmbient=0 °F", "Unknown Part ratedDrop")]
    [InlineData("", "", "", "Unknown Part ratedCapacity")]
    public void It_passes_the_load(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>The colder it is, the less it passes; nothing is taken for the ambient of a rating.</summary>
    [Theory]
    [InlineData("load=20 kW; leastAmbient=0 °F", "ratedAmbient=-1 °F", "Meets")]
    [InlineData("load=20 kW; leastAmbient=0 °F", "ratedAmbient=0 °F", "Meets")]
    [InlineData("load=20 kW; leastAmbient=0 °F", "ratedAmbient=1 °F", "Unknown Part ratedAmbient")]
    [InlineData("load=20 kW; leastAmbient=0 °F", "", "Unknown Part ratedAmbient")]
    [InlineData("load=20 kW", "ratedAmbient=0 °F", "Unknown Site leastAmbient")]
    [InlineData("load=20.01 kW; leastAmbient=0 °F", "ratedAmbient=1 °F", "Fails")]
    [InlineData("load=20.01 kW; leastAmbient=0 °F", "ratedAmbient=0 °F", "Fails")]
    [InlineData("load=20.01 kW; leastAmbient=0 °F", "ratedAmbient=-1 °F", "Unknown Part ratedCapacity")]
    [InlineData("load=20.01 kW; leastAmbient=0 °F", "", "Unknown Part ratedAmbient")]
    [InlineData("load=20.01 kW", "ratedAmbient=0 °F", "Unknown Site leastAmbient")]
    [InlineData("load=40 kW; leastAmbient=0 °F", "ratedAmbient=-1 °F", "Unknown Part ratedCapacity")]
    [InlineData("load=40.01 kW; leastAmbient=0 °F", "ratedAmbient=-1 °F", "Fails")] // over twice its rating
    [InlineData("load=40.01 kW; leastAmbient=0 °F", "", "Fails")]
    [InlineData("load=40.01 kW", "ratedAmbient=0 °F", "Fails")]
    public void A_rating_holds_down_to_the_ambient_that_it_was_given_for(string site, string ambient, string answer) =>
        Answer("", $"refrigerant=R-404A; dropAllowed=2 psi; {site}", $"ratedCapacity=20 kW; ratedWith=R-404A; ratedDrop=2 psi; {ambient}").ShouldBe(answer);

    /// <summary>Half the drop passes 0.7071 of the capacity, a quarter of it half (worked by hand): 20 kW at 2 psi are 14.14 kW at 1 psi. Drops are taken to 0.1 kPa.</summary>
    [Theory]
    [InlineData("1 psi", 14.13, "Meets")]
    [InlineData("1 psi", 14.2, "Fails")]
    [InlineData("2 psi", 20, "Meets")]
    [InlineData("4 psi", 20, "Meets")]
    [InlineData("4 psi", 20.01, "Unknown Part ratedCapacity")] // more than its rating is not credited
    [InlineData("8 psi", 39.9, "Unknown Part ratedCapacity")] // by the root four times the drop passes twice as much
    [InlineData("8 psi", 40.1, "Fails")]
    [InlineData("0 psi", 0.01, "Fails")]
    public void Where_less_may_be_lost_than_the_drop_of_its_rating_it_passes_less(string allowed, double load, string answer) =>
        Answer("", FormattableString.Invariant($"{There}; dropAllowed={allowed}; load={load} kW"), $"ratedCapacity=20 kW; {Rated}").ShouldBe(answer);

    /// <summary>By the root of the drop, 20 kW at 1 psi are 40 kW at 4 psi: worked by hand.</summary>
    [Fact]
    public void One_that_is_the_larger_at_the_same_drop_never_fails_where_a_smaller_one_meets()
    {
        const string Place = "refrigerant=R-404A; leastAmbient=30 °F; load=30 kW; dropAllowed=4 psi";
        Answer("", Place, "ratedCapacity=30 kW; ratedWith=R-404A; ratedDrop=4 psi; ratedAmbient=-20 °F").ShouldBe("Meets");
        var larger = Judge("", Place, "ratedCapacity=20 kW; ratedWith=R-404A; ratedDrop=1 psi; ratedAmbient=-20 °F");
        larger.Verdict.ShouldBe(Verdict.Unknown);
        larger.Shortfall.ShouldBe(1);
        larger.Sentence.ShouldContain("at 1 psi (6.9 kPa) drop, and 4 psi (27.6 kPa) may be lost there; the load is");
    }

    [Theory]
    [InlineData("20 kW", "2 psi", "0 °F", "Meets")]
    [InlineData("21 kW", "1 psi", "-20 °F", "Meets")]
    [InlineData("19 kW", "2 psi", "0 °F", "Unknown Site load")]
    [InlineData("20 kW", "5 psi", "0 °F", "Unknown Site load")]
    [InlineData("20 kW", "2 psi", "20 °F", "Unknown Site load")]
    public void Without_a_load_it_passes_no_less_than_the_old_one_at_conditions_no_kinder(string capacity, string drop, string ambient, string answer) =>
        Answer($"ratedCapacity=20 kW; {Rated}", "", $"ratedCapacity={capacity}; ratedWith=R-404A; ratedDrop={drop}; ratedAmbient={ambient}").ShouldBe(answer);

    [Fact]
    public void A_rating_without_its_ambient_is_not_held_against_the_old_ones()
    {
        const string Bare = "ratedCapacity=20 kW; ratedWith=R-404A; ratedDrop=2 psi";
        Answer($"ratedCapacity=20 kW; {Rated}", "", Bare).ShouldBe("Unknown Part ratedAmbient");
        Answer(Bare, "", $"ratedCapacity=20 kW; {Rated}").ShouldBe("Unknown Site load");
    }

    [Theory]
    [InlineData("ratedDrop=2 psi; ratedAmbient=0 °F", "without its refrigerant.")]
    [InlineData("ratedWith=R-404A; ratedAmbient=0 °F", "without the drop of pressure that it is for.")]
    [InlineData("ratedWith=R-404A; ratedDrop=2 psi", "without how cold it may be outside for that.")]
    public void The_condition_that_lacks_is_named_alone(string conditions, string said) => Judge("", "", $"ratedCapacity=20 kW; {conditions}").Sentence.ShouldEndWith(said);

    [Fact]
    public void What_it_passes_at_the_drop_allowed_and_down_to_where_is_said() =>
        Judge("", $"{There}; dropAllowed=1 psi; load=10 kW", $"ratedCapacity=20 kW; {Rated}").Sentence.ShouldBe("It passes 5.69 tons (20 kW) at 2 psi (13.8 kPa) drop, and 4.02 tons (14.14 kW) at the 1 psi (6.9 kPa) that may be lost there; the load is 2.84 tons (10 kW). That is given down to 0 °F (−17.8 °C) outside; the least there is 0 °F (−17.8 °C).");

    [Fact]
    public void The_notes_say_for_how_cold_a_place_it_is_charged() =>
        NotesCases.Of("condensingPressureValve", string.Empty, "needsArrangement=three-way; leastAmbient=0 °F", string.Empty).Notes.Steps.ShouldContain(step => step.Words.Contains("what floods the condenser at the least ambient, 0 °F (−17.8 °C)", StringComparison.Ordinal));

    /// <summary>Practice: half of log2 of the ratio, so that four times the load counts 1.</summary>
    [Theory]
    [InlineData("10 kW", 0)]
    [InlineData("20 kW", 0.5)]
    [InlineData("40 kW", 1)]
    [InlineData("80 kW", 1)]
    public void The_more_it_is_too_large_the_more_it_costs(string capacity, double shortfall) =>
        Judge("", $"{There}; load=10 kW", $"ratedCapacity={capacity}; {Rated}").Shortfall.ShouldBe(shortfall, 0.001);
}

/// <summary>As for other valves: ASHRAE 15, from memory.</summary>
[Trait("Source", "condensingPressureValve.headBodyPressure")]
public sealed class HeadBodyPressureTests : HeadAspectTests<HeadBodyPressure, PressureFacet>
{
    [Theory]
    [InlineData("designPressure=450 psi", "workingPressure=450 psi", "Meets")]
    [InlineData("designPressure=450 psi", "workingPressure=450.1 psi", "Meets")]
    [InlineData("designPressure=450 psi", "workingPressure=449.9 psi", "Fails")]
    [InlineData("designPressure=450 psi", "workingPressure=449 psi", "Fails")]
    [InlineData("designPressure=450 psi", "", "Unknown Part workingPressure")]
    public void Its_body_holds_the_design_pressure(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    /// <summary>The old one held what is there; one that holds less may yet hold the design pressure.</summary>
    [Theory]
    [InlineData("workingPressure=450 psi", "", "workingPressure=450 psi", "Meets")]
    [InlineData("workingPressure=450 psi", "", "workingPressure=449.9 psi", "Unknown Site designPressure")]
    [InlineData("workingPressure=450 psi", "designPressure=400 psi", "workingPressure=449.9 psi", "Meets")]
    [InlineData("workingPressure=450 psi", "designPressure=450 psi", "workingPressure=449.9 psi", "Fails")] // what was read outranks the old one's
    [InlineData("", "", "workingPressure=700 psi", "Unknown Site designPressure")]
    [InlineData("workingPressure=450 psi", "", "", "Unknown Part workingPressure")]
    public void Where_the_design_pressure_was_not_read_the_old_ones_is_followed(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}

/// <summary>A receiver holds the flooding charge: practice.</summary>
[Trait("Source", "condensingPressureValve.floodingCharge")]
public sealed class FloodingChargeTests : HeadAspectTests<FloodingCharge, FloodsFacet>
{
    [Theory]
    [InlineData("receiverHoldsFlooding=yes", "arrangement=three-way", "Meets")]
    [InlineData("receiverHoldsFlooding=no", "arrangement=three-way", "Fails")]
    [InlineData("", "arrangement=inlet regulator", "Unknown Site receiverHoldsFlooding")]
    [InlineData("receiverHoldsFlooding=no", "arrangement=differential check", "Meets")]
    [InlineData("", "", "Unknown Part arrangement")]
    public void The_receiver_holds_what_floods(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);
}

/// <summary>Each pipe on the port of its function, reducers and joints, and one size for all ports where one is given: practice.</summary>
[Trait("Source", "condensingPressureValve.portsByFunction")]
public sealed class PortsByFunctionTests : HeadAspectTests<PortsByFunction, PortsFacet>
{
    private const string ThreeWay = "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=1/2 in";
    private const string Regulator = "arrangement=inlet regulator; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in";
    private const string Check = "arrangement=differential check; joint=ODF; receiverPort=5/8 in; dischargePort=5/8 in";

    [Theory]
    [InlineData(ThreeWay, "", ThreeWay, "Meets")]
    [InlineData(ThreeWay, "", "arrangement=three-way; joint=ODF; condenserPort=7/8 in; receiverPort=5/8 in; dischargePort=1/2 in", "MeetsWithChanges fitReducers")]
    [InlineData(ThreeWay, "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=1/2 in; dischargePort=1/2 in", "MeetsWithChanges fitReducers")]
    [InlineData(ThreeWay, "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=5/8 in", "MeetsWithChanges fitReducers")]
    [InlineData(ThreeWay, "dischargePipe=5/8 in", ThreeWay, "MeetsWithChanges fitReducers")] // what was measured outranks the old one's
    [InlineData(ThreeWay, "", "arrangement=three-way; joint=SAE; condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=1/2 in", "MeetsWithChanges changeJoint")]
    [InlineData("", "", ThreeWay, "Unknown Site condenserPipe")]
    [InlineData("", "condenserPipe=5/8 in; receiverPipe=5/8 in; lineJoint=ODF", ThreeWay, "Unknown Site dischargePipe")]
    [InlineData("", "condenserPipe=5/8 in; receiverPipe=5/8 in; lineJoint=ODF", Regulator, "Meets")] // no hot gas goes there
    [InlineData(ThreeWay, "", "arrangement=three-way; joint=ODF; condenserPort=7/8 in; receiverPort=5/8 in", "Unknown Part dischargePort")] // two sizes say nothing of the third
    [InlineData(ThreeWay, "", "arrangement=three-way; joint=ODF; receiverPort=5/8 in; dischargePort=1/2 in", "Unknown Part condenserPort")]
    [InlineData(ThreeWay, "", "joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "Unknown Part dischargePort")] // the old one's pipe for hot gas is there
    public void Ports_and_pipes_are_joined(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("needsArrangement=three-way; dischargePipe=1/2 in", Regulator, "Fails")]
    [InlineData("needsArrangement=three-way", Regulator, "Fails")] // there is one, measured or not
    [InlineData("needsArrangement=differential check; dischargePipe=1/2 in", Regulator, "Fails")]
    [InlineData("needsArrangement=three-way; condenserPipe=5/8 in", Check, "Fails")]
    [InlineData("needsArrangement=inlet regulator; condenserPipe=5/8 in", Check, "Fails")]
    [InlineData("dischargePipe=1/2 in", Regulator, "Unknown Site needsArrangement")] // it may go onto the check valve beside it
    [InlineData("condenserPipe=5/8 in", Check, "Unknown Site needsArrangement")]
    [InlineData("needsArrangement=differential check; condenserPipe=5/8 in; receiverPipe=5/8 in; dischargePipe=5/8 in; lineJoint=ODF", Check, "Meets")] // the drain goes onto the inlet regulator beside it
    [InlineData("needsArrangement=inlet regulator; condenserPipe=5/8 in; receiverPipe=5/8 in; dischargePipe=5/8 in; lineJoint=ODF", Regulator, "Meets")]
    [InlineData("dischargePipe=5/8 in; receiverPipe=5/8 in; lineJoint=ODF", Check, "Meets")]
    [InlineData("condenserPipe=5/8 in; receiverPipe=5/8 in; lineJoint=ODF", Regulator, "Meets")]
    [InlineData("dischargePipe=1/2 in", "joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "Unknown Part dischargePort")] // of which arrangement it is is not given
    public void A_pipe_without_a_port_fails_unless_it_goes_onto_the_valve_beside_it(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=5/8 in", "Meets")]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=1/2 in", "MeetsWithChanges fitReducers")]
    [InlineData("arrangement=differential check; joint=ODF; condenserPort=5/8 in", Check, "Meets")] // a plate's one size is its inlet's
    [InlineData("arrangement=differential check; joint=ODF; dischargePort=5/8 in", Check, "Meets")] // whichever of its names the inlet was given by
    [InlineData("arrangement=three-way; joint=ODF; dischargePort=5/8 in", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=5/8 in", "Unknown Site condenserPipe")] // that is one of three
    [InlineData("joint=ODF; condenserPort=5/8 in", Regulator, "Unknown Site condenserPipe")] // of which arrangement the old one was is not known
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", ThreeWay, "Unknown Site dischargePipe")] // two were marked, and the third was not
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=7/8 in; dischargePort=5/8 in", ThreeWay, "Unknown Site receiverPipe")]
    [InlineData("arrangement=differential check; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", Check, "Meets")]
    [InlineData("arrangement=differential check; joint=ODF; condenserPort=7/8 in; dischargePort=5/8 in", Check, "Unknown Site receiverPipe")]
    public void Where_an_old_one_is_marked_with_one_size_all_pipes_have_it(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    /// <summary>A catalogue's one size may be that of one port.</summary>
    [Theory]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "Unknown Part receiverPort")]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=5/8 in", "Unknown Part dischargePort")]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in; dischargePort=1/2 in", "Unknown Part receiverPort")]
    public void No_size_is_taken_of_a_part(string part, string answer) => Answer(ThreeWay, "", part).ShouldBe(answer);

    /// <summary>What is marked like the old one goes where that one was; one size of another valve says nothing.</summary>
    [Theory]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in", "Meets")]
    [InlineData("arrangement=inlet regulator; joint=ODF; condenserPort=5/8 in", "", "arrangement=inlet regulator; joint=ODF; condenserPort=5/8 in", "Meets")]
    [InlineData("arrangement=differential check; joint=ODF; condenserPort=5/8 in", "", "arrangement=differential check; joint=ODF; condenserPort=5/8 in", "Meets")]
    [InlineData("arrangement=differential check; joint=ODF; dischargePort=5/8 in", "", "arrangement=differential check; joint=ODF; dischargePort=5/8 in", "Meets")]
    [InlineData("arrangement=differential check; joint=ODF; dischargePort=5/8 in", "", "arrangement=differential check; joint=ODF; condenserPort=5/8 in", "Meets")]
    [InlineData("arrangement=differential check; joint=ODF; condenserPort=5/8 in", "", "arrangement=differential check; joint=ODF; dischargePort=5/8 in", "Meets")]
    [InlineData("joint=ODF; dischargePort=5/8 in", "needsArrangement=differential check", "arrangement=differential check; joint=ODF; receiverPort=5/8 in; dischargePort=5/8 in", "Meets")]
    [InlineData("arrangement=differential check; joint=ODF; dischargePort=5/8 in", "", "arrangement=differential check; joint=ODF; dischargePort=7/8 in", "Unknown Part receiverPort")]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "", "arrangement=three-way; joint=SAE; condenserPort=5/8 in", "MeetsWithChanges changeJoint")]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "", "arrangement=three-way; joint=ODF; condenserPort=7/8 in", "Unknown Part receiverPort")]
    [InlineData("arrangement=inlet regulator; joint=ODF; condenserPort=5/8 in", "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in", "Unknown Part receiverPort")]
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "receiverPipe=7/8 in", "arrangement=three-way; joint=ODF; condenserPort=5/8 in", "Unknown Part receiverPort")] // a pipe of another size than the one
    [InlineData("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; dischargePort=1/2 in", "Unknown Part receiverPort")]
    public void The_same_one_size_as_the_old_ones_meets(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void That_one_size_is_taken_for_all_ports_is_said() =>
        Judge("arrangement=three-way; joint=ODF; condenserPort=5/8 in", "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in").Sentence.ShouldContain("the one that the old valve is marked with: it is taken for all ports");

    [Fact]
    public void What_is_to_be_fitted_is_in_the_kit_by_the_way_of_the_flow()
    {
        var change = Judge(ThreeWay, "", "arrangement=three-way; joint=ODF; condenserPort=5/8 in; receiverPort=7/8 in; dischargePort=5/8 in").Changes.ShouldHaveSingleItem();
        change.Text.ShouldBe("fit reducers: 5/8 in (15.88 mm) from the condenser, 7/8 in (22.23 mm) to the receiver and 5/8 in (15.88 mm) for hot gas at the valve, 5/8 in (15.88 mm) from the condenser, 5/8 in (15.88 mm) to the receiver and 1/2 in (12.7 mm) for hot gas at the pipes");
        change.Kit.Select(item => item.What).ShouldBe(["reducing coupling, 7/8 in (22.23 mm) to 5/8 in (15.88 mm)", "reducing coupling, 1/2 in (12.7 mm) to 5/8 in (15.88 mm)"]);
    }

    /// <summary>Worked by hand: log2 of 5/8 over 1/2 is 0.322, of 7/8 over 5/8 0.485; the worst counts.</summary>
    [Theory]
    [InlineData("condenserPort=5/8 in; receiverPort=5/8 in; dischargePort=5/8 in", 0.322)]
    [InlineData("condenserPort=7/8 in; receiverPort=5/8 in; dischargePort=5/8 in", 0.485)]
    public void The_further_the_sizes_are_apart_the_more_it_costs(string ports, double shortfall) => Judge(ThreeWay, "", $"arrangement=three-way; joint=ODF; {ports}").Shortfall.ShouldBe(shortfall, 0.001);

    [Fact]
    public void An_inlet_regulator_with_a_port_for_hot_gas_is_misread() =>
        Families.Find("condensingPressureValve")!.ReadNeed(new(null, [new("arrangement", "inlet regulator"), new("dischargePort", "1/2 in")], [])).Contradictions.Single().Fields.ShouldBe(["arrangement", "dischargePort"]);
}
