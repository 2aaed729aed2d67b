using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the coil reads of a contactor.</summary>
/// <param name="Own">The coil that it comes with.</param>
/// <param name="Further">The coils that its body takes besides.</param>
public readonly record struct CoilFacet(CoilFigures Own, Sequence<CoilFigures> Further);

/// <summary>Is the coil, or another one that the body takes, made for the control circuit's volts and frequency?</summary>
/// <remarks>
/// From 85 % of its volts to 110 %, of a span from 85 % of the lower end to 110 % of the higher; within 5 % of its frequency; edges included. Another coil listed for the body is a change, with its number in the kit.
/// Where no volts were measured, a coil for all volts that the old one was marked for meets, and one that none of them could feed fails.
/// </remarks>
public sealed class Coil() : Aspect<ContactorSpec, ContactorSite, CoilFacet>("Coil", isDeciding: true, ContactorSources.Coil, new(0.6, 0.7, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilVolts", "coilFrequency", "furtherCoils"], ["controlVolts", "controlFrequency"]);

    /// <inheritdoc/>
    public override CoilFacet Read(ContactorSpec part) => new(CoilFigures.Own(part), part.FurtherCoils is { } further ? [.. further.Select(CoilFigures.Of)] : []);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, CoilFacet facet)
    {
        var control = ControlCircuit.Of(need);
        var own = Both(control, facet.Own);
        if (own == true) return Runs(control, facet.Own);
        foreach (var coil in facet.Further.AsSpan())
        {
            if (Both(control, coil) == true) return own is null ? Open(control, facet.Own, [Change(coil)]) : Finding.MeetsWith([Change(coil)], $"Its coil for {facet.Own} is not made for {There(control)}; its body takes one for {coil}.");
        }

        if (own is null) return Open(control, facet.Own, []);
        foreach (var coil in facet.Further.AsSpan())
        {
            if (Both(control, coil) is null) return Open(control, coil, [Change(coil)]);
        }

        return control.Feeds(facet.Own) == false
            ? Finding.Fails($"Its coil for {facet.Own} works {new Windows(facet.Own)}; there are {There(control)}.")
            : Finding.Fails($"Its coil is made for {facet.Own}, within 5 % of the frequency; there are {There(control)}.");
    }

    private static bool? Both(ControlCircuit control, CoilFigures coil) => (control.Feeds(coil), control.Suits(coil)) switch
    {
        (false, _) or (_, false) => false,
        (true, true) => true,
        _ => null,
    };

    private static Finding Runs(ControlCircuit control, CoilFigures coil)
    {
        if (control.Volts is not { } volts) return Finding.Meets($"Its coil for {coil} is made for all that the old one, for {new Marked(control.Old)}, was.");
        var span = coil.Volts.First(one => one.Window.Holds(volts));
        var finding = Finding.Meets($"Its coil for {coil} works {new Windows(coil)}; {volts} V are there.");
        return finding with
        {
            Margin = new(Math.Min(volts - span.Window.Low, span.Window.High - volts), "V"),
            Shortfall = volts < span.Low ? (span.Low - volts) / (span.Low - span.Window.Low) : volts > span.High ? (volts - span.High) / (span.Window.High - span.High) : 0,
        };
    }

    /// <summary>What is missing: the part's own gap first, else a reading of the control circuit.</summary>
    private static Finding Open(ControlCircuit control, CoilFigures coil, IReadOnlyList<Change> likely)
    {
        if (coil.Volts.Count == 0) return Finding.Unknown(Side.Part, "coilVolts", likely, $"The coil's volts are not known.");
        if (control.Feeds(coil) is null) return Finding.Unknown(Side.Site, "controlVolts", likely, $"Its coil for {coil} works {new Windows(coil)}; the control circuit's volts are not known.");
        return coil.Hertz.Count == 0
            ? Finding.Unknown(Side.Part, "coilFrequency", likely, $"The coil's frequency is not known.")
            : Finding.Unknown(Side.Site, "controlFrequency", likely, $"Its coil is made for {coil}; the control circuit's frequency is not known.");
    }

    private static Change Change(CoilFigures coil)
    {
        var number = string.Concat(coil.Number);
        return new(ContactorChanges.ChangeCoil, $"put coil {number}, for {coil}, into its body") { Kit = [new($"coil {number}, {coil}")] };
    }

    private static ThereIs There(ControlCircuit control) => new ThereIs(control);

    /// <summary>The control circuit in words; formed only when it is shown.</summary>
    private readonly record struct ThereIs(ControlCircuit Control)
    {
        public override string ToString()
        {
            var volts = Control.Volts is { } known ? FormattableString.Invariant($"{known:0.#} V") : $"{new Marked(Control.Old)}, by the old coil";
            return Control.Hertz is { } hertz ? FormattableString.Invariant($"{volts} and {hertz:0.##} Hz") : volts;
        }
    }

    /// <summary>Volts in words; formed only when they are shown.</summary>
    private readonly record struct Marked(Sequence<VoltSpan> Volts)
    {
        public override string ToString() => $"{string.Join('/', Volts)} V";
    }

    /// <summary>The volts that a coil works at, in words; formed only when they are shown.</summary>
    private readonly record struct Windows(CoilFigures Coil)
    {
        public override string ToString() => string.Join(" or ", Coil.Volts.Select(span => FormattableString.Invariant($"from {span.Window.Low:0.##} to {span.Window.High:0.##} V")));
    }
}
