using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the run capacitor reads of a motor.</summary>
/// <param name="IsNeeded">Whether it has one; null when not known.</param>
/// <param name="Microfarads">Its µF; null when it has none.</param>
/// <param name="Volts">Its least volts; null when not known.</param>
public readonly record struct CapacitorFacet(bool? IsNeeded, double? Microfarads, double? Volts);

/// <summary>Is the capacitor that is there the one this motor asks for?</summary>
/// <remarks>
/// The new motor's own µF and at least its volts, else another one is fitted; a motor without one has the old one taken out. Where a two-section capacitor is shared with the compressor, one section is the fan's:
/// when that no longer matches it is left unused beside a separate one.
/// </remarks>
public sealed class RunCapacitor() : Aspect<MotorSpec, MotorSite, CapacitorFacet>("Run capacitor", isDeciding: false, CapacitorSources.RunCapacitor, new(0.3, 0.6, 0.7))
{
    private static readonly KitItem Cover = new($"insulating cover for a capacitor terminal");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["runCapacitor", "type"], ["capacitorThere"]) { Besides = ["phase"] };

    /// <inheritdoc/>
    public override CapacitorFacet Read(MotorSpec part) => RatingOf(part) switch
    {
        null => default,
        { IsNone: true } => new(false, null, null),
        { } rating => new(true, Rounded.Microfarads(FanSection.Of(rating)), Rounded.Volts(rating.Volts)),
    };

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, CapacitorFacet facet)
    {
        var there = need.Once(static need => (need.Site.CapacitorThere ?? RatingOf(need.Plate)) is { } rating ? new There(rating, FanSection.AskedBy(need.Plate)) : null);
        return facet switch
        {
            { IsNeeded: false } => TakenOut(there),
            { IsNeeded: true, Microfarads: { } microfarads } => Matched(there, microfarads, facet.Volts),
            _ => Finding.Unknown(Side.Part, "runCapacitor", $"Which run capacitor this motor asks for, if any, is not known: read its plate."),
        };
    }

    private static Finding TakenOut(There? there) => there switch
    {
        { IsNone: true } => Finding.Meets($"It needs no run capacitor, and there is none."),
        { IsShared: true } => Finding.MeetsWith([new(BodyChanges.LeaveSectionUnused, $"leave the {there.Microfarads} µF section of the shared capacitor unused, its terminal covered") { Kit = [Cover] }], $"It needs no run capacitor; the fan's section of the shared one is left unused."),
        { } => Finding.MeetsWith([new(BodyChanges.RemoveCapacitor, $"take the {there.Microfarads} µF capacitor out")], $"It needs no run capacitor; the one there is taken out."),
        null => Finding.MeetsWith([new(BodyChanges.RemoveCapacitor, $"take out any run capacitor of the old motor")], $"It needs no run capacitor; whether there is one is not known."),
    };

    private static Finding Matched(There? there, double microfarads, double? volts)
    {
        var (size, marked) = (there?.Microfarads, there?.Volts);
        if (size == microfarads && volts is { } least && marked is { } strength && Within.AtLeast(strength, least))
        {
            return Finding.Meets($"It asks for {microfarads} µF, {least} V or more; {size} µF {strength} V is there.") with { CautionWords = $"Measure the old capacitor before it is kept: outside its marked tolerance it is replaced.", CautionAt = Stage.Wire };
        }

        if (size == microfarads && volts is null) return Finding.Unknown(Side.Part, "runCapacitor", $"It asks for {microfarads} µF, which is there; for how many volts is not known.");
        FormattableString asked = volts is { } rated ? (FormattableString)$"{microfarads} µF, {rated} V or more" : $"{microfarads} µF, at least for the volts on the new motor's plate";
        List<Change> changes = [new(BodyChanges.FitCapacitor, $"fit a separate run capacitor of {asked}") { Kit = [new($"run capacitor, {asked}")] }];
        if (there is { IsShared: true }) changes.Add(new(BodyChanges.LeaveSectionUnused, $"leave the {size} µF section of the shared capacitor unused, its terminal covered") { Kit = [Cover] });
        return Finding.MeetsWith(changes, there switch
        {
            null => $"It asks for {microfarads} µF; which capacitor is there is not known.",
            { IsNone: true } => $"It asks for {microfarads} µF, and no run capacitor is there.",
            _ when size != microfarads => $"It asks for {microfarads} µF; {size} µF is there.",
            _ when marked is null => $"It asks for {microfarads} µF, {volts} V or more; the one there has the µF, but its volts are not known.",
            _ => $"It asks for {volts} V or more; the {size} µF there is marked {marked} V.",
        });
    }

    /// <summary>The capacitor as marked, or none where the type has none by its kind (<see cref="BodySources.NoRunCapacitor"/>).</summary>
    internal static CapacitorRating? RatingOf(MotorSpec motor) => motor.RunCapacitor ?? (HasNoneByKind(motor) ? CapacitorRating.None : null);

    private static bool HasNoneByKind(MotorSpec motor) => motor.Type switch
    {
        MotorType.ShadedPole or MotorType.SplitPhase or MotorType.CapacitorStart or MotorType.ThreePhaseInduction or MotorType.ElectronicallyCommutated => true,
        null => motor.Phase == Phases.Three,
        _ => false,
    };

    /// <summary>The capacitor that is there, in plain numbers: of a shared one the fan's section.</summary>
    private sealed record There(bool IsNone, bool IsShared, double? Microfarads, double? Volts)
    {
        public There(CapacitorRating rating, ElectricCapacitance? asked)
            : this(rating.IsNone, rating.SecondSection is not null, Rounded.Microfarads(FanSection.Of(rating, asked)), Rounded.Volts(rating.Volts))
        {
        }
    }
}
