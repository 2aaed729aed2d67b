namespace PartsMatch.Browser.Tests.Journeys;

/// <summary>A counter clerk adds, changes and retires parts: with script and without, and by keyboard alone. Each test has parts of its own.</summary>
public sealed class CatalogueTests(SmallSite site) : IClassFixture<SmallSite>
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task A_part_is_added_once_all_that_was_wrong_is_put_right(bool hasScript) => site.VisitSignedInAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        var number = hasScript ? "ADD-1" : "ADD-2";
        await visitor.GoAsync("/parts/new");
        await visitor.Field("number").FillAsync(number);
        await visitor.FillAsync("spec.power", "1/4 hp");
        await visitor.FillAsync("spec.speed", "fast");
        visitor.Expect(422);
        await visitor.PressAsync("Add it");

        (await visitor.Page.Locator("[role=alert] li").CountAsync()).ShouldBe(3, "maker, title and speed at once");
        (await visitor.Field("number").InputValueAsync()).ShouldBe(number);
        (await visitor.Field("spec.speed").InputValueAsync()).ShouldBe("fast");
        await visitor.Field("maker").FillAsync("Quennor");
        await visitor.Field("title").FillAsync("<b>fan</b> motor");
        await visitor.Field("spec.speed").FillAsync("1075 rpm");
        await visitor.PressAsync("Add it");
        (await visitor.HeadingAsync()).ShouldBe(number);
        (await visitor.Page.Locator("main").InnerTextAsync()).ShouldContain("<b>fan</b> motor");

        // The number is taken now, however it is written.
        await visitor.GoAsync("/parts/new");
        foreach (var (field, text) in ((string, string)[])[("number", number.Replace("-", " ", StringComparison.Ordinal)), ("maker", "Zavvo"), ("title", "another")]) await visitor.Field(field).FillAsync(text);
        visitor.Expect(409);
        await visitor.PressAsync("Add it");
        (await visitor.Page.Locator("[role=alert]").InnerTextAsync()).ShouldContain($"The catalogue has a part {number} already.");
        (await visitor.Field("title").InputValueAsync()).ShouldBe("another");
    });

    [Fact]
    public Task A_part_is_added_changed_and_retired_with_the_keyboard_alone() => site.VisitSignedInAsync(Look.Desk.WithoutScript, async visitor =>
    {
        var keyboard = visitor.Page.Keyboard;
        await visitor.GoAsync("/parts/new");
        foreach (var (field, text) in ((string, string)[])[("number", "KEYS-1"), ("maker", "Quennor"), ("title", "fan motor")])
        {
            await TabToAsync(visitor, visitor.Field(field));
            await keyboard.TypeAsync(text);
        }

        // Enter in an input sends the form, whatever buttons stand before it.
        await keyboard.PressAsync("Enter");
        await visitor.Page.GetByRole(AriaRole.Heading, new() { Name = "KEYS-1", Exact = true }).WaitForAsync();

        await TabToAsync(visitor, visitor.Page.GetByRole(AriaRole.Link, new() { Name = "Change it" }));
        await keyboard.PressAsync("Enter");
        await TabToAsync(visitor, visitor.Field("title"));
        await keyboard.PressAsync("ControlOrMeta+A");
        await keyboard.TypeAsync("fan motor, painted");
        await TabToAsync(visitor, visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }));
        await keyboard.PressAsync("Space");
        await visitor.Page.Locator(".history li").Nth(1).WaitForAsync();
        (await visitor.Page.Locator("p.title").First.InnerTextAsync()).ShouldContain("fan motor, painted");

        await TabToAsync(visitor, visitor.Page.GetByRole(AriaRole.Link, new() { Name = "Retire it" }));
        await keyboard.PressAsync("Enter");
        await TabToAsync(visitor, visitor.Page.GetByRole(AriaRole.Button, new() { Name = "Retire it" }));
        await keyboard.PressAsync("Enter");
        await visitor.Page.GetByText("Retired:").WaitForAsync();
    });

    [Theory]
    [InlineData(true, "QN-100")]
    [InlineData(false, "QN-200")]
    public Task Two_clerks_who_change_one_part_see_both_versions_and_lose_neither(bool hasScript, string number) => site.VisitSignedInAsync(Look.Desk with { HasScript = hasScript }, async visitor =>
    {
        await visitor.GoAsync($"/parts/{number}/change");
        await visitor.FillAsync("spec.frame", "48Y");
        var other = await visitor.Page.Context.NewPageAsync();
        await other.GotoAsync($"/parts/{number}/change");
        await other.Locator("[id=title]").FillAsync("renamed by the other");
        await other.GetByRole(AriaRole.Button, new() { Name = "Save", Exact = true }).ClickAsync();
        await other.CloseAsync();

        visitor.Expect(409);
        await visitor.PressAsync("Save");
        var table = visitor.Page.Locator("table.conflict");
        (await table.InnerTextAsync()).ShouldContain("renamed by the other");
        (await table.InnerTextAsync()).ShouldContain("48Y");
        await visitor.PressAsync("Take over what they changed and I did not");
        (await visitor.Field("title").InputValueAsync()).ShouldBe("renamed by the other");
        (await visitor.Field("spec.frame").InputValueAsync()).ShouldBe("48Y");
        await visitor.PressAsync("Save");
        (await visitor.HeadingAsync()).ShouldBe(number);
        var text = await visitor.Page.Locator("main").InnerTextAsync();
        text.ShouldContain("renamed by the other");
        text.ShouldContain("48Y");
    });

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task What_is_typed_outlives_units_another_kind_and_a_sign_in_that_ran_out(bool hasScript) => site.VisitSignedInAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        await visitor.GoAsync("/parts/new");
        await visitor.Field("number").FillAsync("KEPT-1");
        await visitor.FillAsync("spec.speed", "fast");
        await visitor.PressAsync("SI");
        await ShouldStandAsync();
        await visitor.PressAsync("run capacitor");
        (await visitor.HeadingAsync()).ShouldBe("Add a run capacitor");
        (await visitor.Field("number").InputValueAsync()).ShouldBe("KEPT-1");
        await visitor.PressAsync("fan motor");
        await ShouldStandAsync();

        await visitor.Page.Context.ClearCookiesAsync();
        visitor.Expect(401);
        await visitor.PressAsync("Add it");
        (await visitor.HeadingAsync()).ShouldBe("Sign in");
        await visitor.SignInAsync(site.Key);
        await ShouldStandAsync();

        async Task ShouldStandAsync()
        {
            (await visitor.Field("number").InputValueAsync()).ShouldBe("KEPT-1");
            (await visitor.Field("spec.speed").InputValueAsync()).ShouldBe("fast");
        }
    });

    private static async Task TabToAsync(Visitor visitor, ILocator target)
    {
        for (var tabs = 0; tabs < 250; tabs++)
        {
            await visitor.Page.Keyboard.PressAsync("Tab");
            if (await target.First.EvaluateAsync<bool>("one => one === document.activeElement")) return;
        }

        throw new InvalidOperationException($"Tab never came to {target}.");
    }
}
