using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

public sealed class MotorAspectsTests
{
    public static TheoryData<string> Names => [.. MotorAspects.All.Select(aspect => aspect.GetType().Name)];

    [Fact]
    public void Every_aspect_of_motors_is_listed_once()
    {
        var written = typeof(MotorAspects).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(Aspect)) && !type.IsAbstract && type.Namespace == "PartsMatch.Fit.Motors.Aspects");
        MotorAspects.All.Select(aspect => aspect.GetType()).ShouldBe(written, ignoreOrder: true);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_aspect_has_a_title_a_source_and_a_test_class_named_after_it(string name)
    {
        var aspect = MotorAspects.All.Single(one => one.GetType().Name == name);
        aspect.Title.ShouldNotBeNullOrWhiteSpace();
        aspect.Source.Text.ShouldNotBeNullOrWhiteSpace();
        var tests = GetType().Assembly.GetType($"PartsMatch.Fit.Tests.Motors.Aspects.{name}Tests");
        tests.ShouldNotBeNull();
        tests.BaseType!.GenericTypeArguments[0].ShouldBe(aspect.GetType());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_facet_equals_that_of_an_equal_part_and_its_hash_too(string name)
    {
        // A query judges once a distinct facet: a facet that is never equal would be judged for every part.
        var aspect = MotorAspects.All.Single(one => one.GetType().Name == name);
        const string texts = "voltage=115/208-230 V; connectedFor=115 V; phase=1; frequency=50/60 Hz; power=1/4 hp; speed=900/1075 rpm; type=PSC; speeds=2; runCapacitor=5/370; "
            + "mounts=band, studs; shaftDiameter=1/2 in; bodyDiameter=5.6 in; rotation=CW shaft end; enclosure=TEAO";
        var one = aspect.FacetOf(MotorFamily.Motor.ReadSpec(Named.Texts(texts)).Spec);
        var other = aspect.FacetOf(MotorFamily.Motor.ReadSpec(Named.Texts(texts.Replace("1/2 in", "12.7 mm", StringComparison.Ordinal))).Spec);
        other.ShouldBe(one);
        other.GetHashCode().ShouldBe(one.GetHashCode());
    }
}
