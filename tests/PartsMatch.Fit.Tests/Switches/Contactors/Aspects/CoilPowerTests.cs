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
    public void The_coil_stays_within_what_is_left(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
