using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Another mount is a change: practice.</summary>
[Trait("Source", "contactor.mountOfContactor")]
public sealed class MountOfContactorTests : ContactorAspectTests<MountOfContactor, ContactorMountFacet>
{
    [Theory]
    [InlineData("mounts=base plate", "mounts=base plate", "Meets")]
    [InlineData("mounts=base plate", "mounts=base plate, DIN rail", "Meets")]
    [InlineData("mounts=base plate", "mounts=DIN rail", "MeetsWithChanges fitMount")]
    [InlineData("mounts=socket", "mounts=bracket", "MeetsWithChanges fitMount")]
    [InlineData("", "mounts=bracket", "Unknown Plate mounts")]
    [InlineData("mounts=socket", "", "Unknown Part mounts")]
    public void It_goes_onto_what_is_there(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("DIN rail", "fit a piece of 35 mm rail for it")]
    [InlineData("socket", "fit a socket for it, and wire that")]
    [InlineData("bracket", "drill new holes for its bracket")]
    public void The_change_is_named(string mount, string change) => Judge("mounts=base plate", "", $"mounts={mount}").Changes.ShouldHaveSingleItem().Text.ShouldBe(change);
}
