namespace PartsMatch.Browser.Tests.Support;

/// <summary>One page of the service at an address that fills it. A page that is listed here is tested for all that every page has to keep.</summary>
/// <param name="Name">As in a file's name.</param>
/// <param name="Address">Path and query.</param>
/// <param name="Status">What it answers.</param>
/// <param name="MostBytes">What it may weigh over the wire with its stylesheets and pictures.</param>
public sealed record SitePage(string Name, string Address, int Status = 200, int MostBytes = 100_000)
{
    /// <summary>The first page is the one that is opened on a roof with one bar of reception.</summary>
    private const int FirstPage = 60_000;

    public static IReadOnlyList<SitePage> All { get; } =
    [
        new("what-failed", "/", MostBytes: FirstPage),
        new("what-failed-capacitor", "/?kind=capacitor", MostBytes: FirstPage),
        new("read-back", Job.At("/")),
        new("complaints", Job.At("/", "plate.speed=fast", "plate.bodyDiameter=wide", "site.hubBore=-1+in", "site.altitude=high"), Status: 422),
        new("parts", Job.At("/replacements")),
        new("parts-nothing-fits", "/replacements?text=HP+5+RPM+1075+V+12+PH+3&site.volts=690&site.supplyPhase=single-phase"),
        new("parts-capacitor", "/replacements?kind=capacitor&text=45/5+MFD+440+VAC"),
        new("sheet", Job.At("/sheet", $"part={Job.FittingPart}")),
        new("sheet-does-not-fit", Job.At("/sheet", $"part={Job.UnfitPart}")),
        new("before", "/before"),
        new("before-answered", Job.At("/before", "read.circuitCalls=yes", "read.leadVolts=0+V")),
        new("after-answered", Job.At("/after", $"part={Job.FittingPart}", "read.motorAmps=9+A")),
        new("after-complaints", Job.At("/after", "read.motorAmps=9+A"), Status: 422),
        new("compare", "/compare"),
        new("compare-answered", $"/compare?old={Job.UnfitPart}&part={Job.FittingPart}"),
    ];

    public static SitePage Named(string name) => All.Single(page => page.Name == name);
}
