using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Switches.PressureControls.Proof;

/// <summary>A pressure control and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record PressureControlCase(PressureControlNeed Need, PressureControlReadings Readings, PressureControlSpec? New = null)
{
    /// <summary>The one the readings were taken at.</summary>
    public PressureControlSpec Measured => New ?? Need.Plate;

    /// <summary>The same old one, judged as it is marked; null where it is judged so anyhow, as one that cannot be set is, or where nothing else is needed.</summary>
    internal PressureControlCase? AsMarked => New is null && !IsAsMarked && this with { IsByMarked = true } is var marked && (marked.CutOut, marked.CutIn) != (CutOut, CutIn) ? marked : null;

    /// <summary>Where it is to open, kPa: as it is needed, or as an old one is marked; null when not known.</summary>
    internal double? CutOut => IsAsMarked ? Settings.In(Need.Plate.CutOut) ?? (IsCutInChanged ? null : CutOutNeeded) : CutOutNeeded;

    /// <summary>The same where it is to close.</summary>
    internal double? CutIn => IsAsMarked ? Settings.In(Need.Plate.CutIn) ?? (IsCutOutChanged ? null : CutInNeeded) : CutInNeeded;

    /// <summary>The way that it is judged by, for signs: 1 where the contacts that keep the equipment running open on rise, −1 where on fall; null when not known, or where it is marked to change over, so that either side may have been measured.</summary>
    internal int? Sign => (Measured.Action ?? Need.Plate.Action ?? Need.Plate.Running) switch
    {
        PressureAction.OpensOnRise => 1,
        PressureAction.OpensOnFall => -1,
        _ => null,
    };

    /// <summary>Whether it is reset by hand.</summary>
    internal bool IsManual => Measured.Reset == ContactReset.Manual;

    /// <summary>How far the pressure is beyond its cut-out, kPa; null when that is not known.</summary>
    internal double? BeyondCutOut => Settings.In(Readings.PressureThere) is { } there && CutOut is { } cutOut && Sign is { } sign ? sign * (there - cutOut) : null;

    /// <summary>How far the pressure has come back behind where it can be reset, kPa: its cut-in, or its cut-out less the greatest differential; null when that is not known.</summary>
    internal double? BehindReset => BehindCutIn ?? (Measured.Differential?.Kilopascals.High is { } greatest ? -BeyondCutOut - greatest : null);

    /// <summary>How far the pressure has come back behind its cut-in, kPa; null when that is not known.</summary>
    internal double? BehindCutIn => Settings.In(Readings.PressureThere) is { } there && CutIn is { } cutIn && Sign is { } sign ? sign * (cutIn - there) : null;

    private bool IsByMarked { get; init; }

    private bool IsAsMarked => IsByMarked || (New is null && Need.Plate.IsAdjustable == false);

    private double? CutOutNeeded => Settings.In(Need.Site.CutOutNeeded);

    private double? CutInNeeded => Settings.In(Need.Site.CutInNeeded);

    private bool IsCutOutChanged => Settings.AreOthers(Need.Plate.CutOut, Need.Site.CutOutNeeded);

    private bool IsCutInChanged => Settings.AreOthers(Need.Plate.CutIn, Need.Site.CutInNeeded);
}
