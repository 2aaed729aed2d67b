namespace PartsMatch.Browser.Tests.Support;

public sealed class ChromiumTests
{
    [Fact]
    public async Task A_missing_Chromium_is_told_with_the_command_that_installs_it()
    {
        using var playwright = await Playwright.CreateAsync();
        var told = await Should.ThrowAsync<InvalidOperationException>(() => Chromium.StartAsync(playwright, "/no/such/place/chromium"));
        told.Message.ShouldContain("/no/such/place/chromium");
        told.Message.ShouldContain("apt-get install --yes chromium-headless-shell fonts-dejavu-core");
    }
}
