using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

public sealed class SequenceTests
{
    [Fact]
    public void Sequences_are_equal_when_their_values_are_in_order()
    {
        Sequence<double> one = [115, 230];
        Sequence<double> same = [115, 230];
        Sequence<double> turned = [230, 115];
        (one == same).ShouldBeTrue();
        one.GetHashCode().ShouldBe(same.GetHashCode());
        (one != turned).ShouldBeTrue();
        one.Equals((object)same).ShouldBeTrue();
    }

    [Fact]
    public void The_default_is_empty()
    {
        Sequence<double> none = [];
        none.ShouldBe(default);
        none.ShouldBeEmpty();
        none.Count.ShouldBe(0);
    }
}
