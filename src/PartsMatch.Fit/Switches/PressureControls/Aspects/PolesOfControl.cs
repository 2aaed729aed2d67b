using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What poles read of a pressure control.</summary>
/// <param name="Count">Its poles; null when not known.</param>
public readonly record struct ControlPolesFacet(int? Count);

/// <summary>Has the control as many poles as the old one?</summary>
/// <remarks>More are left unused; fewer fail, and none has fewer than one.</remarks>
public sealed class PolesOfControl() : Aspect<PressureControlSpec, PressureControlSite, ControlPolesFacet>("Poles", isDeciding: true, PressureControlSources.Poles, new(0.3, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["poles"], []);

    /// <inheritdoc/>
    public override ControlPolesFacet Read(PressureControlSpec part) => new(part.Poles);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, ControlPolesFacet facet) => (need.Plate.Poles, facet.Count) switch
    {
        (null, 1) => Finding.Unknown(Side.Plate, "poles", $"It has one pole; how many the old one had is not known."),
        (null, null) => Finding.Unknown(Side.Plate, "poles", $"How many poles the old one had is not known."),
        (null, { } count) => Finding.Meets($"It has {count} poles, as many as any such control."),
        (1, null) => Finding.Meets($"The old one had one pole, and none has fewer."),
        ({ } old, null) => Finding.Unknown(Side.Part, "poles", $"The old one had {old}; this one's poles are not known."),
        ({ } old, { } count) when count >= old => Finding.Meets($"The old one had {new PoleWords(old)}, it has {count}."),
        ({ } old, { } count) => Finding.Fails(new Margin(count - old, "poles"), $"The old one had {new PoleWords(old)}, it has {count}."),
    };
}
