using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>What a hub takes: practice.</summary>
[Trait("Source", "motor.shaftToHub")]
public sealed class ShaftToHubTests : BodyAspectTests<ShaftToHub, FormFacet>
{
    [Theory]
    [InlineData("flat", "flat", "Meets")]
    [InlineData("flat", "double flat", "Meets")]
    [InlineData("flat", "round", "MeetsWithChanges fileFlat")]
    [InlineData("flat", "keyway", "MeetsWithChanges fileFlat")]
    [InlineData("double flat", "double flat", "Meets")]
    [InlineData("double flat", "flat", "MeetsWithChanges fileFlat")]
    [InlineData("double flat", "round", "MeetsWithChanges fileFlat")]
    [InlineData("keyway", "keyway", "Meets")]
    [InlineData("keyway", "flat", "Fails")]
    [InlineData("keyway", "double flat", "Fails")]
    [InlineData("keyway", "round", "Fails")]
    [InlineData("round", "round", "Meets")]
    [InlineData("round", "flat", "Meets")]
    [InlineData("round", "keyway", "Meets")]
    public void A_shaft_serves_the_hub_or_has_a_flat_filed(string hub, string shaft, string answer) =>
        Answer("", $"hubHoldsOn={hub}", $"shaftForm={shaft}").ShouldBe(answer);

    [Theory]
    [InlineData("shaftForm=keyway", "", "shaftForm=flat", "Fails")]
    [InlineData("shaftForm=keyway", "hubHoldsOn=flat", "shaftForm=flat", "Meets")]
    [InlineData("", "", "shaftForm=flat", "Unknown Plate shaftForm")]
    [InlineData("", "", "", "Unknown Plate shaftForm")]
    [InlineData("", "", "shaftForm=keyway", "MeetsWithChanges checkHub")]
    [InlineData("shaftForm=keyway", "", "", "Unknown Part shaftForm")]
    [InlineData("shaftForm=flat", "", "", "MeetsWithChanges checkHub")]
    [InlineData("shaftForm=round", "", "", "Meets")]
    public void An_unknown_counts_only_where_a_key_may_be_needed(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("shaftForm=keyway", "bladeStays=no", "shaftForm=flat", "Unknown Site newHubHoldsOn")]
    [InlineData("shaftForm=keyway", "bladeStays=no; hubHoldsOn=keyway; newHubHoldsOn=flat", "shaftForm=flat", "Meets")]
    [InlineData("shaftForm=flat", "bladeStays=no; newHubHoldsOn=keyway", "shaftForm=flat", "Fails")]
    public void Where_the_blade_goes_the_new_hub_counts(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void A_set_screw_stays_clear_of_a_keyway() =>
        Judge("", "hubHoldsOn=round", "shaftForm=keyway").Caution.ShouldNotBeNull().ShouldContain("keyway");
}
