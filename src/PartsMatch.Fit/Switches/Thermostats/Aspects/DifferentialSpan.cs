using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the differential reads of a thermostat, K.</summary>
/// <param name="Least">The least; null when not known.</param>
/// <param name="Most">The greatest; null when not known.</param>
/// <param name="CanBeSet">Whether it can be set; of others the two temperatures tell it.</param>
/// <param name="IsManual">Whether it is reset by hand.</param>
public readonly record struct ThermostatDifferentialFacet(double? Least, double? Most, bool CanBeSet, bool IsManual)
{
    /// <summary>From the least to the greatest; null when not known.</summary>
    internal Band? Span => Least is { } least && Most is { } most ? new(least, most) : null;
}

/// <summary>Does the differential of one that can be set reach from cut-out to cut-in?</summary>
/// <remarks>
/// Between its least and its greatest, or 2 °F off, meets; up to 5 °F off is a check, beyond fails; edges belong to the inside. Where the two temperatures are not both known, the old one's differential tells the distance, and by that alone none fails; a span that holds the old one's meets.
/// </remarks>
public sealed class DifferentialSpan() : Aspect<ThermostatSpec, ThermostatSite, ThermostatDifferentialFacet>("Differential", isDeciding: false, ThermostatSources.Differential, new(0.6, 0.5, 0.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a differential", "off the one wanted", 0, Degrees.Near, "K");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["differential"], ["cutOutNeeded", "cutInNeeded"]) { Besides = ["cutOut", "cutIn", "reset", "isAdjustable", "range", "function", "action", "sidesWired"] };

    /// <inheritdoc/>
    public override ThermostatDifferentialFacet Read(ThermostatSpec part) => new(part.Differential?.Kelvins.Low, part.Differential?.Kelvins.High, part.IsAdjustable != false && part.Range is not null, part.Reset == ContactReset.Manual);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatDifferentialFacet facet)
    {
        if (facet.IsManual) return Finding.Meets($"It is reset by hand: it has no differential to set.");
        if (!facet.CanBeSet) return Finding.Meets($"It is not known to be set to a differential: its two temperatures are looked at by themselves.");
        var wanted = WantedPoints.Of(need);
        if (wanted is { AreBothRead: true, Main: { OnRise: { } upper, OnFall: { } lower } }) return Against(Degrees.Between(upper, lower), facet);
        if (need.Plate.Differential?.Kelvins is not { IsExact: true, Low: var between }) return AsTheOldOne(need, wanted, facet);
        return need.Plate is { CutOut: not null, CutIn: not null }
            ? Against(between, facet).RestingOn($"{wanted.Unread}Needed", $"So much is the old one's differential; the two temperatures that are needed are not both known.", Side.Site)
            : Against(between, facet).RestingOn(wanted.Unread, $"So much is the old one's differential; its two temperatures are not both marked.");
    }

    private static Finding Against(double between, ThermostatDifferentialFacet facet)
    {
        if (facet.Span is not { } span) return Finding.Unknown(Side.Part, "differential", $"{new ShownDifference(between)} lie between cut-out and cut-in; its differential is not known.");
        var off = Degrees.Between(Math.Clamp(between, span.Low, span.High), between);
        Reason sentence = $"{new ShownDifference(between)} lie between cut-out and cut-in; its differential: {new ShownSpan(span)}; 2 °F (1.1 K) off does the same, and 5 °F (2.8 K) off is the limit.";
        var margin = new Margin(Degrees.Near - off, "K");
        if (!Within.AtMost(off, Degrees.Near)) return Finding.Fails(margin, sentence);
        return Finding.MeetsWith(Within.AtMost(off, Degrees.NearDifferential) ? [] : [new(ThermostatChanges.CheckDifferential, $"check that a differential {new ShownDifference(off)} off will do")], sentence) with { Shortfall = off / Degrees.Near, Margin = margin };
    }

    private static Finding AsTheOldOne(ThermostatNeed need, WantedPoints wanted, ThermostatDifferentialFacet facet)
    {
        var missing = $"{wanted.Unread}Needed";
        if (need.Plate.Differential?.Kelvins is not { } old) return Finding.Unknown(Side.Site, missing, $"What is to lie between cut-out and cut-in is not known.");
        if (facet.Span is not { } span) return Finding.Unknown(Side.Part, "differential", $"The old differential: {new ShownSpan(old)}; this one's is not known.");
        return span.Holds(old.Low) && span.Holds(old.High)
            ? Finding.Meets($"Its differential: {new ShownSpan(span)}; it holds the old one's.")
            : Finding.Unknown(Side.Site, missing, $"Its differential: {new ShownSpan(span)}; the old one's: {new ShownSpan(old)}; what is to lie between cut-out and cut-in is not known.");
    }

    /// <summary>From one difference to another, or one.</summary>
    private readonly record struct ShownSpan(Band Span)
    {
        public override string ToString() => Span.IsExact ? new ShownDifference(Span.Low).ToString() : FormattableString.Invariant($"{new ShownDifference(Span.Low)} to {new ShownDifference(Span.High)}");
    }
}
