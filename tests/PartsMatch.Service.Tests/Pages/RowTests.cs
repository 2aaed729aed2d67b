using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Pages.Replacements;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>What the list says of one part.</summary>
public sealed class RowTests
{
    private const string Whole = "rating=5 µF 370 V; duty=run; tolerance=6 %; isProtected=yes; temperatureMost=70 °C; frequency=50/60 Hz; can=round; diameter=1.5 in; height=3 in";

    private static readonly Family Capacitors = Families.Find("capacitor")!;

    /// <summary>A part that fits once something was looked at does not meet every question as it is.</summary>
    [Theory]
    [InlineData(Whole, true)]
    [InlineData("rating=5 µF 440 V; duty=run; tolerance=6 %; isProtected=yes; temperatureMost=70 °C; frequency=50/60 Hz; can=round; diameter=1.5 in; height=3 in", true)]
    [InlineData("rating=5 µF 370 V; duty=run; tolerance=6 %; isProtected=yes; temperatureMost=70 °C; frequency=50/60 Hz; can=round; diameter=1.5 in", false)]
    [InlineData("rating=5 µF 370 V", false)]
    public void Every_question_is_met_where_nothing_is_to_be_changed_checked_or_found_out(string part, bool meetsAll)
    {
        var need = Capacitors.ReadNeed(new(null, Texts(Whole), [])).Need;
        var sheet = Capacitors.Judge(need, Capacitors.ReadSpec(Texts(part)).Spec);
        new Row(null!, new Explained(sheet, [], Score.Zero, null)).MeetsAll.ShouldBe(meetsAll, string.Join(" ", sheet.Findings.Select(one => $"{one.Aspect.Name}: {one.Finding.Verdict} {one.Finding.Sentence}")));
    }

    private static NamedText[] Texts(string texts) => [.. texts.Split("; ").Select(text => text.Split('=')).Select(pair => new NamedText(pair[0], pair[1]))];
}
