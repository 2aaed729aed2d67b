using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the continuous amps read of a contactor.</summary>
/// <param name="Amps">Amps that a pole carries all day, A; null when not known.</param>
public readonly record struct ContinuousFacet(double? Amps);

/// <summary>Does a pole carry motors and heaters together all day?</summary>
/// <remarks>Asked only where both are on it: motors alone are judged by their own amps, and so are heaters. The edge meets.</remarks>
public sealed class Continuous() : Aspect<ContactorSpec, ContactorSite, ContinuousFacet>("Motors and heaters together", isDeciding: false, ContactorSources.Continuous, new(0.4, 0.5, 0.4))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a load of", "of what a pole carries all day", 0, 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["continuousAmps"], ["motors", "heaterAmps", "loads"]) { Besides = ["size"] };

    /// <inheritdoc/>
    public override ContinuousFacet Read(ContactorSpec part) => new(part.ContinuousAmps is { } amps ? Rounded.To(amps.Amperes, 2) : null);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, ContinuousFacet facet)
    {
        var on = OnTheContact.Of(need);
        if (on.Loads is null) return Finding.Meets($"Nothing tells of motors and heaters on one pole.");
        if (on.HasMotor != true || on.Has(ContactLoad.Heater) != true) return Finding.Meets($"Motors and heaters are not on it together.");
        if (on.FullLoad is not { } motors) return Finding.Unknown(Side.Site, "motors", $"The full-load amps of the motors on it are not known.");
        if (on.Heater is not { } heaters) return Finding.Unknown(Side.Site, "heaterAmps", $"The amps of the heaters on it are not known.");
        var together = Rounded.To(motors + heaters, 2);
        if (facet.Amps is not { } amps) return Finding.Unknown(Side.Part, "continuousAmps", $"Motors and heaters together take {together} A; what a pole carries all day is not known.");
        var margin = new Margin(amps - together, "A");
        return Within.AtMost(together, amps)
            ? Finding.Meets($"A pole carries {amps} A all day; motors and heaters together take {together} A.") with { Margin = margin, Shortfall = together / amps }
            : Finding.Fails(margin, $"A pole carries {amps} A all day; motors and heaters together take {together} A.");
    }
}
