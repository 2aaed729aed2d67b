using FsCheck;
using FsCheck.Xunit;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Differential = distance of cut-in and cut-out: published article; 5 psi of a fixed one: practice.</summary>
[Trait("Source", "pressureControl.differentialSpan")]
public sealed class DifferentialSpanTests : PressureControlAspectTests<DifferentialSpan, DifferentialFacet>
{
    [Theory]
    [InlineData("10 psi", "20 psi", "differential=10 to 40 psi", "Meets")]
    [InlineData("10 psi", "19.9 psi", "differential=10 to 40 psi", "Fails")]
    [InlineData("10 psi", "50 psi", "differential=10 to 40 psi", "Meets")]
    [InlineData("10 psi", "50.1 psi", "differential=10 to 40 psi", "Fails")]
    [InlineData("400 psi", "300 psi", "differential=100 psi", "Meets")]
    [InlineData("400 psi", "295 psi", "differential=100 psi", "Meets")]
    [InlineData("400 psi", "294.9 psi", "differential=100 psi", "Fails")]
    [InlineData("400 psi", "300 psi", "", "Unknown Part differential")]
    [InlineData("400 psi", "300 psi", "cutOut=400 psi; cutIn=305 psi", "Meets")] // as shipped, whatever else it can be set to
    [InlineData("400 psi", "300 psi", "cutOut=410 psi; cutIn=305 psi", "Meets")]
    [InlineData("400 psi", "300 psi", "cutOut=400 psi; cutIn=305.1 psi", "Unknown Part differential")]
    [InlineData("400 psi", "300 psi", "cutOut=400 psi", "Unknown Part differential")]
    [InlineData("400 psi", "300 psi", "cutOut=400 psi; cutIn=300 psi; differential=20 to 40 psi", "Fails")]
    [InlineData("400 psi", "300 psi", "reset=manual", "Meets")]
    public void The_distance_lies_within_it(string cutOut, string cutIn, string part, string answer) => Answer("", $"cutOutNeeded={cutOut}; cutInNeeded={cutIn}", part).ShouldBe(answer);

    [Theory]
    [InlineData("10 psi", "40 psi", "differential=10 to 30 psi")]
    [InlineData("10 psi", "60 psi", "differential=10 to 50 psi")]
    [InlineData("5 psi", "30 psi", "differential=25 to 50 psi")]
    public void Edges_in_psi_meet(string cutOut, string cutIn, string part) => Answer("", $"cutOutNeeded={cutOut}; cutInNeeded={cutIn}", part).ShouldBe("Meets");

    /// <summary>Whole psi are no whole tenths of a kPa (6.894757 kPa each), as which the limits are kept.</summary>
    [Property]
    public void Whole_psi_are_judged_as_whole_psi(NonNegativeInt from, PositiveInt distance, PositiveInt width)
    {
        var (cutOut, between, more) = (from.Get % 300, 10 + (distance.Get % 200), 1 + (width.Get % 100));
        var site = FormattableString.Invariant($"cutOutNeeded={cutOut} psi; cutInNeeded={cutOut + between} psi");
        string Of(int least, int most) => Answer("", site, least == most ? FormattableString.Invariant($"differential={least} psi") : FormattableString.Invariant($"differential={least} to {most} psi"));
        Of(between, between + more).ShouldBe("Meets");
        Of(between - 9, between).ShouldBe("Meets");
        Of(between + 1, between + 1 + more).ShouldBe("Fails");
        Of(between - 9, between - 1).ShouldBe("Fails");
        Of(between + 5, between + 5).ShouldBe("Meets");
        Of(between - 5, between - 5).ShouldBe("Meets");
        Of(between + 6, between + 6).ShouldBe("Fails");
        Of(between - 6, between - 6).ShouldBe("Fails");
    }

    [Theory]
    [InlineData("", "Unknown Site cutOutNeeded")]
    [InlineData("cutOutNeeded=10 psi", "Unknown Site cutInNeeded")]
    public void Without_both_it_is_open(string site, string answer) => Answer("", site, "differential=10 to 40 psi").ShouldBe(answer);

    /// <summary>What no contacts of its function can do has no distance to be set.</summary>
    [Theory]
    [InlineData("function=high pressure; cutOut=400 psi; cutIn=300 psi", "cutOutNeeded=250 psi", "Unknown Site cutInNeeded")]
    [InlineData("function=high pressure", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "Unknown Site cutOutNeeded")]
    [InlineData("function=low pressure", "cutOutNeeded=40 psi; cutInNeeded=30 psi", "Unknown Site cutOutNeeded")]
    [InlineData("function=low pressure", "cutOutNeeded=30 psi; cutInNeeded=40 psi", "Meets")]
    public void Settings_the_wrong_way_round_have_no_differential(string plate, string site, string answer) => Answer(plate, site, "differential=5 to 100 psi").ShouldBe(answer);
}
