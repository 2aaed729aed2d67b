using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>The same connection, or a fitting: practice.</summary>
[Trait("Source", "pressureControl.connection")]
public sealed class ConnectionTests : PressureControlAspectTests<Connection, ConnectionFacet>
{
    [Theory]
    [InlineData("connection=capillary", "connection=capillary", "Meets")]
    [InlineData("connection=capillary", "connection=1/4 NPT", "MeetsWithChanges adaptConnection")]
    [InlineData("", "connection=1/4 NPT", "Unknown Plate connection")]
    [InlineData("connection=capillary", "", "Unknown Part connection")]
    public void It_goes_onto_what_is_there(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);
}
