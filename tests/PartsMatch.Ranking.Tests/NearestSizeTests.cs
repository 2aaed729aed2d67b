using PartsMatch.Fit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>Of two parts that differ in one figure, the one that has the old part's stands first. Numbers are such that a tie would put the other first.</summary>
public sealed class NearestSizeTests
{
    private const string Motor =
        "type=PSC; power=1/3 hp; speed=1075 rpm; speeds=1; frequency=60 Hz; voltage=208-230 V; phase=1; fullLoadAmps=2.6 A; runCapacitor=5 µF 370 V; "
        + "mounts=band; bodyDiameter=5.6 in; shaftDiameter=1/2 in; shaftLength=4 in; shaftForm=flat; shaftEnds=1; rotation=CW lead end; reversing=by plug; enclosure=TEAO; protection=automatic";

    [Theory]
    [InlineData("power=1/3 hp", "power=1/2 hp", "")]
    [InlineData("power=1/3 hp", "power=1/2 hp", "volts=230 V")]
    [InlineData("power=1/3 hp", "power=1/2 hp", "volts=208 V")]
    [InlineData("power=1/3 hp", "power=1/2 hp", "volts=245 V")]
    [InlineData("power=1/3 hp", "power=3/4 hp", "volts=230 V")]
    [InlineData("power=1/4 hp", "power=1/3 hp", "volts=230 V")]
    [InlineData("speed=1075 rpm", "speed=1100 rpm", "volts=230 V")]
    [InlineData("bodyDiameter=5.6 in", "bodyDiameter=6.3 in", "volts=230 V")]
    [InlineData("shaftLength=4 in", "shaftLength=6 in", "volts=230 V")]
    [InlineData("fullLoadAmps=2.6 A", "fullLoadAmps=3.1 A", "volts=230 V")]
    public void The_old_motor_s_own_size_ranks_before_another(string same, string other, string site)
    {
        var old = With(Motor, same);
        var family = Families.Find("motor")!;
        var catalogue = Catalogue.Of(family, [new("A-OTHER", Spec(family, With(Motor, other)), IsOffered: true), new("B-SAME", Spec(family, old), IsOffered: true)]);
        var need = family.ReadNeed(new(null, Texts(old), Texts(site))).Need;

        var page = Ranker.Rank(catalogue, Weights.HandSet(family), new(need, null, 10, null)).ShouldBeOfType<RankingPage.Listed>();
        page.Parts[0].Number.ShouldBe("B-SAME");
    }

    private static string With(string texts, string text) => string.Join("; ", texts.Split("; ").Select(one => one.Split('=')[0] == text.Split('=')[0] ? text : one));

    internal static Spec Spec(Family family, string texts)
    {
        var (spec, complaints) = family.ReadSpec(Texts(texts));
        complaints.ShouldBeEmpty();
        return spec;
    }

    internal static IReadOnlyList<NamedText> Texts(string texts) =>
        [.. texts.Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(text => text.Split('=', 2)).Select(pair => new NamedText(pair[0], pair[1]))];
}
