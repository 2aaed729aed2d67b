using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Tests.Columns;

/// <summary>A facet is what its bytes say, and its bytes are what it is.</summary>
public sealed class FacetFormTests
{
    public static TheoryData<string> Kinds => [.. Families.All.Select(family => family.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_facet_of_every_family_comes_back_equal_and_two_have_the_same_bytes_when_they_are_equal(string kind)
    {
        var family = Families.Find(kind)!;
        var pairs = TextPool.TextsOf(family.SpecShape, 7).Two();
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(1000), Prop.ForAll(pairs.ToArbitrary(), pair =>
        {
            var (one, other) = (family.Deduce(family.ReadSpec(pair.Item1).Spec).Spec, family.Deduce(family.ReadSpec(pair.Item2).Spec).Spec);
            foreach (var aspect in family.Aspects)
            {
                var (facet, others) = (aspect.FacetOf(one), aspect.FacetOf(other));
                var back = ReadBack(aspect.FacetType, facet);
                back.ShouldBeOfType(aspect.FacetType);
                back.ShouldBe(facet, aspect.Name);
                back.GetHashCode().ShouldBe(facet.GetHashCode(), aspect.Name);
                Written(aspect.FacetType, facet).SequenceEqual(Written(aspect.FacetType, others)).ShouldBe(facet.Equals(others), aspect.Name);
            }
        }));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_is_read_of_a_part_of_which_nothing_is_known_comes_back_too(string kind)
    {
        var family = Families.Find(kind)!;
        foreach (var aspect in family.Aspects)
        {
            var nothing = aspect.FacetOf(family.ReadSpec([]).Spec);
            ReadBack(aspect.FacetType, nothing).ShouldBe(nothing, aspect.Name);
            var ofZeros = Activator.CreateInstance(aspect.FacetType)!;
            ReadBack(aspect.FacetType, ofZeros).ShouldBe(ofZeros, aspect.Name);
        }
    }

    [Property(MaxTest = 2000)]
    public void A_number_comes_back_bit_for_bit(double number, int thousandths)
    {
        foreach (var one in (double[])[number, thousandths / 1000.0, Math.BitIncrement(thousandths / 1000.0), thousandths * 1e9, 1 / number])
        {
            var back = ((Measured)ReadBack(typeof(Measured), new Measured(one))).Number;
            back.ShouldBe(one);
            if (one != 0) BitConverter.DoubleToInt64Bits(back).ShouldBe(BitConverter.DoubleToInt64Bits(double.IsNaN(one) ? double.NaN : one));
        }
    }

    [Fact]
    public void Equal_zeros_have_the_same_bytes() => Written(typeof(Measured), new Measured(-0.0)).ShouldBe(Written(typeof(Measured), new Measured(0)));

    [Theory]
    [InlineData(typeof(WithText))]
    [InlineData(typeof(WithList))]
    public void A_facet_that_could_not_come_back_whole_is_refused_at_once(Type facet) => Should.Throw<NotSupportedException>(() => FacetForm.Of(facet));

    [Fact]
    public void What_a_facet_keeps_beside_its_parameters_comes_back_too() => ReadBack(typeof(WithMore), new WithMore(1) { More = 2 }).ShouldBe(new WithMore(1) { More = 2 });

    private static object ReadBack(Type type, object facet) => FacetForm.Of(type).ReadWhole(Written(type, facet));

    private static byte[] Written(Type type, object facet)
    {
        using var bytes = new MemoryStream();
        using var to = new BinaryWriter(bytes);
        FacetForm.Of(type).Write(to, facet);
        return bytes.ToArray();
    }

    private readonly record struct Measured(double Number);

    private readonly record struct WithText(string Text);

    private readonly record struct WithList(int Number, IReadOnlyList<int> Others);

    private readonly record struct WithMore(int Number)
    {
        public int More { get; init; }
    }
}
