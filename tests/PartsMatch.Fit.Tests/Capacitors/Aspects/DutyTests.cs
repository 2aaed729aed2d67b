using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>Run and start capacitors are of two standards: IEC 60252-1 and -2 (published). That two sections or protection tell a run capacitor: practice.</summary>
[Trait("Source", "capacitor.duty")]
public sealed class DutyTests : CapacitorAspectTests<Duty, DutyFacet>
{
    [Theory]
    [InlineData("duty=run", "Meets")]
    [InlineData("duty=start", "Fails")]
    [InlineData("", "Unknown Part duty")]
    [InlineData("rating=5 µF 370 V", "Unknown Part duty")]
    [InlineData("rating=45+5 µF 440 V", "Meets")]
    [InlineData("isProtected=yes", "Meets")]
    [InlineData("isProtected=no", "Unknown Part duty")]
    [InlineData("isProtected=yes; duty=start", "Fails")]
    public void Only_a_run_capacitor_stays_in_circuit(string part, string answer) => Answer("", "", part).ShouldBe(answer);
}
