using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

public sealed class MotorContradictionsTests
{
    [Theory]

    // Worked by hand: 120 × 60 / 2 = 3600 rpm.
    [InlineData("type=PSC; speed=3650 rpm; frequency=60 Hz", "speed, frequency", "3600 rpm")]
    [InlineData("type=PSC; speed=3100 rpm; frequency=50 Hz", "speed, frequency", "3000 rpm")]

    // Worked by hand: 120 × 60 / 4 = 1800 rpm, / 6 = 1200 rpm, 120 × 50 / 4 = 1500 rpm; an induction motor slips (IEC 60034-1 and NEMA MG 1 rate by full-load speed, from memory).
    [InlineData("type=three-phase induction; phase=3; speed=1800 rpm; frequency=60 Hz", "speed, frequency", "never reaches synchronous speed")]
    [InlineData("type=PSC; speed=1200 rpm; frequency=60 Hz", "speed, frequency", "1200 rpm is the synchronous speed of 6 poles at 60 Hz")]
    [InlineData("type=PSC; speed=1500 rpm; frequency=50 Hz", "speed, frequency", "never reaches synchronous speed")]
    [InlineData("type=PSC; speed=3600 rpm; frequency=60 Hz", "speed, frequency", "2 poles")]

    // From memory: slip up to about 16 %; 0.84 × 1800 = 1512 rpm, and six poles end at 1200.
    [InlineData("type=PSC; speed=1500 rpm; frequency=60 Hz", "speed, frequency", "16 %")]
    [InlineData("runCapacitor=5/370; speed=1500 rpm; frequency=60 Hz", "speed, frequency", "16 %")]
    [InlineData("type=PSC; poles=4; speed=1075 rpm; frequency=60 Hz", "speed, poles, frequency", "1800 rpm")]

    // Worked by hand: 1/2 hp is 373 W; 115 V × 3.0 A = 345 VA; √3 × 230 V × 0.9 A = 358.5 VA; 230 V × 1.6 A = 368 VA.
    [InlineData("power=1/2 hp; voltage=115 V; fullLoadAmps=3.0 A; phase=1", "power, voltage, fullLoadAmps", "345 VA")]
    [InlineData("power=1/2 hp; voltage=230 V; fullLoadAmps=0.9 A; phase=3", "power, voltage, fullLoadAmps", "359 VA")]
    [InlineData("power=1/2 hp; voltage=208-230 V; fullLoadAmps=1.6 A; phase=1", "power, voltage, fullLoadAmps", "368 VA")]
    [InlineData("power=250 W; voltage=115 V; fullLoadAmps=1 A; phase=1; powerMeaning=input", "power, voltage, fullLoadAmps", "115 VA")]
    [InlineData("type=shaded pole; runCapacitor=5 µF 370 V", "type, runCapacitor", "5 µF 370 V")]
    [InlineData("phase=3; runCapacitor=5 µF 370 V", "phase, runCapacitor", "three-phase motor has no run capacitor")]
    [InlineData("type=PSC; runCapacitor=none", "type, runCapacitor", "says none")]
    [InlineData("type=split phase; runCapacitor=5 µF 370 V", "type, runCapacitor", "type split phase has no run capacitor")]
    [InlineData("type=capacitor start; runCapacitor=5 µF 370 V", "type, runCapacitor", "5 µF 370 V")]
    [InlineData("type=capacitor start; runCapacitor=130 µF", "type, runCapacitor", "may be its start capacitor")]
    [InlineData("type=ECM; runCapacitor=5 µF 370 V", "type, runCapacitor", "5 µF 370 V")]

    // Worked by hand from the type's bands: 1/20 hp is 37.3 W, a shaded-pole motor leaves 0.9 · 0.055 · 460 = 22.8 to 1.1 · 0.195 · 460 = 98.7 W of 460 VA; 1/2 hp is 373 W.
    [InlineData("type=shaded pole; power=1/2 hp; voltage=230 V; fullLoadAmps=2 A; phase=1", "type, power, voltage, fullLoadAmps", "23 to 99 W")]

    // Whatever the type and whatever the figure means: no motor leaves less than 22.8 W of 460 VA at the shaft, and of 16 W from the line at most 0.87 · 16 = 13.9 W.
    [InlineData("power=16 W; voltage=230 V; fullLoadAmps=2 A; phase=1", "type, power, voltage, fullLoadAmps", "16 W, at the shaft or from the line, does not go")]
    [InlineData("power=150 W; powerMeaning=input; voltage=115/230 V; fullLoadAmps=5.4/2.8 A; phase=1; runCapacitor=5 µF 440 V", "type, power, voltage, fullLoadAmps", "whichever type")] // 0.7 · 150 = 105 W against 0.9 · 0.25 · 0.9 · 621 = 126 W of PSC; 0.87 · 150 = 131 W against 0.9 · 0.55 · 0.75 · 621 = 230 W of CSCR

    // 0.25 · 200 = 50 to 140 W against 0.9 · 0.25 · 0.9 · 644 = 130 W of PSC, but that has at most 1.1 · 70 = 77 %; 0.87 · 200 = 174 W against 0.9 · 0.55 · 0.75 · 644 = 239 W of CSCR.
    [InlineData("power=200 W; powerMeaning=input; efficiency=80 %; voltage=115/230 V; fullLoadAmps=5.4/2.8 A; phase=1; runCapacitor=5 µF 440 V", "type, power, efficiency, voltage, fullLoadAmps", "200 W from the line does not go with efficiency 80 %, voltage 115/230 V, full-load amps 5.4/2.8 A, whichever type")]

    // From memory, 10 % beyond: single-phase without a run capacitor are shaded-pole motors, to 33 %, and others from 45 %.
    [InlineData("efficiency=40 %; phase=1; runCapacitor=none", "type, efficiency", "The efficiency 40 % does not go with phases and capacitor, whichever type")]
    [InlineData("type=PSC; phase=3", "type, phase", "single-phase")]

    // Published: NEMA MG 1 4.4.1, frame 48 has a 1/2 in shaft; IEC 60072-1 frame 71 has 14 mm (from memory).
    [InlineData("frame=48; shaftDiameter=5/8 in", "frame, shaftDiameter", "NEMA MG 1 4.4.1")]
    [InlineData("frame=IEC 71; shaftDiameter=11 mm", "frame, shaftDiameter", "from memory")]
    [InlineData("starDelta=yes; voltage=230/460 V; phase=3", "starDelta, voltage", "1 to √3")]
    [InlineData("starDelta=yes; voltage=400 V; phase=3", "starDelta, voltage", "says 400 V")]
    [InlineData("power=3/4-1/2-1/3 hp; speed=1725/1140 rpm", "power, speed", "1725/1140 rpm")]
    [InlineData("voltage=115/230 V; fullLoadAmps=1/2/3 A", "fullLoadAmps, voltage", "115/230 V")]
    [InlineData("lockedRotorAmps=1/2/3 A", "lockedRotorAmps, voltage", "anything else")]

    // Worked by hand: six poles turn below 120 × 60 / 6 = 1200 and 120 × 50 / 6 = 1000 rpm, four below 1800 and 1500.
    [InlineData("speed=1140/950 rpm; frequency=50/60 Hz", "speed, frequency", "turns faster at the higher frequency")]
    [InlineData("speed=1425/1725 rpm; frequency=60/50 Hz", "speed, frequency", "one of the two stands the other way round")]
    public void Readings_that_cannot_all_be_true_are_named(string plate, string fields, string says)
    {
        var found = MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), [])).Contradictions.ShouldHaveSingleItem();
        string.Join(", ", found.Fields).ShouldBe(fields);
        found.Sentence.ShouldContain(says);
        found.Source.Text.ShouldNotBeEmpty();
    }

    [Theory]
    [InlineData("type=PSC; speed=3450 rpm; frequency=60 Hz")]
    [InlineData("type=shaded pole; speed=1550 rpm; frequency=60 Hz; runCapacitor=none")]
    [InlineData("type=ECM; speed=1500 rpm; frequency=60 Hz")]
    [InlineData("speed=1500 rpm; frequency=60 Hz")]
    [InlineData("type=PSC; speed=1500 rpm")]
    [InlineData("type=ECM; speed=1800 rpm; frequency=60 Hz")]
    [InlineData("phase=3; speed=1800 rpm; frequency=60 Hz")]
    [InlineData("type=three-phase induction; phase=3; speed=1795 rpm; frequency=60 Hz")]
    [InlineData("type=PSC; speed=1075/900/750 rpm; frequency=60 Hz")]

    // Worked by hand: 373 W of 460 VA is possible (facts on motor input: efficiency × power factor 0.81).
    [InlineData("power=1/2 hp; voltage=115 V; fullLoadAmps=4.0 A; phase=1")]
    [InlineData("power=100 W; voltage=115 V; fullLoadAmps=1 A; phase=1; powerMeaning=input")]
    [InlineData("power=1/2 hp; voltage=115/230 V; fullLoadAmps=8/4 A; phase=1")]

    // Plates as they stand on small and slow motors, efficiency or shares of volt-amperes worked by hand: 10 of 35.7 VA, 44 % of 203 W, 93 of 358, 75 of 322, 124 of 529, 9 of 40 VA.
    [InlineData("type=PSC; power=10 W; voltage=230 V; frequency=50 Hz; fullLoadAmps=0.155 A; phase=1; speed=1350 rpm; runCapacitor=1.5 µF")]
    [InlineData("power=0.09 kW; voltage=230/400 V; phase=3; frequency=50 Hz; fullLoadAmps=0.85/0.49 A; powerFactor=0.60; speed=640 rpm")]
    [InlineData("power=1/8 hp; voltage=208-230/460 V; phase=3; frequency=60 Hz; fullLoadAmps=0.9/0.45 A; speed=1075 rpm")]
    [InlineData("power=1/10 hp; voltage=115 V; phase=1; frequency=60 Hz; fullLoadAmps=2.8 A; speed=1550 rpm")]
    [InlineData("power=1/6 hp; voltage=115 V; phase=1; fullLoadAmps=4.6 A; speed=1050 rpm")]
    [InlineData("type=ECM; power=9 W; voltage=115 V; phase=1; fullLoadAmps=0.35 A; speed=1550 rpm")]
    [InlineData("power=23 W; voltage=230 V; fullLoadAmps=2 A; phase=1")] // may be what a shaded-pole motor gives
    [InlineData("speed=1140/950 rpm; frequency=60/50 Hz")]
    [InlineData("speed=1075/900 rpm; speeds=2; frequency=50/60 Hz")] // two speeds, as the plate counts them
    [InlineData("frame=48Y; shaftDiameter=5/8 in")]
    [InlineData("frame=48Z; shaftDiameter=5/8 in")]
    [InlineData("frame=48; shaftDiameter=12.7 mm")]
    [InlineData("frame=48; shaftDiameter=12.74 mm")]
    public void A_plate_that_can_be_true_is_left_alone(string plate) =>
        MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), [])).Contradictions.ShouldBeEmpty();

    [Fact]
    public void Both_readings_stand_and_none_is_picked()
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, Named.Texts("frame=48; shaftDiameter=5/8 in"), []));
        ((MotorSpec)need.Need.Plate).ShaftDiameter!.Value.Inches.ShouldBe(0.625);
        ((MotorSpec)need.Need.Plate).Frame.ShouldNotBeNull();
    }
}
