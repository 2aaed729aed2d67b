using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.Contactors;

/// <summary>What will be different with another coil.</summary>
public sealed class ContactorDifferencesTests
{
    [Fact]
    public void The_coils_VA_differ_as_they_are_marked()
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts("coilVa=10 VA"), [])).Need;
        var found = ContactorFamily.Contactor.WillDiffer(need, Named.Record<ContactorSpec>("coilVa=7.5 VA")).ShouldHaveSingleItem();
        (found.Old!.Value.Low, found.New!.Value.Low, found.Ratio!.Value.Low).ShouldBe((10, 7.5, 0.75));
        found.Assumptions.ShouldHaveSingleItem().ShouldNotEndWith("."); // lists put their own stop
    }
}
