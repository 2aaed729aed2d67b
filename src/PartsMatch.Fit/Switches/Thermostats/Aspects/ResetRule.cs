using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the reset reads of a thermostat.</summary>
/// <param name="Reset">How it closes again; null when not known.</param>
public readonly record struct ThermostatResetFacet(ContactReset? Reset);

/// <summary>Does it reset as the old one did?</summary>
/// <remarks>A manual-reset limit is never replaced by an automatic one; the reverse is a change. Of anything but a limit automatic for manual is a check, and an old one that does not say it is taken to reset by itself, which the answer says.</remarks>
public sealed class ResetRule() : Aspect<ThermostatSpec, ThermostatSite, ThermostatResetFacet>("Reset", isDeciding: true, ThermostatSources.Reset, new(0.3, 0.8, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["reset", "function"], []);

    /// <inheritdoc/>
    public override ThermostatResetFacet Read(ThermostatSpec part) => new(part.Reset);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, ThermostatResetFacet facet)
    {
        if (need.Plate.Reset is { } marked) return Against(need, marked, facet);
        return TakenOfTheOldOne.Reset(need.Plate.Function) is { } taken
            ? Against(need, taken, facet).RestingOn("reset", $"How the old one did is not marked: by itself is taken, as a {new Spelt<ThermostatFunction>(need.Plate.Function!.Value)} mostly does.")
            : Finding.Unknown(Side.Plate, "reset", $"Whether the old one was reset by hand is not known.");
    }

    private static Finding Against(ThermostatNeed need, ContactReset had, ThermostatResetFacet facet) => (had, facet.Reset, need.Plate.Function) switch
    {
        (_, null, _) => Finding.Unknown(Side.Part, "reset", $"How this one resets is not known."),
        (var old, { } now, _) when old == now => Finding.Meets($"It resets as the old one did."),
        (ContactReset.Automatic, _, _) => Finding.MeetsWith([new(SwitchChanges.AcceptManualReset, $"tell whoever looks after it that it stays out until it is reset by hand")], $"It is reset by hand; the old one reset by itself."),
        (_, _, ThermostatFunction.LowLimit or ThermostatFunction.HighLimit) => Finding.Fails($"The old one was a limit reset by hand; this one resets by itself, and never takes its place."),
        (_, _, null) => Finding.Unknown(Side.Plate, "function", $"It resets by itself, the old one by hand: whether that was a limit is not known."),
        _ => Finding.MeetsWith([new(SwitchChanges.CheckAutomaticReset, $"see whether it may start again by itself: the old one was reset by hand")], $"It resets by itself; the old one was reset by hand."),
    };
}
