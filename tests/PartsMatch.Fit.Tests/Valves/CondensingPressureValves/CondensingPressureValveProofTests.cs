using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.CondensingPressureValves;

namespace PartsMatch.Fit.Tests.Valves.CondensingPressureValves;

/// <summary>Condensing-pressure valves before they are condemned and after the swap. Limits are practice.</summary>
[Trait("Source", "reading.headHeld")]
[Trait("Source", "reading.headCharge")]
public sealed class CondensingPressureValveProofTests
{
    [Theory]
    [InlineData("", Conclusion.ReadNext, "headPressure")]
    [InlineData("headPressure=170 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=169 psi", Conclusion.ReadNext, "enoughCharge")]
    [InlineData("headPressure=150 psi; enoughCharge=no", Conclusion.NotThePart, null)]
    [InlineData("headPressure=150 psi; enoughCharge=yes", Conclusion.PartHasFailed, null)]
    [InlineData("headPressure=200 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("headPressure=201 psi", Conclusion.ReadNext, "bypassHot")]
    [InlineData("headPressure=260 psi; bypassHot=yes", Conclusion.PartHasFailed, null)]
    [InlineData("headPressure=260 psi; bypassHot=no", Conclusion.NotThePart, null)]
    public void Readings_tell_whether_it_is_the_valve(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("setting=180 psi", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void Without_a_setting_no_head_condemns_it() => Diagnose("", "headPressure=100 psi").Next!.Field.ShouldBe("settingNeeded");

    [Fact]
    public void A_new_one_is_told_and_never_condemned()
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts("setting=180 psi"), [])).Need;
        CondensingPressureValveFamily.CondensingPressureValve.AfterSwap(need, Named.Record<CondensingPressureValveSpec>("setting=180 psi"), Named.Record<CondensingPressureValveReadings>("headPressure=150 psi; enoughCharge=yes"))
            .Readings.Select(check => check.Verdict).ShouldBe([ReadingVerdict.Good, ReadingVerdict.Bad]);
    }

    [Theory]
    [InlineData("settingLeast=225 psi; settingMost=100 psi", "", "settingLeast settingMost")]
    [InlineData("arrangement=three-way", "needsArrangement=inlet regulator", "arrangement")]
    [InlineData("setting=180 psi", "settingNeeded=100 psi", "setting")]
    [InlineData("setting=180 psi", "settingNeeded=190 psi", "")]
    [InlineData("refrigerants=R-22", "refrigerant=R-404A", "refrigerants")]
    public void What_cannot_all_be_true_is_said(string plate, string site, string fields) =>
        string.Join(' ', CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions.SelectMany(one => one.Fields)).ShouldBe(fields);

    private static Diagnosis Diagnose(string plate, string readings)
    {
        var need = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts(plate), []));
        need.Complaints.ShouldBeEmpty();
        return CondensingPressureValveFamily.CondensingPressureValve.BeforeCondemning(need.Need, Named.Record<CondensingPressureValveReadings>(readings));
    }
}
