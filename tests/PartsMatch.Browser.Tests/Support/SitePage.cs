namespace PartsMatch.Browser.Tests.Support;

/// <summary>One page of the service at an address that fills it. A page that is listed here is tested for all that every page has to keep.</summary>
/// <param name="Name">As in a file's name.</param>
/// <param name="Address">Path and query.</param>
/// <param name="Status">What it answers.</param>
/// <param name="MostBytes">What it may weigh over the wire with its stylesheets and pictures.</param>
/// <param name="NeedsKey">Whether only someone who signed in sees it.</param>
/// <param name="HasOwnTitle">Whether no other page of the list is about the same thing.</param>
public sealed record SitePage(string Name, string Address, int Status = 200, int MostBytes = 100_000, bool NeedsKey = false, bool HasOwnTitle = false)
{
    /// <summary>The first page is the one that is opened on a roof with one bar of reception.</summary>
    private const int FirstPage = 60_000;

    public static IReadOnlyList<SitePage> All { get; } =
    [
        new("what-failed", "/", MostBytes: FirstPage, HasOwnTitle: true),
        new("what-failed-capacitor", "/?kind=capacitor", MostBytes: FirstPage),
        new("what-failed-contactor", "/?kind=contactor", MostBytes: FirstPage),
        new("what-failed-pressure-control", "/?kind=pressureControl", MostBytes: FirstPage),
        new("replacements-contactor", "/replacements?kind=contactor&text=2+POLE+COIL+24V+60+HZ+30+FLA+150+LRA+240+V"),
        new("replacements-pressure-control", "/replacements?kind=pressureControl&text=LOW+PRESSURE+AUTO+RESET+CUT-IN+30+PSI+DIFF+20+PSI"),
        new("before-contactor", "/before?kind=contactor&plate.coilVolts=24+V&read.coilVolts=20.9+V&read.pullsIn=yes"),
        new("what-failed-defrost-timer", "/?kind=defrostTimer", MostBytes: FirstPage),
        new("replacements-defrost-timer", FamilyJob.Named("defrostTimer").At("/replacements")),
        new("what-failed-read-back", Job.At("/")),
        new("what-failed-complaints", Job.At("/", "plate.speed=fast", "plate.bodyDiameter=wide", "site.hubBore=-1+in", "site.altitude=high"), Status: 422),
        new("replacements", Job.At("/replacements"), HasOwnTitle: true),
        new("replacements-nothing-fits", "/replacements?text=HP+5+RPM+1075+V+12+PH+3&site.volts=690&site.supplyPhase=single-phase"),
        new("replacements-unread", "/replacements?text=HP+1/4+RPM+1075+V+208-230+PH+1+HZ+60&site.volts=230"),
        new("replacements-capacitor", "/replacements?kind=capacitor&text=45/5+MFD+440+VAC"),
        new("replacements-solenoidValve", FamilyJob.Named("solenoidValve").At("/replacements")),
        new("sheet", Job.At("/sheet", $"part={Job.FittingPart}"), HasOwnTitle: true),
        new("sheet-does-not-fit", Job.At("/sheet", $"part={Job.UnfitPart}"), HasOwnTitle: true),
        new("before", "/before", HasOwnTitle: true),
        new("before-answered", Job.At("/before", "read.circuitCalls=yes", "read.leadVolts=0+V")),
        new("after-answered", Job.At("/after", $"part={Job.FittingPart}", "read.motorAmps=9+A", "read.refrigerant=R-404A", "read.condensingPressure=290+psi", "read.enteringAir=85+F"), HasOwnTitle: true),
        new("after-complaints", Job.At("/after", "read.motorAmps=9+A"), Status: 422),
        new("compare", "/compare", HasOwnTitle: true),
        new("compare-answered", $"/compare?old={Job.UnfitPart}&part={Job.FittingPart}"),
        new("catalogue", "/parts", HasOwnTitle: true),
        new("catalogue-part", $"/parts/{Job.FittingPart}", HasOwnTitle: true),
        new("catalogue-new", "/parts/new", NeedsKey: true, HasOwnTitle: true),
        new("catalogue-change", $"/parts/{Job.FittingPart}/change", NeedsKey: true, HasOwnTitle: true),
        new("catalogue-retire", $"/parts/{Job.FittingPart}/retire", NeedsKey: true, HasOwnTitle: true),
        new("outcome-form", Job.At("/outcome", $"part={Job.FittingPart}"), NeedsKey: true, HasOwnTitle: true),
        new("outcome", $"/outcome/{SomethingLived.Outcome}", HasOwnTitle: true),
        new("lists", "/lists", HasOwnTitle: true),
        new("tables", "/tables", NeedsKey: true, HasOwnTitle: true),
        new("model", "/model?kind=motor", HasOwnTitle: true),
        new("model-trained", $"/model?kind={SomethingLived.TrainedKind}", HasOwnTitle: true),
        new("model-signed-in", "/model?kind=thermostat", NeedsKey: true, HasOwnTitle: true),
        new("sign-in", "/sign-in", HasOwnTitle: true),
        new("not-found", "/no-such-page", Status: 404, HasOwnTitle: true),
    ];

    public static SitePage Named(string name) => All.Single(page => page.Name == name);
}
