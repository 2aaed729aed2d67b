using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>All coils within the transformer's VA: practice. 40 − 30 = 10 VA worked by hand.</summary>
[Trait("Source", "contactor.coilPower")]
public sealed class CoilPowerTests : ContactorAspectTests<CoilPower, CoilPowerFacet>
{
    [Theory]
    [InlineData("", "transformerVa=40 VA; otherCoilsVa=30 VA", "coilVa=10 VA", "Meets")]
    [InlineData("", "transformerVa=40 VA; otherCoilsVa=30 VA", "coilVa=10.1 VA", "Fails")]
    [InlineData("", "transformerVa=40 VA; otherCoilsVa=30 VA", "coilVa=9.9 VA", "Meets")]
    [InlineData("coilVa=12 VA", "transformerVa=40 VA; otherCoilsVa=30 VA", "coilVa=11 VA", "Fails")]
    [InlineData("", "transformerVa=40 VA", "coilVa=40.1 VA", "Fails")]
    [InlineData("", "transformerVa=40 VA", "coilVa=10 VA", "Unknown Site otherCoilsVa")]
    [InlineData("coilVa=10 VA", "", "coilVa=10 VA", "Meets")]
    [InlineData("coilVa=9.9 VA", "", "coilVa=10 VA", "Unknown Site transformerVa")]
    [InlineData("", "", "coilVa=10 VA", "Unknown Site transformerVa")]
    [InlineData("coilVa=10 VA", "", "", "Unknown Part coilVa")]
    [InlineData("", "controlVolts=100 V", "coilVa=10 VA", "Meets")] // it hangs on the line
    [InlineData("", "controlVolts=99.9 V", "coilVa=10 VA", "Unknown Site transformerVa")]
    [InlineData("coilVolts=208-240 V", "", "coilVa=10 VA", "Meets")]
    [InlineData("coilVolts=24/120 V", "", "coilVa=10 VA", "Unknown Site transformerVa")] // on which of the two is not known
    [InlineData("", "controlVolts=120 V; transformerVa=100 VA", "coilVa=10 VA", "Unknown Site otherCoilsVa")] // a transformer for the control circuit
    public void The_coil_stays_within_what_is_left(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>A body whose own coil is for 120 V and takes 10 VA; that for 24 V takes 15 VA.</summary>
    private const string Body = "coilVolts=120 V; coilFrequency=60 Hz; coilVa=10 VA; furtherCoils=24 V 60 Hz 15 VA = QV-24";

    private const string Left = "transformerVa=40 VA; otherCoilsVa=26 VA"; // 14 VA

    [Theory]
    [InlineData("controlVolts=120 V; controlFrequency=60 Hz", Body, "Meets")]
    [InlineData("controlVolts=24 V; controlFrequency=60 Hz", Body, "Fails")] // the coil that goes in
    [InlineData("controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz; coilVa=15 VA; furtherCoils=24 V 60 Hz 14 VA = QV-24", "Meets")]
    [InlineData("controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz; coilVa=10 VA; furtherCoils=24 V 60 Hz = QV-24", "Unknown Part furtherCoils")]
    [InlineData("controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz; coilVa=10 VA; furtherCoils=480 V 60 Hz 20 VA = QV-480", "Meets")] // none goes in: the coil's own question
    [InlineData("", Body, "Unknown Site controlVolts")] // either may be the one
    [InlineData("", "coilVolts=120 V; coilFrequency=60 Hz; coilVa=15 VA; furtherCoils=24 V 60 Hz 15 VA = QV-24", "Fails")] // too much whichever it is
    [InlineData("", "coilVolts=120 V; coilFrequency=60 Hz; coilVa=10 VA; furtherCoils=24 V 60 Hz 14 VA = QV-24", "Meets")]
    [InlineData("controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=24 V; coilVa=10 VA; furtherCoils=24 V 60 Hz 15 VA = QV-24", "Unknown Part coilFrequency")]
    public void The_coil_that_goes_in_counts(string site, string part, string answer) => Answer("", $"{Left}; {site}", part).ShouldBe(answer);

    [Fact]
    public void The_sentence_names_the_coil_that_goes_in() =>
        Judge("", $"{Left}; controlVolts=24 V; controlFrequency=60 Hz", Body).Sentence.ShouldBe("Its coil for 24 V 60 Hz takes 15 VA; the transformer has 14 VA left.");

    /// <summary>30 − 20 = 10 VA, worked by hand.</summary>
    [Fact]
    public void A_transformer_that_is_overloaded_already_is_said_to_be() =>
        Judge("", "transformerVa=20 VA; otherCoilsVa=30 VA", "coilVa=8 VA").Sentence.ShouldEndWith("takes 8 VA; the transformer has nothing left: all else on it takes 10 VA more than it gives.");

    [Theory]
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz; coilVa=15 VA", Body, "Meets")] // no more than the old one took
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz; coilVa=14 VA", Body, "Unknown Site transformerVa")]
    public void Without_the_transformers_the_old_coils_are_compared_with_the_one_that_goes_in(string plate, string part, string answer) => Answer(plate, "controlVolts=24 V", part).ShouldBe(answer);
}
