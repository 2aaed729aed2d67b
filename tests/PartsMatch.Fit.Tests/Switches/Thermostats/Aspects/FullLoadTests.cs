using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Full-load amps at the volts, all motors added up: practice; 3 x 2.5 = 7.5 A worked by hand.</summary>
[Trait("Source", "thermostat.fullLoad")]
public sealed class FullLoadTests : ThermostatAspectTests<FullLoad, EachContact<FullLoadFacet>>
{
    [Theory]
    [InlineData("motors=3 x 2.5/12 A; loadVolts=240 V", "Fails")]
    [InlineData("motors=2 x 2.5/12 A; loadVolts=240 V", "Meets")]
    [InlineData("motors=10/60 A; loadVolts=120 V", "Meets")]
    [InlineData("motors=10.1/60 A; loadVolts=120 V", "Fails")]
    [InlineData("heaterAmps=20 A; loadVolts=240 V", "Meets")]
    [InlineData("motors=2/12 A", "Unknown Site loadVolts")]
    public void Motors_stay_within_it(string site, string answer) => Answer("", site, "ratedVolts=120/240 V; fullLoadAmps=10/5 A").ShouldBe(answer);

    private const string ThreeWires = "function=fan delay and defrost end";

    [Theory]
    [InlineData("loads=heater; fanMotors=2 x 4/20 A; fanVolts=120 V", "Meets")]
    [InlineData("loads=heater; fanMotors=8.1/40 A; fanVolts=120 V", "Fails")]
    [InlineData("loads=heater; fanMotors=8/40 A; fanVolts=240 V", "Fails")]
    [InlineData("motors=3/15 A; loadVolts=240 V; fanMotors=8/40 A; fanVolts=120 V", "Meets")]
    [InlineData("motors=3.1/15 A; loadVolts=240 V; fanMotors=8/40 A; fanVolts=120 V", "Fails")] // the fans' 8 A are nothing to the contact that ends the defrost
    [InlineData("loads=heater; fanMotors=8/40 A", "Unknown Site fanVolts")]
    [InlineData("loads=heater", "Unknown Site fanMotors")]
    [InlineData("loads=heater; fanCoilsVa=9 VA; fanVolts=120 V", "Meets")] // a contactor switches the fans
    public void With_three_wires_each_contact_carries_its_own_load(string site, string answer) =>
        Answer(ThreeWires, site, $"{ThreeWires}; ratedVolts=240 V; fullLoadAmps=3 A; resistiveAmps=25 A; fanRatedVolts=120 V; fanFullLoadAmps=8 A").ShouldBe(answer);

    [Theory]
    [InlineData("ratedVolts=240 V; fullLoadAmps=8 A", "Meets")] // one set stands for both
    [InlineData("ratedVolts=240 V; fullLoadAmps=7.9 A", "Fails")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=8 A; fanLockedRotorAmps=40 A", "Unknown Part fanFullLoadAmps")] // its own set says nothing of them
    [InlineData("ratedVolts=240 V; resistiveAmps=25 A; fanFullLoadAmps=8 A", "Meets")] // at the volts that stand there once
    [InlineData("resistiveAmps=25 A; fanFullLoadAmps=8 A", "Unknown Part fanRatedVolts")]
    public void One_set_of_ratings_stands_for_both_unless_the_fans_have_their_own(string part, string answer) =>
        Answer(ThreeWires, "loads=heater; fanMotors=8/40 A; fanVolts=240 V", $"{ThreeWires}; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("function=fan delay", "motors=8/40 A; loadVolts=120 V", "Meets")]
    [InlineData("function=fan delay", "motors=8.1/40 A; loadVolts=120 V", "Fails")]
    [InlineData("function=defrost end", "motors=3/15 A; loadVolts=240 V", "Meets")]
    [InlineData("function=defrost end", "motors=3.1/15 A; loadVolts=240 V", "Fails")]
    [InlineData("", "motors=3/15 A; loadVolts=120 V", "Meets")] // on either
    [InlineData("", "motors=4/20 A; loadVolts=120 V", "Unknown Plate function")]
    [InlineData("", "motors=9/40 A; loadVolts=120 V", "Fails")] // on neither
    public void In_place_of_one_function_alone_the_contact_that_does_it_counts(string plate, string site, string answer) =>
        Answer(plate, site, $"{ThreeWires}; ratedVolts=240 V; fullLoadAmps=3 A; fanRatedVolts=120 V; fanFullLoadAmps=8 A").ShouldBe(answer);

    [Theory]
    [InlineData("fanFullLoadAmps=8 A", "Meets")]
    [InlineData("fanFullLoadAmps=10 A", "Unknown Site fanMotors")]
    public void Where_nobody_named_them_the_old_ones_fans_rating_is_enough(string old, string answer) =>
        Answer($"{ThreeWires}; ratedVolts=240 V; fullLoadAmps=3 A; {old}", "loads=heater", $"{ThreeWires}; ratedVolts=240 V; fullLoadAmps=3 A; fanFullLoadAmps=8 A").ShouldBe(answer);

    [Fact]
    public void The_sentence_says_which_contact_it_is() =>
        Judge(ThreeWires, "loads=heater; fanMotors=8/40 A; fanVolts=240 V", $"{ThreeWires}; ratedVolts=240 V; fullLoadAmps=5 A").Sentence.ShouldStartWith("On the fans' contacts: 8 full-load amps");
}
