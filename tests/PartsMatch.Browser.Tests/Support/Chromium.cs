namespace PartsMatch.Browser.Tests.Support;

/// <summary>The distribution's Chromium, without a window. Playwright drives it and downloads no browser of its own.</summary>
internal static class Chromium
{
    /// <summary>Names another place than the distribution's.</summary>
    public const string Variable = "PARTSMATCH_CHROMIUM";

    /// <summary>Where Debian's packages put it. The one that never had a window, where it is there, opens a page in a fraction of the time.</summary>
    private static readonly string[] UsualPlaces = ["/usr/bin/chromium-headless-shell", "/usr/bin/chromium"];

    /// <summary>No sandbox, because tests often run as root in a container, where it cannot be had; nothing that would ask the network for anything but the pages.</summary>
    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
        "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    public static string Place => Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } place ? place : UsualPlaces.FirstOrDefault(File.Exists) ?? UsualPlaces[0];

    public static Task<IBrowser> StartAsync(IPlaywright playwright, string place)
    {
        if (!File.Exists(place)) throw new InvalidOperationException(Missing(place));
        return playwright.Chromium.LaunchAsync(new() { ExecutablePath = place, Headless = true, Args = Arguments });
    }

    private static string Missing(string place) =>
        $"There is no Chromium at {place}, and these tests look at the pages in one. Install it with: apt-get install --yes chromium-headless-shell fonts-dejavu-core (as root), or say where it is in {Variable}.";
}
