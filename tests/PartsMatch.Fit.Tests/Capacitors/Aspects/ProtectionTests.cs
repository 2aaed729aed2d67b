using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>Protected type: practice.</summary>
[Trait("Source", "capacitor.protection")]
public sealed class ProtectionTests : CapacitorAspectTests<Protection, ProtectedFacet>
{
    [Theory]
    [InlineData("isProtected=yes", "Meets")]
    [InlineData("isProtected=no", "Fails")]
    [InlineData("", "Unknown Part isProtected")]
    public void A_run_capacitor_disconnects_itself(string part, string answer) => Answer("isProtected=no", "", part).ShouldBe(answer);
}
