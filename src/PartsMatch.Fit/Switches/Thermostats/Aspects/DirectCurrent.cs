using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does each of the thermostat's contacts switch the direct current on it?</summary>
/// <remarks>DC amps are given once: evaporators' fans and heaters run on alternating current, and direct current on three wires is hardly met (practice). They stand for both contacts where these are alike; of contacts with ratings of their own the fans' stay open, whatever the other switches.</remarks>
public sealed class DirectCurrent() : EachContactAspect<ContactAmpsFacet>(DirectCurrentQuestion.Asked)
{
    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, EachContact<ContactAmpsFacet> facet)
    {
        var found = base.Judge(need, facet);
        return found.Verdict == Verdict.Unknown && facet is { Main.Rows.Count: > 0, Fans.Rows.Count: 0 }
            ? found.Then($"Its DC amps are given once, and its contacts are not alike: of the fans' they say nothing.")
            : found;
    }
}
