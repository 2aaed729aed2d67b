using System.Globalization;
using System.Xml.Linq;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Service.Pages.Drawings;

namespace PartsMatch.Service.Tests.Pages.Drawings;

/// <summary>Drawings as a page has them: whole, named, and without a style of their own.</summary>
public sealed class DrawingViewTests
{
    private const string Motor = "type=PSC; power=1/3 hp; speed=1075 rpm; poles=6; powerMeaning=output; frequency=60 Hz; voltage=230 V; phase=single-phase; rotation=CW shaft end; shaftForm=flat";

    public static TheoryData<string> Names => ["torqueLines", "shaftEnd", "condensingSplit", "capacitance"];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_drawing_has_a_title_and_words_that_name_it_for_whoever_cannot_see_it(string name)
    {
        var drawing = Find(name);
        var figure = await Rendered(drawing);
        var picture = figure.Element("svg")!;
        ((string?)picture.Attribute("role")).ShouldBe("img");
        picture.Element("title")!.Value.ShouldBe(drawing.Title);
        picture.Element("desc")!.Value.ShouldBe(drawing.Words);
        ((string?)picture.Attribute("aria-labelledby")).ShouldBe($"{picture.Element("title")!.Attribute("id")!.Value} {picture.Element("desc")!.Attribute("id")!.Value}");
        ((string?)picture.Attribute("viewBox"))!.ShouldStartWith("0 0 340 ");
        figure.Element("figcaption")!.Value.ShouldBe(drawing.Title);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task The_look_is_the_stylesheet_s_alone(string name)
    {
        string[] looks = ["style", "fill", "stroke", "stroke-width", "stroke-dasharray", "font-size", "text-anchor", "opacity", "color", "onclick"];
        (await Rendered(Find(name))).DescendantsAndSelf().Attributes().Select(attribute => attribute.Name.LocalName).Intersect(looks).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Every_class_that_is_drawn_stands_in_the_stylesheet(string name)
    {
        var css = await File.ReadAllTextAsync(Path.Combine(Repository.Root, "src", "PartsMatch.Service", "Pages", "Assets", "drawings.css"), TestContext.Current.CancellationToken);
        (await Rendered(Find(name))).DescendantsAndSelf().Attributes("class").SelectMany(attribute => attribute.Value.Split(' ')).Distinct()
            .ShouldAllBe(one => css.Contains($".{one}", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Every_label_of_a_chart_is_written()
    {
        var chart = (Chart)Find("torqueLines");
        var texts = Texts(await Rendered(chart));
        foreach (var label in chart.Curves.Select(curve => curve.Label).Concat(chart.Marks.Select(mark => mark.Label))) texts.ShouldContain(label);
        texts.ShouldContain("Speed, rpm");
        foreach (var area in chart.Bands) string.Join(' ', texts).ShouldContain(area.Label);
    }

    [Fact]
    public async Task Every_figure_of_a_scale_is_written()
    {
        var scale = (Scale)Find("condensingSplit");
        var texts = string.Join(' ', Texts(await Rendered(scale)));
        scale.Marks.ShouldAllBe(mark => texts.Contains(mark.Label, StringComparison.Ordinal));
        texts.ShouldContain("A measured: 26 °F (14.4 K)");
    }

    [Fact]
    public async Task Every_caption_of_a_sketch_is_written_and_its_turn_has_two_arrows()
    {
        var sketch = (Sketch)Find("shaftEnd");
        var figure = await Rendered(sketch);
        Texts(figure).ShouldBe(sketch.Pieces.OfType<Caption>().Select(caption => caption.Text));
        figure.Descendants("path").Count(path => (string?)path.Attribute("class") == "head").ShouldBe(2);
    }

    [Fact]
    public async Task A_label_is_text_whatever_stands_in_it()
    {
        var scale = (Scale)Find("capacitance") with { Words = "<script>alert(1)</script>" };
        (await Rendered(scale)).Descendants("desc").Single().Value.ShouldBe(scale.Words);
    }

    [Fact]
    public async Task Figures_are_written_the_same_where_a_comma_is_the_decimal_sign()
    {
        var before = (await Rendered(Find("torqueLines"))).ToString();
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            (await Rendered(Find("torqueLines"))).ToString().ShouldBe(before);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    private static List<string> Texts(XElement figure) => [.. figure.Descendants("text").Select(text => text.Value)];

    private static Drawing Find(string name)
    {
        var (motor, capacitor) = (Families.Find("motor")!, Families.Find("capacitor")!);
        var need = motor.ReadNeed(new(null, Named(Motor), Named("volts=230 V; supplyFrequency=60 Hz"))).Need;
        var part = motor.ReadSpec(Named(Motor)).Spec;
        var readings = motor.ReadReadings(Named("refrigerant=R-134a; condensingPressure=201.63 psi; enteringAir=105 °F")).Readings;
        IEnumerable<Drawing> all =
        [
            .. motor.Drawings(need, part),
            .. motor.AfterSwap(need, part, readings).Drawings,
            .. capacitor.Drawings(capacitor.ReadNeed(new(null, Named("rating=5/370"), [])).Need, capacitor.ReadSpec(Named("rating=7.5/370")).Spec),
        ];
        return all.Single(drawing => drawing.Name == name);
    }

    private static List<NamedText> Named(string texts) => [.. texts.Split("; ").Select(text => text.Split('=', 2)).Select(pair => new NamedText(pair[0], pair[1]))];

    private static async Task<XElement> Rendered(Drawing drawing)
    {
        await using var services = new ServiceCollection().BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        var html = await renderer.Dispatcher.InvokeAsync(async () =>
            (await renderer.RenderComponentAsync<DrawingView>(ParameterView.FromDictionary(new Dictionary<string, object?> { [nameof(DrawingView.Drawing)] = drawing }))).ToHtmlString());
        return XElement.Parse(html);
    }
}
