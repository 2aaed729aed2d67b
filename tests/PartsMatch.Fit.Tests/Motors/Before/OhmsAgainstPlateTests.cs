using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Before;

namespace PartsMatch.Fit.Tests.Motors.Before;

/// <summary>A winding's ohms against the impedance that the plate's volts and amps leave it (practice): shorted ones are not cleared, sound ones are never condemned.</summary>
[Trait("Source", "reading.leastOhms")]
public sealed class OhmsAgainstPlateTests
{
    private const string Quarter = "type=PSC; power=1/4 hp; speed=1075 rpm; voltage=230 V; phase=1; frequency=60 Hz; fullLoadAmps=1.9 A; lockedRotorAmps=4.8 A; runCapacitor=5/370";
    private const string Fuse = "circuitCalls=yes; leadVolts=0 V; control=fuse blown; insulationToEarth=20 MΩ";

    // Copper of 0.2 Ω would take 1150 A at 230 V: no motor of 1.9 A, of 0.3 A, or of 1.8 A at 460 V starts like that.
    [Theory]
    [InlineData(Quarter, "ohmsCommonToRun=0.2 Ω; ohmsCommonToStart=45 Ω; ohmsRunToStart=45.1 Ω")]
    [InlineData(Quarter, "ohmsCommonToRun=14 Ω; ohmsCommonToStart=0.2 Ω; ohmsRunToStart=14.1 Ω")]
    [InlineData(Quarter, "ohmsCommonToRun=0 Ω")]
    [InlineData("type=shaded pole; voltage=230 V; phase=1; fullLoadAmps=0.3 A", "ohmsCommonToRun=0.2 Ω")]
    [InlineData("type=three-phase induction; voltage=460 V; phase=3; fullLoadAmps=1.8 A", "ohmsOneToTwo=0.2 Ω; ohmsTwoToThree=0.2 Ω; ohmsOneToThree=0.2 Ω")]
    [InlineData("type=three-phase induction; voltage=460 V; phase=3; fullLoadAmps=1.8 A", "ohmsOneToTwo=0 Ω; ohmsTwoToThree=0 Ω; ohmsOneToThree=0 Ω")]
    public void A_shorted_winding_is_condemned_though_its_ohms_add_up(string plate, string ohms) => Asked.Of($"{Fuse}; {ohms}", plate).Conclusion.ShouldBe(Conclusion.PartHasFailed);

    // Worked by hand: 230 V over 4.8 A are 47.9 Ω; 2 % of them 0.958, of which a meter shows one step less; 10 % 4.79, and 0.3 Ω of leads.
    [Theory]
    [InlineData("0.85 Ω", ReadingVerdict.Bad, Conclusion.PartHasFailed)]
    [InlineData("0.86 Ω", ReadingVerdict.CantTell, Conclusion.NothingWrongFound)]
    [InlineData("5.09 Ω", ReadingVerdict.CantTell, Conclusion.NothingWrongFound)]
    [InlineData("5.1 Ω", ReadingVerdict.Good, Conclusion.NotThePart)]
    public void Between_shorted_and_sound_a_blown_fuse_does_not_clear_the_winding(string run, ReadingVerdict verdict, Conclusion conclusion)
    {
        const string plate = "type=shaded pole; voltage=230 V; phase=1; fullLoadAmps=1.9 A; lockedRotorAmps=4.8 A";
        Asked.Verdict<OhmsAgainstPlate>($"ohmsCommonToRun={run}", plate).ShouldBe(verdict);
        var diagnosis = Asked.Of($"{Fuse}; ohmsCommonToRun={run}", plate);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        diagnosis.Next.ShouldBeNull();
    }

    // Of two voltages the lower has both halves of a winding beside each other: a quarter of the ohms. Worked by hand: 115²/(230 × 4.8) = 11.98 Ω, 10 % 1.2 Ω.
    [Theory]
    [InlineData("lockedRotorAmps=9.6/4.8 A")]
    [InlineData("lockedRotorAmps=4.8 A")]
    public void Of_two_voltages_the_lower_decides(string locked) =>
        Asked.Of("ohmsCommonToRun=2 Ω", $"type=shaded pole; voltage=115/230 V; phase=1; {locked}").Checks.Single(check => check.Title == "Ohms against the plate").Limit.ShouldBe("under 0.24 Ω it is shorted, from 1.198 Ω on as a sound one");

    [Theory]
    [InlineData("ohmsCommonToRun=0.2 Ω; ohmsCommonToStart=45 Ω; ohmsRunToStart=45.1 Ω", "type=PSC; phase=1; voltage=230 V")]
    [InlineData("ohmsCommonToRun=0.2 Ω; ohmsCommonToStart=45 Ω; ohmsRunToStart=45.1 Ω", "type=PSC; phase=1; fullLoadAmps=1.9 A")]
    [InlineData("ohmsCommonToRun=open", Quarter)]
    [InlineData("ohmsCommonToRun=0.2 Ω", Asked.Electronic)]
    public void Without_volts_amps_or_ohms_nothing_is_said(string readings, string plate) => Asked.Verdict<OhmsAgainstPlate>(readings, plate).ShouldBeNull();

    [Theory]
    [InlineData("phase=3; voltage=230 V", "fullLoadAmps")]
    [InlineData("phase=3; fullLoadAmps=130 A", "voltage")]
    public void A_winding_of_nothing_at_all_is_not_condemned_before_the_motor_s_size_is_known(string plate, string asked)
    {
        var next = Asked.Of("ohmsOneToTwo=0 Ω; ohmsTwoToThree=0 Ω; ohmsOneToThree=0 Ω", plate).Next.ShouldNotBeNull();
        (next.Field, next.Side).ShouldBe((asked, (Side?)Side.Plate));
    }

    // A 50 hp motor at 230 V has some hundredths of an ohm, which a common meter shows as nothing.
    [Fact]
    public void A_large_motor_whose_ohms_no_meter_shows_is_not_condemned() =>
        Asked.Verdict<OhmsAgainstPlate>("ohmsOneToTwo=0 Ω; ohmsTwoToThree=0 Ω; ohmsOneToThree=0 Ω", "phase=3; voltage=230 V; fullLoadAmps=130 A").ShouldBe(ReadingVerdict.CantTell);

    /// <summary>A sound motor by what its copper loses: a share of all its losses, which its efficiency tells.</summary>
    private sealed record Sound(string Type, double Volts, double LineAmps, double Efficiency, double PowerFactor, double CopperShare, double LockedTimes, double Cold, double Leads, bool MayHaveTwoVoltages, bool MarksLocked)
    {
        private bool IsThree => Type == "three-phase induction";

        public string Plate => FormattableString.Invariant($"type={Type}; phase={(IsThree ? 3 : 1)}; voltage={Taps}; {(MarksLocked ? "lockedRotorAmps" : "fullLoadAmps")}={Row(LineAmps * (MarksLocked ? LockedTimes : 1))}");

        private double InputWatts => Volts * LineAmps * PowerFactor * (IsThree ? Math.Sqrt(3) : 1);

        // Between two lines lie two of the three phases of a star.
        private double Ohms => CopperShare * (1 - Efficiency) * InputWatts / (LineAmps * LineAmps) * (IsThree ? 2.0 / 3 : 1) * Cold;

        // Windings alike within 2 %, or a start winding of 1.7 times the run winding's ohms, as a meter with tenths and leads of its own shows them.
        public string Readings =>
            IsThree ? $"ohmsOneToTwo={Shown(1)}; ohmsTwoToThree={Shown(1.02)}; ohmsOneToThree={Shown(1.01)}"
            : Type == "shaded pole" ? $"ohmsCommonToRun={Shown(1)}"
            : $"ohmsCommonToRun={Shown(1)}; ohmsCommonToStart={Shown(1.7)}; ohmsRunToStart={Shown(2.7)}";

        private string Shown(double times) => FormattableString.Invariant($"{(Ohms * times) + Leads:0.0} Ω");

        private bool HasTwoVoltages => MayHaveTwoVoltages && Volts is (115 or 230);

        private FormattableString Taps => HasTwoVoltages ? (FormattableString)$"{Volts:0}/{2 * Volts:0} V" : $"{Volts:0} V";

        private FormattableString Row(double amps) => HasTwoVoltages ? (FormattableString)$"{amps:0.####}/{amps / 2:0.####} A" : $"{amps:0.####} A";
    }

    /// <summary>From 0.2 to 100 A; efficiency, power factor and locked-rotor amps as the types have them (facts on motor input); copper 15 to 60 % of the losses, and from −20 °C to hot.</summary>
    private static Gen<Sound> SoundMotors() =>
        from type in Gen.Elements(
            (Name: "three-phase induction", Efficiency: (0.3, 0.95), Factor: (0.5, 0.9), Locked: (4.0, 10.0)),
            (Name: "PSC", Efficiency: (0.25, 0.77), Factor: (0.85, 0.98), Locked: (1.5, 6.0)),
            (Name: "shaded pole", Efficiency: (0.08, 0.33), Factor: (0.5, 0.7), Locked: (1.2, 2.5)),
            (Name: "capacitor start", Efficiency: (0.5, 0.87), Factor: (0.55, 0.95), Locked: (4.0, 8.0)))
        from volts in Gen.Elements(115.0, 208.0, 230.0, 460.0)
        from amps in Share().Select(share => 0.2 * Math.Pow(500, share))
        from shares in Gen.ArrayOf(Share(), 6)
        from flags in Gen.Choose(0, 3)
        select new Sound(type.Name, volts, amps, Between(type.Efficiency, shares[0]), Between(type.Factor, shares[1]), Between((0.15, 0.6), shares[2]), Between(type.Locked, shares[3]), Between((0.65, 1), shares[4]), Between((0, 0.3), shares[5]), (flags & 1) > 0, (flags & 2) > 0);

    /// <summary>0 to 1, its ends more often than not.</summary>
    private static Gen<double> Share() => Gen.OneOf(Gen.Elements(0.0, 1.0), Gen.Choose(0, 1000).Select(thousandths => thousandths / 1000.0));

    private static double Between((double Least, double Most) ends, double share) => ends.Least + ((ends.Most - ends.Least) * share);

    [Property(MaxTest = 400)]
    public Property A_sound_motor_s_winding_is_never_condemned() => Prop.ForAll(
        SoundMotors().ToArbitrary(),
        motor => Asked.Of(motor.Readings, motor.Plate).Checks.ShouldAllBe(check => check.Verdict != ReadingVerdict.Bad));
}
