namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Contacts that are rated at several volts. Expected values are worked by hand: what stands beside volts is the rating at those (practice).</summary>
public sealed class RatingsAtVoltsTests
{
    private const string Thermostat = "thermostat";
    private const string PressureControl = "pressureControl";
    private const string Contactor = "contactor";

    [Theory]
    [InlineData(Thermostat, "1 HP AT 120 2 HP AT 240", "ratedVolts=120/240 V; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(Thermostat, "FLA 16 AT 120/240 VAC 1 HP AT 120 2 HP AT 240", "ratedVolts=120/240 V; fullLoadAmps=16 A; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(Thermostat, "120V 1HP 240V 2HP", "ratedVolts=120/240 V; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(Thermostat, "RATED VOLTS 120/208/240 FLA 16 AT 120 FLA 8 AT 208-240", "ratedVolts=120/208/240 V; fullLoadAmps=16/8/8 A")]
    [InlineData("defrostTimer", "RES 16A AT 120/240 VAC 1 HP AT 120 V 2 HP AT 240 V", "ratedVolts=120/240 V; resistiveAmps=16 A; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(PressureControl, "FLA 16 LRA 96 AT 120 V FLA 8 LRA 48 AT 240 V", "ratedVolts=120/240 V; fullLoadAmps=16/8 A; lockedRotorAmps=96/48 A")]
    [InlineData(PressureControl, "120V 16 FLA 96 LRA 240V 8 FLA 48 LRA A300", "ratedVolts=120/240 V; fullLoadAmps=16/8 A; lockedRotorAmps=96/48 A; pilotDuty=A300")]
    [InlineData(Contactor, "30 FLA 150 LRA 240/277V 25 FLA 125 LRA 480V 20 FLA 100 LRA 600V COIL 24V", "coilVolts=24 V; ratedVolts=240/277/480/600 V; fullLoadAmps=30/30/25/20 A; lockedRotorAmps=150/150/125/100 A")]
    [InlineData(Contactor, "RES 20 120/240 VAC 1 PH HP 1 AT 120 1 PH HP 2 AT 240", "ratedVolts=120/240 V; resistiveAmps=20 A; singlePhaseHorsepower=1 hp / 2 hp")]
    public void Ratings_at_each_of_the_volts_stand_side_by_side_as_these_do(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    /// <summary>16 A of no kind, and horsepower of no phases, belong to no field.</summary>
    [Theory]
    [InlineData(Thermostat, "16A AT 120/240 VAC 1 HP AT 120 2 HP AT 240", "ratedVolts=120/240 V; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(Contactor, "16A AT 120/240 VAC 1 HP AT 120 2 HP AT 240", "ratedVolts=120/240 V")]
    public void Volts_of_single_ratings_do_not_contradict_the_list_that_holds_them(string kind, string plate, string read) => ReadPlate.Fields(kind, plate).ShouldBe(read);

    /// <summary>Two horsepower at 240 V are not two at 120, nor amps at 120 V as many at 240.</summary>
    [Theory]
    [InlineData("defrostTimer", "120/240 VAC 2 HP AT 240", "ratedVolts=120/240 V", "2 HP")]
    [InlineData("defrostTimer", "120/240 VAC 2 HP AT 240 RES 40", "ratedVolts=120/240 V; resistiveAmps=40 A", "2 HP")]
    [InlineData(Contactor, "LRA 96 AT 120/240 FLA 16 AT 120", "ratedVolts=120/240 V; lockedRotorAmps=96 A", "FLA 16")]
    [InlineData(Thermostat, "FLA 16 240V RES 20 120V", "ratedVolts=120/240 V; fullLoadAmps=16 A", "RES 20")]
    [InlineData(Contactor, "40 FLA 240 LRA 240V 200 LRA 480V", "ratedVolts=240/480 V; lockedRotorAmps=240/200 A", "40 FLA")]
    public void A_rating_that_only_some_of_the_volts_have_is_left_over(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    /// <summary>Contacts break as many amps at fewer volts.</summary>
    [Theory]
    [InlineData(Contactor, "LRA 96 AT 120/240 FLA 16 AT 240", "ratedVolts=120/240 V; fullLoadAmps=16 A; lockedRotorAmps=96 A")]
    [InlineData(Contactor, "40FLA 50RES 600V LRA 240@240V 200@480V 160@600V", "ratedVolts=240/480/600 V; fullLoadAmps=40 A; lockedRotorAmps=240/200/160 A; resistiveAmps=50 A")]
    public void Amps_at_the_highest_volts_hold_at_the_others(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(Contactor, "LRA: 240A/240V 200A/480V", "ratedVolts=240/480 V; lockedRotorAmps=240/200 A")]
    [InlineData(Contactor, "LRA 240 AT 240V 200 AT 480V 160 AT 600V", "ratedVolts=240/480/600 V; lockedRotorAmps=240/200/160 A")]
    [InlineData(Contactor, "1 PH HP 1 AT 120 2 AT 240", "ratedVolts=120/240 V; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(Thermostat, "HP 1@120V 2@240V", "ratedVolts=120/240 V; singlePhaseHorsepower=1 hp / 2 hp")]
    [InlineData(Contactor, "FLA 30 AT 240 V LRA 150 RES 40", "ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A; resistiveAmps=40 A")]
    public void One_label_stands_for_all_ratings_of_a_row(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData("120 V 240 V")]
    [InlineData("120/240 V FLA 16 AT 277 V")]
    public void Volts_that_no_list_holds_and_that_do_not_share_their_ratings_contradict_one_another(string plate) =>
        Families.Find(Thermostat)!.ReadNameplate(plate).Contradictions.ShouldHaveSingleItem().Fields.ShouldBe(["ratedVolts"]);
}
