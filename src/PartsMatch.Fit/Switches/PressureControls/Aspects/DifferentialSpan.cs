using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the differential reads of a pressure control, kPa.</summary>
/// <param name="Least">The least; null when not known.</param>
/// <param name="Most">The greatest; null when not known.</param>
/// <param name="IsManual">Whether it is reset by hand, so that it has none to set.</param>
/// <param name="Shipped">The one that it is shipped with, by its cut-out and cut-in, where no other is known; null where these are not known either.</param>
public readonly record struct DifferentialFacet(double? Least, double? Most, bool IsManual, double? Shipped = null);

/// <summary>Does its differential reach from cut-out to cut-in?</summary>
/// <remarks>The distance of the two lies between its least and its greatest differential, edges included; a fixed one within 5 psi of it (practice), and so does the one that it is shipped with, where no other is known. With manual reset there is none to set. Two that are the wrong way round have no distance to be judged by.</remarks>
public sealed class DifferentialSpan() : Aspect<PressureControlSpec, PressureControlSite, DifferentialFacet>("Differential", isDeciding: true, PressureControlSources.Differential, new(0.4, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["differential"], ["cutOutNeeded", "cutInNeeded"]) { Besides = ["cutOut", "cutIn", "reset", "function", "action", "sidesWired"] };

    /// <inheritdoc/>
    public override DifferentialFacet Read(PressureControlSpec part) => new(part.Differential?.Kilopascals.Low, part.Differential?.Kilopascals.High, part.Reset == ContactReset.Manual, part is { Differential: null, CutOut: { } cutOut, CutIn: { } cutIn } ? Settings.Between(cutOut, cutIn) : null);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, DifferentialFacet facet)
    {
        if (facet.IsManual) return Finding.Meets($"It is reset by hand: it has no differential to set.");
        if (need.Site.CutOutNeeded is not { } cutOut) return Finding.Unknown(Side.Site, "cutOutNeeded", $"Where it is to open is not known.");
        if (need.Site.CutInNeeded is not { } cutIn) return Finding.Unknown(Side.Site, "cutInNeeded", $"Where it is to close again is not known.");
        if (Settings.WrongWayRound(need) is { } wrong) return wrong;
        var between = Settings.Between(cutOut, cutIn);
        if (facet.Shipped is { } shipped && Within.AtMost(Math.Abs(shipped - between), Settings.Near)) return Finding.Meets($"{new ShownPressure(between)} lie between cut-out and cut-in; between its own lie {new ShownPressure(shipped)} as it is shipped, within 5 psi.");
        if (facet is not { Least: { } least, Most: { } most }) return Finding.Unknown(Side.Part, "differential", $"{new ShownPressure(between)} lie between cut-out and cut-in; its differential is not known.");
        var slack = least.Equals(most) ? Settings.Near : 0;
        var margin = new Margin(Math.Min(between - least, most - between) + slack, "kPa");
        Reason sentence = least.Equals(most)
            ? $"{new ShownPressure(between)} lie between cut-out and cut-in; its differential {ShownRange.Goes(new ShownPressure(least), new ShownPressure(most))}, and 5 psi off is the limit."
            : (Reason)$"{new ShownPressure(between)} lie between cut-out and cut-in; its differential {ShownRange.Goes(new ShownPressure(least), new ShownPressure(most))}.";
        return Within.Span(between, least - slack, most + slack) ? Finding.Meets(sentence) with { Margin = margin } : Finding.Fails(margin, sentence);
    }
}
