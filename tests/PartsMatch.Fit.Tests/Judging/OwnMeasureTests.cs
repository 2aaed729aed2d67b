using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What a shortfall is in an aspect's own unit, against what the aspect answers; worked by hand.</summary>
public sealed class OwnMeasureTests
{
    private const string Head = "refrigerant=R-404A; evaporatingAt=-6.7 °C; condensingLeast=43.3 °C; condensingMost=43.3 °C; subcooling=5.5 K; hasDistributor=no; lineLoss=0 psi";
    private const string Rating = "refrigerants=R-404A; ratedWith=R-404A; ratedEvaporatingAt=-6.7 °C; ratedLiquidAt=37.8 °C";
    private const string Pipes = "inletLine=1/2 in; outletLine=1/2 in; lineJoint=ODF";
    private const string ThreeWires = "function=fan delay and defrost end; cutIn=55 °F; cutOut=40 °F; fanCutIn=25 °F";

    /// <summary>Rated at the very drop that is there, a valve passes its rating: bubble pressure at 43.3 °C less dew pressure at −6.7 °C.</summary>
    private static readonly string AtHead = FormattableString.Invariant($"{Rating}; ratedDrop={Refrigerants.Find("R-404A")!.BubblePressure(UnitsNet.Temperature.FromDegreesCelsius(43.3))!.Value.Kilopascals - Refrigerants.Find("R-404A")!.DewPressure(UnitsNet.Temperature.FromDegreesCelsius(-6.7))!.Value.Kilopascals:0.0} kPa");

    public static TheoryData<string> Measured => [.. Families.All.SelectMany(family => family.Aspects.Where(aspect => aspect.Measure is not null).Select(aspect => $"{family.Kind}.{aspect.Name}"))];

    /// <summary>Aspect, plate, site, part, and what the part is off by. Two figures where the easy one is not nought, and one for each way that it may be off.</summary>
    public static TheoryData<string, string, string, string, string> Found => new()
    {
        { "motor.shaftLength", "shaftLength=4 in", "", "shaftLength=3.875 in", "a shaft 1/8 in (3.17 mm) shorter than the old one" }, // facets are in whole hundredths of a millimetre
        { "motor.shaftDiameter", "", "hubBore=10 mm", "shaftDiameter=10.02 mm", "a shaft 0.02 mm (0.001 in) off the hub's bore" },
        { "motor.bodyLength", "bodyLength=4 in", "", "bodyLength=4.5 in", "a body 1/2 in (12.7 mm) longer than the old one" },
        { "motor.outputPower", "power=100 W; powerMeaning=output", "", "power=99 W; powerMeaning=output", "a power 1 % under the old motor's" },
        { "motor.speed", "speed=1000 rpm; frequency=60 Hz; speeds=1; power=1/4 hp", "supplyFrequency=60 Hz", "speed=1035 rpm; frequency=60 Hz; speeds=1; power=1/4 hp", "a speed 3.5 % off the old one's" },
        { "motor.speed", "speed=1000 rpm; frequency=60 Hz; speeds=1; power=1/4 hp", "supplyFrequency=60 Hz", "speed=1045 rpm; frequency=60 Hz; speeds=1; power=1/4 hp", "a speed 4.5 % off the old one's" },
        { "motor.supplyVoltage", "", "volts=213 V; supplyPhase=1; supplyFrequency=60 Hz", "voltage=230 V; phase=1; frequency=60 Hz", "a voltage 7.4 % off its tap" },
        { "motor.supplyVoltage", "", "volts=209 V; supplyPhase=1; supplyFrequency=60 Hz", "voltage=230 V; phase=1; frequency=60 Hz", "a voltage 9.1 % off its tap" },
        { "motor.supplyFrequency", "", "supplyFrequency=61.5 Hz", "frequency=60 Hz", "a frequency 2.5 % off its own" },
        { "motor.supplyFrequency", "", "supplyFrequency=62.4 Hz", "frequency=60 Hz", "a frequency 4 % off its own" },
        { "motor.voltageAndFrequency", "", "volts=474.5 V; supplyFrequency=60.96 Hz", "voltage=500 V; frequency=60 Hz; phase=3", "a supply 6.7 % off in volts and frequency together" },
        { "motor.voltageAndFrequency", "", "volts=220.8 V; supplyFrequency=62.4 Hz", "voltage=230 V; frequency=60 Hz; phase=3", "a supply 8 % off in volts and frequency together" },
        { "motor.voltageUnbalance", "phase=3", "volts=464/464/448.5 V; supplyPhase=3", "phase=3", "a supply 2.3 % out of balance" },
        { "motor.voltageUnbalance", "phase=3", "volts=466/466/446.5 V; supplyPhase=3", "phase=3", "a supply 2.8 % out of balance" }, // 13 of 459.5 V
        { "motor.runningCurrent", "", "volts=115 V; contactFullLoadAmps=10 A", "voltage=115 V; phase=1; fullLoadAmps=9 A", "a draw of 90 % of what carries it or one 12.5 % over the old motor's" },
        { "motor.runningCurrent", "", "volts=115 V; contactFullLoadAmps=10 A; otherFullLoadAmps=5 A", "voltage=115 V; phase=1; fullLoadAmps=4.8 A", "a draw of 98 % of what carries it or one 22.5 % over the old motor's" },
        { "motor.runningCurrent", "voltage=115 V; phase=1; fullLoadAmps=4 A", "volts=115 V", "voltage=115 V; phase=1; fullLoadAmps=4.2 A", "a draw of 84 % of what carries it or one 5 % over the old motor's" },
        { "motor.startingCurrent", "", "volts=230 V; contactLockedRotorAmps=10 A", "voltage=230 V; phase=1; fullLoadAmps=2 A; lockedRotorAmps=9 A", "a draw of 90 % of what carries it or one 10 % over the old motor's" },
        { "motor.startingCurrent", "voltage=230 V; phase=1; fullLoadAmps=2 A; lockedRotorAmps=10 A", "volts=230 V", "voltage=230 V; phase=1; fullLoadAmps=2 A; lockedRotorAmps=11.5 A", "a draw of 95 % of what carries it or one 15 % over the old motor's" },
        { "motor.branchFuse", "", "volts=230 V; fuse=9 A", "type=PSC; voltage=230 V; phase=1; speed=1075 rpm; speeds=1; power=3/4 hp; frequency=60 Hz; fullLoadAmps=8 A", "a fuse that leaves it 112.5 % of its amps" },
        { "motor.branchFuse", "", "volts=230 V; fuse=11.4 A; otherFullLoadAmps=3 A", "type=PSC; voltage=230 V; phase=1; speed=1075 rpm; speeds=1; power=3/4 hp; frequency=60 Hz; fullLoadAmps=8 A", "a fuse that leaves it 105 % of its amps" },
        { "motor.ambient", "ambientMost=50 °C", "", "ambientMost=45 °C", "an ambient 9 °F (5 K) under the old motor's" },
        { "motor.insulation", "insulation=F", "", "insulation=B", "a class 45 °F (25 K) under the old motor's" }, // 155 and 130 °C: IEC 60085
        { "motor.airDensity", "", "altitude=1500 m", "", "a place 500 m (1640 ft) above what it is made for" },
        { "capacitor.strap", "can=round; diameter=50 mm", "", "can=round; diameter=50.5 mm", "a can 0.5 mm (0.02 in) off the strap there" },
        { "capacitor.temperatureRating", "", "airMost=65 °C", "temperatureMost=70 °C", "air 9 °F (5 K) below what it is made for" },
        { "capacitor.temperatureRating", "", "airMost=68 °C", "temperatureMost=70 °C", "air 3.6 °F (2 K) below what it is made for" },
        { "solenoidValve.opensAgainst", "", "inletMost=280 psi; outletLeast=10 psi", "openingDifferential=300 psi", "a pressure difference 90 % of the most that it opens against" },
        { "solenoidValve.opensAgainst", "", "inletMost=292 psi; outletLeast=10 psi", "openingDifferential=300 psi", "a pressure difference 94 % of the most that it opens against" },
        { "solenoidValve.coilSupplied", "", "coilSupplyVolts=108 V; coilSupplyFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz", "a voltage 10 % under its coil's or one 6.7 % over it" },
        { "solenoidValve.coilSupplied", "", "coilSupplyVolts=126 V; coilSupplyFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz", "a voltage 7.5 % under its coil's or one 5 % over it" },
        { "solenoidValve.coilContact", "", "contactDuty=C300; coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", "coilPower=45 VA; coilInrush=90 VA; coilVolts=120 V; coilFrequency=60 Hz", "a coil load 25 % of what its contact switches" }, // C300 opens 180 VA
        { "solenoidValve.connections", "", Pipes, "joint=ODF; inletSize=3/8 in; outletSize=1/2 in", "the larger of pipe and connection 133.3 % of the smaller" },
        { "solenoidValve.connections", "", Pipes, "joint=ODF; inletSize=1/2 in; outletSize=7/8 in", "the larger of pipe and connection 175 % of the smaller" },
        { "expansionValve.capacityAtHeads", "", $"{Head}; load=10 kW", $"{AtHead}; ratedCapacity=9.5 kW", "a capacity 5 % under the load or one 40 % over it" },
        { "expansionValve.capacityAtHeads", "", $"{Head}; load=10 kW", $"{AtHead}; ratedCapacity=13.5 kW", "a capacity 2.5 % under the load or one 35 % over it" },
        { "expansionValve.expansionConnections", "", Pipes, "joint=ODF; inletSize=3/8 in; outletSize=1/2 in", "the larger of pipe and connection 133.3 % of the smaller" },
        { "condensingPressureValve.portsByFunction", "", "condenserPipe=1/2 in; receiverPipe=5/8 in; dischargePipe=1/2 in; lineJoint=ODF; needsArrangement=three-way", "arrangement=three-way; joint=ODF; condenserPort=1/2 in; receiverPort=1/2 in; dischargePort=1/2 in", "the larger of pipe and connection 125 % of the smaller" },
        { "condensingPressureValve.headSetting", "", "settingNeeded=180 psi; needsArrangement=three-way", "arrangement=three-way; setting=185 psi", "a pressure 5 psi (34.4 kPa) off the one needed" }, // 1275.5 less 1241.1 kPa: facets are in whole tenths
        { "condensingPressureValve.headCapacity", "", "load=10 kW; refrigerant=R-404A; leastAmbient=0 °C", "ratedCapacity=20 kW; ratedWith=R-404A; ratedDrop=5 psi; ratedAmbient=-10 °C", "a capacity 200 % of the load" },
        { "condensingPressureValve.headCapacity", "", "load=10 kW; refrigerant=R-404A; leastAmbient=0 °C", "ratedCapacity=30 kW; ratedWith=R-404A; ratedDrop=5 psi; ratedAmbient=-10 °C", "a capacity 300 % of the load" },
        { "contactor.coil", "", "controlVolts=22.8 V; controlFrequency=60 Hz", "coilVolts=24 V; coilFrequency=60 Hz", "a voltage 5 % under its coil's or one 3.3 % over it" },
        { "contactor.coil", "", "controlVolts=25.2 V; controlFrequency=60 Hz", "coilVolts=24 V; coilFrequency=60 Hz", "a voltage 7.5 % under its coil's or one 5 % over it" },
        { "contactor.coilPower", "", "transformerVa=40 VA; otherCoilsVa=20 VA", "coilVa=15 VA", "a coil that takes 75 % of the VA that its transformer has left" },
        { "contactor.continuous", "", "motors=14/73 A; heaterAmps=13 A", "continuousAmps=36 A", "a load of 75 % of what a pole carries all day" },
        { "contactor.horsepower", "", "motorPower=3 hp; loadVolts=230 V; loadPhase=3", "ratedVolts=230 V; threePhaseHorsepower=5 hp", "a motor load 60 % of the horsepower that it is rated for" },
        { "thermostat.switchingPoint", "function=defrost end; cutOut=55 °F; cutIn=35 °F", "", "function=defrost end; isAdjustable=no; cutOut=59 °F; cutIn=35 °F", "a temperature 4 °F (2.2 K) off the one wanted" },
        { "thermostat.returnPoint", "function=defrost end; cutOut=55 °F; cutIn=35 °F", "", "function=defrost end; isAdjustable=no; cutOut=55 °F; cutIn=42 °F", "a temperature 7 °F (3.9 K) off the one wanted" },
        { "thermostat.fanPoints", ThreeWires, "", "function=fan delay and defrost end; fanCutIn=28 °F", "a temperature 3 °F (1.7 K) off the one wanted" },
        { "thermostat.differentialSpan", "function=box", "cutOutNeeded=35 °F; cutInNeeded=38 °F", "isAdjustable=yes; range=0 to 55 °F; differential=5 °F", "a differential 2 °F (1.1 K) off the one wanted" },
        { "defrostTimer.clockSupplied", "", "clockSupplyVolts=218.5 V; clockSupplyFrequency=60 Hz", "clockVolts=230 V; clockFrequency=60 Hz", "a voltage 5 % under its clock's or one 5 % over it" },
        { "defrostTimer.clockSupplied", "", "clockSupplyVolts=236.9 V; clockSupplyFrequency=60 Hz", "clockVolts=230 V; clockFrequency=60 Hz", "a voltage 3 % under its clock's or one 3 % over it" },
        { "defrostTimer.releaseSupplied", "", "endedThereBy=temperature; releaseSupplyVolts=216 V; clockSupplyFrequency=60 Hz", "releaseVolts=240 V; releaseFrequency=60 Hz", "a voltage 10 % under its release solenoid's or one 6.7 % over it" },
        { "defrostTimer.releaseSupplied", "", "endedThereBy=temperature; releaseSupplyVolts=252 V; clockSupplyFrequency=60 Hz", "releaseVolts=240 V; releaseFrequency=60 Hz", "a voltage 7.5 % under its release solenoid's or one 5 % over it" },
        { "defrostTimer.failSafeLongEnough", "", "minutesNeeded=54 min", "failSafe=10 to 60 min", "a fail-safe with 10 % of its longest to spare or a shortest 50 % over what is needed" },
        { "defrostTimer.failSafeLongEnough", "", "minutesNeeded=57 min", "failSafe=10 to 60 min", "a fail-safe with 5 % of its longest to spare or a shortest 75 % over what is needed" },
        { "defrostTimer.failSafeLongEnough", "", "minutesNeeded=8 min; endedThereBy=temperature", "failSafe=10 to 60 min", "a fail-safe with 15 % of its longest to spare or a shortest 25 % over what is needed" },
    };

    /// <summary>Questions of a contact, asked alike of every switch. A300 opens 720 VA and closes on 7200 VA from 120 to 300 V (published).</summary>
    public static TheoryData<string, string, string, string> OnContacts => new()
    {
        { "fullLoad", "motors=36/120 A", "fullLoadAmps=40 A", "a load 90 % of its full-load amps" },
        { "fullLoad", "motors=34/120 A", "fullLoadAmps=40 A", "a load 85 % of its full-load amps" },
        { "lockedRotor", "motors=20/180 A", "lockedRotorAmps=200 A", "a load 90 % of its locked-rotor amps" },
        { "resistive", "loads=heaters; heaterAmps=38 A", "resistiveAmps=40 A", "a load 95 % of its resistive amps" },
        { "pilotLoad", "loads=coils; coilsVa=180 VA; coilsInrushVa=3600 VA", "pilotDuty=A300", "a coil load 50 % of its pilot duty" },
        { "pilotLoad", "loads=coils; coilsVa=180 VA; coilsInrushVa=900 VA", "pilotDuty=A300", "a coil load 25 % of its pilot duty" },
        { "directCurrent", "loads=heaters; heaterAmps=6 A; loadCurrent=DC", "directVolts=250 V; directAmps=10 A", "a load 60 % of its DC amps" },
    };

    [Theory]
    [MemberData(nameof(Found))]
    public void It_is_what_the_aspect_found(string aspect, string plate, string site, string part, string words) => Holds(aspect, plate, site, part, words);

    [Theory]
    [MemberData(nameof(OnContacts))]
    public void On_a_contact_it_is_the_same_of_every_switch(string aspect, string site, string part, string words)
    {
        foreach (var kind in (string[])["pressureControl", "thermostat", "contactor", "defrostTimer"])
        {
            var volts = kind == "defrostTimer" ? "loadVolts=240 V; fanVolts=240 V; coilVolts=240 V" : "loadVolts=240 V";
            Holds($"{kind}.{aspect}", string.Empty, $"{site}; {volts}", $"ratedVolts=240 V; {part}", words);
        }
    }

    [Fact]
    public void Each_is_held_against_what_its_aspect_finds()
    {
        var held = Found.Select(row => row.Data.Item1).Concat(OnContacts.Select(row => row.Data.Item1)).ToHashSet();
        Measured.Select(row => row.Data).Where(aspect => !held.Contains(aspect) && !held.Contains(aspect.Split('.')[1])).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Measured))]
    public void It_moves_all_the_way_from_where_nobody_gives_it_a_thought_to_the_limit(string aspect)
    {
        for (var measure = Of(aspect).Measure; measure is not null; measure = measure.Or)
        {
            measure.Easy.ShouldNotBe(measure.Limit);
            foreach (var units in Enum.GetValues<Units>()) measure.Figure(0.5, units).ShouldNotBe(measure.Figure(1, units));
        }
    }

    [Fact]
    public void Every_family_names_a_few_pairs_of_its_aspects_and_says_why()
    {
        foreach (var family in Families.All)
        {
            family.Pairs.Count.ShouldBeInRange(1, 3, family.Kind);
            family.Pairs.Select(pair => pair.Name).ShouldBeUnique();
            foreach (var pair in family.Pairs)
            {
                family.Aspects.Select(aspect => aspect.Name).ShouldContain(pair.One);
                family.Aspects.Select(aspect => aspect.Name).ShouldContain(pair.Other);
                pair.One.ShouldNotBe(pair.Other);
                pair.Why.ShouldNotBeNullOrWhiteSpace();
            }
        }
    }

    [Theory]
    [InlineData("thermostat.switchingPoint", "10 °F (5.6 K)")]
    [InlineData("contactor.coil", "15 % or 10 %")]
    [InlineData("defrostTimer.clockSupplied", "10 %")]
    public void A_limit_is_written_as_the_trade_does_and_once_where_it_is_the_same_either_way(string aspect, string limit) =>
        Of(aspect).Measure!.Figure(1, Units.AsGiven).ShouldBe(limit);

    private static Aspect Of(string aspect) => Families.Find(aspect.Split('.')[0])!.Aspects.Single(one => one.Name == aspect.Split('.')[1]);

    private static void Holds(string name, string plate, string site, string part, string words)
    {
        var (family, aspect) = (Families.Find(name.Split('.')[0])!, Of(name));
        var need = family.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;
        var finding = aspect.Judge(need, aspect.FacetOf(family.Deduce(family.ReadSpec(Named.Texts(part)).Spec).Spec));

        finding.Shortfall.ShouldBeInRange(0.01, 0.99, $"{name}: {finding.Verdict}: {finding.Sentence}");
        aspect.Measure.ShouldNotBeNull(name).Words(finding.Shortfall, Units.AsGiven).ShouldBe(words, name);
    }
}
