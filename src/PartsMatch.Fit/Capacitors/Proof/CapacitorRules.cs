using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Capacitors.Proof;

/// <summary>Does it bulge or leak?</summary>
public sealed class Look() : ReadingRule<CapacitorCase>("Look", CapacitorReadingSources.CapacitorLook)
{
    /// <inheritdoc/>
    public override Ruling? Judge(CapacitorCase one) => one.Readings.Bulges switch
    {
        true => Ruling.Bad($"It bulges, leaks or is burnt: replace it, whatever it measures.").ThePartHasFailed(),
        false => Ruling.Good($"It neither bulges nor leaks."),
        null => null,
    };
}

/// <summary>Has its only section, or that of the first motor, its µF?</summary>
public sealed class FirstSection() : ReadingRule<CapacitorCase>("µF", CapacitorReadingSources.CapacitorUnderLoad)
{
    /// <inheritdoc/>
    public override Ruling? Judge(CapacitorCase one) => OnUnused(one) ?? SectionRules.Judge(one, one.First, one.FirstAsked)
        ?? (one.First.IsInSecondFields
            ? Ruling.Read("secondMicrofarads", "It has two sections: measure the other one as well.")
            : Ruling.Read("microfarads", "Measure its µF: with a meter, power off and discharged; or amps and volts across it while the motor runs."));

    /// <summary>What is said where the section that is to be left unused was measured, and not the one in use, or where the motor runs on it.</summary>
    private static Ruling? OnUnused(CapacitorCase one) => one switch
    {
        { AreCrossed: false } or { Unused: null } => null,
        { Second.Readings.IsUnderLoad: true } => Ruling.Bad($"The motor runs on its {one.Unused:0.##} µF section; {one.FirstAsked:0.##} µF are asked for: join the other section."),
        _ when one.First.Readings.Microfarads(one.Hertz) is null => Ruling.CantTell($"Its {one.Unused:0.##} µF section was measured, which is left unused: measure the one in use, for {one.FirstAsked:0.##} µF."),
        _ => null,
    };
}

/// <summary>Has its section for the second motor its µF?</summary>
public sealed class SecondSection() : ReadingRule<CapacitorCase>("Second section's µF", CapacitorReadingSources.CapacitorUnderLoad)
{
    /// <inheritdoc/>
    public override Ruling? Judge(CapacitorCase one) => SectionRules.Judge(one, one.Second, one.SecondAsked) switch
    {
        not null when one.Unused is { } unused => Ruling.NotApplicable($"Its {unused:0.##} µF section is left unused: nothing hangs on it."),
        null when one.Measured.Rating?.SecondSection is not null => Ruling.Read(one.Second.IsInSecondFields ? "secondMicrofarads" : "microfarads", "It has two sections: measure the other one as well."),
        var ruling => ruling,
    };
}

/// <summary>Are the volts across it within what it is marked for?</summary>
/// <remarks>Up to 110 % of the marking (IEC 60252-1, from memory).</remarks>
public sealed class VoltsAcross() : ReadingRule<CapacitorCase>("Volts across it", CapacitorReadingSources.CapacitorVolts)
{
    private const double Most = 1.1;

    /// <inheritdoc/>
    public override Ruling? Judge(CapacitorCase one)
    {
        List<double> read = [.. new[] { one.Readings.AcrossVolts, one.Readings.SecondAcrossVolts }.OfType<Measured<ElectricPotential>>().Select(volts => volts.Legs[0].Volts)];
        if (read.Count == 0) return null;
        if (one.Measured.Rating?.Volts?.Volts is not { } marked) return Ruling.CantTell($"{read.Max():0.#} V across it; its marked volts are not known.");
        FormattableString limit = $"at most {marked * Most:0.#} V";
        return Within.AtMost(read.Max(), marked * Most)
            ? Ruling.Good($"{read.Max():0.#} V across it; marked {marked:0.#} V, it bears {marked * Most:0.#} V.", limit)
            : Ruling.Bad($"{read.Max():0.#} V across it is over the {marked * Most:0.#} V that one marked {marked:0.#} V bears: one marked higher is needed there.", limit).NotThePart();
    }
}

/// <summary>What both sections are measured by.</summary>
internal static class SectionRules
{
    /// <summary>The readings' ruling with this family's fields; null when nothing was read.</summary>
    public static Ruling? Judge(CapacitorCase one, SectionRead read, double? asked)
    {
        if (read.Readings.Judge(asked, one.Percent, one.Hertz) is not { } ruling) return null;
        if (one is { AreCrossed: true, Unused: null } && read.Readings.IsUnderLoad) return Swapped(read);
        if (ruling.Verdict == ReadingVerdict.Bad) return ruling.ThePartHasFailed();
        if (ruling.Asks is { Side: null } next) return ruling.ThenRead(FieldOf(next.Field, read.IsInSecondFields), next.Why);
        return ruling is { Verdict: ReadingVerdict.CantTell, Asks: null } ? ruling.ThenRead("rating", "Read the µF on the can, or on the motor's plate: it is judged by them.", Side.Plate) : ruling;
    }

    /// <summary>A meter at the can finds its sections in either order; under load the order tells which motor runs on which.</summary>
    private static Ruling Swapped(SectionRead read) =>
        Ruling.CantTell($"Under load the sections read the other way round: see that each motor is joined to its own.")
            .ThenRead(FieldOf(string.Empty, read.IsInSecondFields), "Under load its sections read the other way round. See that each motor is joined to its own; then power off, discharge it through a resistor, and measure both with a meter.");

    private static string FieldOf(string atMotor, bool second) => (atMotor, second) switch
    {
        ("capacitorVolts", false) => "acrossVolts",
        ("capacitorVolts", true) => "secondAcrossVolts",
        ("capacitorAmps", false) => "leadAmps",
        ("capacitorAmps", true) => "secondLeadAmps",
        (_, false) => "microfarads",
        (_, true) => "secondMicrofarads",
    };
}
