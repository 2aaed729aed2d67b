namespace PartsMatch.Browser.Tests.Journeys;

public sealed class SignInTests(Site site)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public Task A_page_that_needs_a_key_leads_to_signing_in_and_back_and_out_again(bool hasScript) => site.VisitAsync(Look.Phone with { HasScript = hasScript }, async visitor =>
    {
        await visitor.GoAsync("/parts/new");
        (await visitor.HeadingAsync()).ShouldBe("Sign in");

        await visitor.SignInAsync(site.Key);
        new Uri(visitor.Page.Url).AbsolutePath.ShouldBe("/parts/new");
        (await visitor.Field("number").IsVisibleAsync()).ShouldBeTrue();

        // Signed out beside a form, the page asks for the key at once and keeps what is typed.
        visitor.Expect(401);
        await visitor.PressAsync("Sign out");
        (await visitor.HeadingAsync()).ShouldBe("Sign in");
        await visitor.GoAsync("/parts/new");
        (await visitor.HeadingAsync()).ShouldBe("Sign in");
    });
}
