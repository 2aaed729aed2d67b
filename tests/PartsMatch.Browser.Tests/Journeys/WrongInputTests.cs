namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>Whatever is typed is answered on the page it was typed on, and nothing of it is lost.</summary>
public sealed class WrongInputTests(Site site)
{
    /// <summary>All of it, or as much as there is room for.</summary>
    private const string IsInSight = "one => { const box = one.getBoundingClientRect(); return box.bottom >= 0 && box.bottom <= innerHeight && (box.top >= 0 || box.height > innerHeight / 3); }";
    private const string HasFocusInSight = "one => { const box = one.getBoundingClientRect(); return box.top >= 0 && box.bottom <= innerHeight && document.activeElement === one; }";

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task Nothing_typed_is_answered_with_what_to_type(bool hasScript) => site.VisitAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        await SendAsync(visitor, string.Empty, "Read it");
        (await visitor.Page.Locator("[id=text-wrong]").InnerTextAsync()).ShouldBe("Nothing is typed yet: the plate's text, the old part's number, or a field below.");
        await ShouldJumpAsync(visitor, 1);
    });

    [Theory]
    [InlineData("asdf qwer zxcv")]
    [InlineData("🔥🥵🧊")]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("' OR 1=1 --")]
    [InlineData("Q9-NO-SUCH-NUMBER")]
    public Task A_text_in_which_nothing_is_read_is_kept_and_said_to_be_unreadable(string text) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await SendAsync(visitor, text, "Straight to the parts");
        (await visitor.Field("text").InputValueAsync()).ShouldBe(text);
        (await visitor.Page.Locator("[id=text-wrong]").InnerTextAsync()).ShouldContain($"“{text}”");
        await ShouldJumpAsync(visitor, 1);
    });

    [Fact]
    public Task Five_thousand_characters_are_kept_and_said_to_be_too_many() => site.VisitAsync(Look.Phone, async visitor =>
    {
        var text = string.Concat(Enumerable.Repeat("HP 1/4 RPM 1075 V 208-230 ", 193))[..5_000];
        await SendAsync(visitor, text, "Read it");
        (await visitor.Field("text").InputValueAsync()).ShouldBe(text);
        (await visitor.Page.Locator("[id=text-wrong]").InnerTextAsync()).ShouldContain("5000 characters");
        await ShouldJumpAsync(visitor, 1);
    });

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task All_fields_that_are_wrong_are_told_at_once_each_beside_its_field(bool hasScript) => site.VisitAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        (string Field, string Text)[] bad = [("plate.speed", "fast"), ("plate.bodyDiameter", "1/0 in"), ("site.hubBore", "-3 banana"), ("site.altitude", "😀")];
        await visitor.GoAsync("/");
        await visitor.FillAsync("plate.power", "1/4 hp");
        foreach (var (field, text) in bad) await visitor.FillAsync(field, text);
        visitor.Expect(422);
        await visitor.PressAsync("Find parts that fit");

        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp", "what is right stays as well");
        foreach (var (field, text) in bad)
        {
            var input = visitor.Field(field);
            (await input.IsVisibleAsync()).ShouldBeTrue($"{field}: the group of a wrong field stands open");
            (await input.InputValueAsync()).ShouldBe(text);
            (await input.GetAttributeAsync("aria-invalid")).ShouldBe("true");
            (await input.GetAttributeAsync("aria-describedby"))!.ShouldContain($"{field}-wrong");
            (await visitor.Page.Locator($"[id=\"{field}-wrong\"]").InnerTextAsync()).Length.ShouldBeGreaterThan(10);
        }

        await ShouldJumpAsync(visitor, bad.Length);
    });

    [Fact]
    public Task A_field_that_there_is_none_of_is_shown_and_can_be_emptied() => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync("/?plate.power=1/4+hp&plate.colour=green", 422);
        (await visitor.Field("plate.colour").InputValueAsync()).ShouldBe("green");
        await ShouldJumpAsync(visitor, 1);
        await visitor.Field("plate.colour").FillAsync(string.Empty);
        await visitor.PressAsync("Find parts that fit");
        (await visitor.HeadingAsync()).ShouldBe("Parts that may fit", "1/4 hp alone tells of no motor that it fits");
    });

    [Fact]
    public Task A_part_that_the_catalogue_has_not_is_named_and_the_job_is_kept() => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(Job.At("/sheet", "part=Q9-NONE"), 422);
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("“Q9-NONE”");
        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp");
        (await visitor.Page.Locator("[role=alert] li").CountAsync()).ShouldBe(1);
        (await visitor.Page.Locator("[role=alert] a").CountAsync()).ShouldBe(0, "nothing on the page is to be put right");
        await visitor.PressAsync("Find parts that fit");
        (await visitor.HeadingAsync()).ShouldBe("Parts that fit");
    });

    [Fact]
    public Task A_sheet_s_link_without_a_part_shows_the_parts_to_choose_from() => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(Job.At("/sheet"));
        (await visitor.HeadingAsync()).ShouldBe("Parts that fit");
    });

    [Fact]
    public Task An_old_number_that_is_not_there_is_kept_in_the_box() => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync("/replacements?old=Q9-NONE", 422);
        (await visitor.Field("text").InputValueAsync()).ShouldBe("Q9-NONE");
        (await visitor.Page.Locator("[id=text-wrong]").InnerTextAsync()).ShouldContain("“Q9-NONE”");
        await ShouldJumpAsync(visitor, 1);
    });

    [Theory]
    [InlineData("/")]
    [InlineData("/replacements")]
    [InlineData("/sheet")]
    [InlineData("/before")]
    [InlineData("/after")]
    public Task A_kind_that_there_is_none_of_is_told_and_not_taken_for_another(string path) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync($"{path}?kind=spaceship&part=Q9&plate.power=1/4+hp", 422);
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("“spaceship”");
        (await visitor.Field("plate.power").InputValueAsync()).ShouldBe("1/4 hp");
    });

    [Theory]
    [InlineData("/?text=%E0%A4%A")]
    [InlineData("/?plate.power=%zz")]
    [InlineData("/replacements?text=%&kind=%ff")]
    [InlineData("/sheet?part=%00&text=%E0%A4%A")]
    public Task A_link_that_was_broken_on_its_way_still_shows_the_first_page(string link) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(link, 422);
        (await visitor.HeadingAsync()).ShouldBe("What failed?");
        (await visitor.Page.Locator("[role=alert] li").CountAsync()).ShouldBeGreaterThan(0);
    });

    [Theory]
    [InlineData("nonsense")]
    [InlineData("djE6OTk5OTk5")]
    public Task A_page_of_a_list_that_is_gone_begins_again(string cursor) => site.VisitAsync(Look.Phone, async visitor =>
    {
        await visitor.GoAsync(Job.At("/replacements", $"after={cursor}"));
        (await visitor.HeadingAsync()).ShouldBe("Parts that fit");
        visitor.Page.Url.ShouldNotContain("after=");
        (await visitor.Page.Locator(".parts > li").CountAsync()).ShouldBe(20);
    });

    private static async Task SendAsync(Visitor visitor, string text, string button)
    {
        await visitor.GoAsync("/");
        await visitor.Field("text").FillAsync(text);
        visitor.Expect(422);
        await visitor.PressAsync(button);
        await visitor.Page.Locator("[role=alert]").WaitForAsync();
    }

    /// <summary>Each line of the summary leads to the input that it is about; the same words stand beside it.</summary>
    private static async Task ShouldJumpAsync(Visitor visitor, int complaints)
    {
        var lines = visitor.Page.Locator("[role=alert] li a");
        (await lines.CountAsync()).ShouldBe(complaints);
        foreach (var line in await lines.AllAsync())
        {
            var message = await line.InnerTextAsync();
            await line.ClickAsync();
            var name = Uri.UnescapeDataString((await line.GetAttributeAsync("href"))![1..]);
            (await visitor.Field(name).CountAsync()).ShouldBe(1, message);
            (await visitor.Field(name).EvaluateAsync<bool>(HasFocusInSight)).ShouldBeTrue($"{name} is in sight and can be typed into");
            var beside = visitor.Field($"{name}-wrong");
            (await beside.InnerTextAsync()).ShouldContain(message);
            (await beside.EvaluateAsync<bool>(IsInSight)).ShouldBeTrue($"what is wrong with {name} is in sight");
        }
    }
}
