using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>6 times full load where nothing is marked: UL/IEC 60730-1 (from memory). +20 %: IEC 60034-1's tolerance (published). Code letters: NEMA MG 1 10.37.2 (published).</summary>
[Trait("Source", "motor.startingCurrent")]
public sealed class StartingCurrentTests : MotorAspectTests<StartingCurrent>
{
    private const string Marked = "voltage=230 V; phase=1; fullLoadAmps=2 A; lockedRotorAmps=9 A";
    private const string Unmarked = "voltage=230 V; phase=1; fullLoadAmps=2 A";

    [Theory]
    [InlineData("contactLockedRotorAmps=9 A", Verdict.Meets)]
    [InlineData("contactLockedRotorAmps=9.1 A", Verdict.Meets)]
    [InlineData("contactLockedRotorAmps=8.9 A", Verdict.Fails)]
    [InlineData("cyclingSwitchLockedRotorAmps=8.9 A", Verdict.Fails)]

    // 9 + 51 = 60 A; full-load amps of the others, far less, do not count here.
    [InlineData("contactLockedRotorAmps=60 A; otherLockedRotorAmps=51 A; otherFullLoadAmps=9 A", Verdict.Meets)]
    [InlineData("contactLockedRotorAmps=60 A; otherLockedRotorAmps=51.1 A; otherFullLoadAmps=9 A", Verdict.Fails)]
    public void Contact_and_switch_stand_the_locked_rotor_amps_edges_included(string site, Verdict verdict)
    {
        var finding = Judge(site: $"volts=230 V; {site}", part: Marked);
        finding.Verdict.ShouldBe(verdict, finding.Sentence);
    }

    [Fact]
    public void Not_marked_they_are_6_times_full_load_and_the_sentence_says_so()
    {
        // 6 × 2 = 12 A.
        Meets(site: "volts=230 V; contactLockedRotorAmps=12 A", part: Unmarked).Sentence.ShouldBe("It starts with 12 A, taken as 6 times full load; the contact stands 12 A.");
        Fails(site: "volts=230 V; contactLockedRotorAmps=11.9 A", part: Unmarked);
    }

    [Fact]
    public void A_contact_marked_for_full_load_only_stands_6_times_that_but_fails_nothing()
    {
        // 6 × 1.5 = 9 A.
        Meets(site: "volts=230 V; contactFullLoadAmps=1.5 A", part: Marked).Sentence.ShouldEndWith("the contact stands 9 A, taken as 6 times its full-load amps.");
        Unknown(Side.Site, "contactLockedRotorAmps", site: "volts=230 V; contactFullLoadAmps=1.4 A", part: Marked);
    }

    [Fact]
    public void Other_motors_not_marked_are_6_times_their_full_load_but_fail_nothing()
    {
        // 9 + 6 × 5 = 39 A.
        Meets(site: "volts=230 V; contactLockedRotorAmps=39 A; otherFullLoadAmps=5 A", part: Marked);
        Unknown(Side.Site, "otherLockedRotorAmps", site: "volts=230 V; contactLockedRotorAmps=38 A; otherFullLoadAmps=5 A", part: Marked);
        Fails(site: "volts=230 V; contactLockedRotorAmps=8 A; otherFullLoadAmps=5 A", part: Marked);
    }

    [Fact]
    public void A_marked_switch_fails_though_an_unmarked_contact_may_be_worse() =>
        Fails(site: "volts=230 V; cyclingSwitchLockedRotorAmps=8 A; contactFullLoadAmps=2 A; otherFullLoadAmps=15 A", part: Marked).Sentence.ShouldContain("cycling switch stands 8 A");

    [Fact]
    public void A_code_letter_tells_before_the_rule_of_6_does()
    {
        // Published: letter G, 5 hp, 230 V three-phase stays below 6.3 × 5 × 1000 / (√3 × 230) = 79.07 A.
        const string part = "power=5 hp; voltage=230 V; phase=3; fullLoadAmps=13 A; codeLetter=G";
        Meets(site: "volts=230 V; contactLockedRotorAmps=79.1 A", part: part).Sentence.ShouldContain("by its code letter");
        Fails(site: "volts=230 V; contactLockedRotorAmps=79 A", part: part);
        Fails(site: "volts=230 V; contactLockedRotorAmps=77 A", part: $"{part}; lockedRotorAmps=78 A");
    }

    [Theory]

    // 1.2 × 7.5 = 9 A.
    [InlineData("7.5 A", false)]
    [InlineData("7.51 A", false)]
    [InlineData("7.49 A", true)]
    public void Without_a_contacts_rating_20_percent_over_the_old_amps_is_the_same(string old, bool isChecked)
    {
        var plate = $"voltage=230 V; phase=1; lockedRotorAmps={old}";
        if (isChecked) MeetsWith([CircuitChanges.CheckStart], plate, part: Marked);
        else Meets(plate, part: Marked);
    }

    [Fact]
    public void What_is_only_reckoned_is_not_held_against_an_old_plate()
    {
        Meets("voltage=230 V; phase=1; lockedRotorAmps=3 A", part: Unmarked);
        Meets("voltage=230 V; phase=1; fullLoadAmps=1 A", part: Marked);
    }

    // Practice: its electronics ramp it up. 6 × 2 = 12 A would be a false figure for it.
    [Fact]
    public void An_electronically_commutated_motor_ramps_up_and_is_not_taken_as_6_times_full_load()
    {
        const string electronic = $"type=ECM; {Unmarked}";
        Meets(site: "volts=230 V", part: electronic).Sentence.ShouldBe("An electronically commutated motor ramps up: it starts at about its 2 A of full load (practice).");
        Unknown(Side.Part, "lockedRotorAmps", site: "volts=230 V; contactLockedRotorAmps=11 A", part: electronic);
        Fails(site: "volts=230 V; contactLockedRotorAmps=8.9 A", part: $"type=ECM; {Marked}");
    }

    [Fact]
    public void A_part_that_tells_no_amps_at_all_is_unknown() => Unknown(Side.Part, "lockedRotorAmps", site: "contactLockedRotorAmps=30 A", part: "voltage=230 V; phase=1");
}
