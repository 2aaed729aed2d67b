using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>A contact for each one in use: practice.</summary>
[Trait("Source", "contactor.auxiliaries")]
public sealed class AuxiliariesTests : ContactorAspectTests<Auxiliaries, AuxiliariesFacet>
{
    [Theory]
    [InlineData("", "auxiliariesUsed=1 NO", "auxiliaries=1 NO + 1 NC", "Meets")]
    [InlineData("", "auxiliariesUsed=1 NO + 1 NC", "auxiliaries=1 NO; takesAuxiliaries=yes", "MeetsWithChanges addAuxiliaries")]
    [InlineData("", "auxiliariesUsed=1 NO + 1 NC", "auxiliaries=1 NO; takesAuxiliaries=no", "Fails")]
    [InlineData("", "auxiliariesUsed=1 NO + 1 NC", "auxiliaries=1 NO", "Unknown Part takesAuxiliaries")]
    [InlineData("", "auxiliariesUsed=1 NC", "auxiliaries=2 NO; takesAuxiliaries=no", "Fails")]
    [InlineData("", "auxiliariesUsed=1 NO", "", "Unknown Part auxiliaries")]
    [InlineData("", "auxiliariesUsed=none", "", "Meets")]
    [InlineData("auxiliaries=1 NO", "", "auxiliaries=none; takesAuxiliaries=no", "Unknown Site auxiliariesUsed")] // it has one: whether it is wired nobody said
    [InlineData("auxiliaries=1 NO", "auxiliariesUsed=1 NO", "auxiliaries=none; takesAuxiliaries=no", "Fails")]
    [InlineData("auxiliaries=1 NO", "", "auxiliaries=1 NO + 1 NC", "Meets")]
    [InlineData("auxiliaries=1 NO", "", "", "Unknown Part auxiliaries")]
    [InlineData("auxiliaries=none", "", "", "Meets")]
    [InlineData("auxiliaries=1 NO", "auxiliariesUsed=none", "auxiliaries=none", "Meets")]
    [InlineData("", "", "auxiliaries=1 NO", "Unknown Site auxiliariesUsed")]
    public void Each_in_use_has_one_in_its_place(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void What_lacks_goes_into_the_kit() =>
        Judge("", "auxiliariesUsed=2 NO + 1 NC", "auxiliaries=1 NO; takesAuxiliaries=yes").Changes.ShouldHaveSingleItem().Kit.ShouldHaveSingleItem().What.ShouldBe("auxiliary contact block for it, 1 NO + 1 NC");
}
