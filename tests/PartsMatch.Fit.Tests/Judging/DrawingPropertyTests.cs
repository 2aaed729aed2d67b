using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What holds of every family's drawings, whatever is known.</summary>
public sealed class DrawingPropertyTests
{
    public static TheoryData<string> Kinds => [.. Families.All.Select(family => family.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Drawings_have_names_of_their_own_words_and_finite_figures_whatever_is_known(string kind)
    {
        var family = Families.Find(kind)!;
        var cases =
            from plate in TextPool.TextsOf(family.SpecShape, 9)
            from site in TextPool.TextsOf(family.SiteShape, 4)
            from part in TextPool.TextsOf(family.SpecShape, 9)
            select (plate, site, part);
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(1000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            var drawings = family.Drawings(family.ReadNeed(new(null, one.plate, one.site)).Need, family.ReadSpec(one.part).Spec);
            drawings.Select(drawing => drawing.Name).ShouldBeUnique();
            drawings.ShouldAllBe(drawing => drawing.Title.Length > 0 && drawing.Words.EndsWith('.'));
            Points(drawings).ShouldAllBe(point => double.IsFinite(point.X) && double.IsFinite(point.Y));
        }));
    }

    private static IEnumerable<Point> Points(IEnumerable<Drawing> drawings) => drawings.SelectMany(IEnumerable<Point> (drawing) => drawing switch
    {
        Chart chart => [new(chart.X.Range.Low, chart.X.Range.High), new(chart.Y.Range.Low, chart.Y.Range.High), .. chart.Marks.Select(mark => mark.At), .. chart.Curves.SelectMany(curve => curve.Points), .. chart.Bands.SelectMany(area => area.Lower.Concat(area.Upper))],
        Scale scale => [new(scale.Range.Low, scale.Range.High), .. scale.Marks.Select(mark => new Point(mark.At.Low, mark.At.High)), .. scale.Zones.Select(zone => new Point(zone.Span.Low, zone.Span.High))],
        Sketch sketch => [new(sketch.Width, sketch.Height), .. sketch.Pieces.OfType<Outline>().SelectMany(outline => outline.Corners)],
        _ => [],
    });
}
