using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Wires are ended anew: practice.</summary>
[Trait("Source", "contactor.terminalsOfContactor")]
public sealed class TerminalsOfContactorTests : ContactorAspectTests<TerminalsOfContactor, TerminalsFacet>
{
    [Theory]
    [InlineData("terminals=screws", "terminals=screws, quick connects", "Meets")]
    [InlineData("terminals=quick connects", "terminals=lugs", "MeetsWithChanges fitTerminals")]
    [InlineData("", "terminals=lugs", "Unknown Plate terminals")]
    [InlineData("terminals=lugs", "", "Unknown Part terminals")]
    public void Wires_go_on_as_they_end(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void Two_wire_ends_a_line_are_brought() =>
        Judge("poleCount=2P; terminals=quick connects", "", "terminals=lugs").Changes.ShouldHaveSingleItem().Kit.ShouldHaveSingleItem().Quantity.ShouldBe(4);
}
