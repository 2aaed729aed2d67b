using PartsMatch.Fit.Judging;
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

    /// <summary>Which way the contacts go that are measured: single ones as they are marked, or else those that keep the equipment running; null when not known, or where nobody said which of two sides is wired.</summary>
    internal PressureAction? Way => IsOneWay ? Measured.Action : IsSideOpen ? null : Running;

    /// <summary>Whether they are one side of change-over contacts, and nobody said which sides are wired.</summary>
    internal bool IsSideOpen => !IsOneWay && Need.Plate.Action == PressureAction.ChangeOver && Need.Site.Wired is null;

    /// <summary>Whether the side that is wired, and so is measured, is not the one whose cut-out and cut-in are known.</summary>
    internal bool IsOfOtherSide => !IsOneWay && Need.Site.Wired is { } wired && wired != PressureAction.ChangeOver && Running != wired;

    /// <summary>What is said where its cut-out and cut-in cannot be those of its contacts, so that nothing can be told by them; null where they can, or where its cut-in is of no matter.</summary>
    internal FormattableString? Misread => IsManual ? null : WrongWayRound;

    /// <summary>The same of one that is reset by hand as well, of which the cut-in may tell where its button holds.</summary>
    internal FormattableString? WrongWayRound => Settings.WrongWayRound(Running, CutOut, CutIn);

    /// <summary>Whether it is reset by hand.</summary>
    internal bool IsManual => Measured.Reset == ContactReset.Manual;

    /// <summary>How far the pressure is beyond its cut-out, kPa; null when that is not known.</summary>
    internal double? BeyondCutOut => Settings.In(Readings.PressureThere) is { } there && CutOut is { } cutOut && Sign is { } sign ? sign * (there - cutOut) : null;

    /// <summary>Where one that is reset by hand can be reset, kPa: its cut-in, or its cut-out less the greatest differential; null when that is not known.</summary>
    internal double? ResetsAt => (WrongWayRound is null ? CutIn : null) ?? (CutOut - (Sign * Measured.Differential?.Kilopascals.High));

    /// <summary>How far the pressure has come back behind that, kPa; null when that is not known.</summary>
    internal double? BehindReset => Behind(ResetsAt);

    /// <summary>How far the pressure has come back behind its cut-in, kPa; null when that is not known.</summary>
    internal double? BehindCutIn => Behind(CutIn);

    /// <summary>Whether settings are judged that are the plate's.</summary>
    internal bool IsAsMarked => IsByMarked || (New is null && Need.Plate.IsAdjustable == false);

    /// <summary>What was seen at it.</summary>
    /// <param name="closed">Whether its contacts are closed.</param>
    internal SeenAtSwitch Seen(bool closed) => new(closed, IsManual, Readings.OpenedAt is not null, Readings.ClosedAt is not null) { There = "pressureThere", Instrument = "the gauge", Feels = "the pressure" };

    /// <summary>The field that is asked for where it is to open: of the place, or of the plate where that alone tells it.</summary>
    internal (string Field, Side Side) AskedCutOut => IsAsMarked && (CutOutNeeded is not null || IsCutInChanged) ? ("cutOut", Side.Plate) : ("cutOutNeeded", Side.Site);

    /// <summary>The same where it is to close.</summary>
    internal (string Field, Side Side) AskedCutIn => IsAsMarked && (CutInNeeded is not null || IsCutOutChanged) ? ("cutIn", Side.Plate) : ("cutInNeeded", Side.Site);

    private bool IsOneWay => Measured.Action is PressureAction.OpensOnRise or PressureAction.OpensOnFall;

    private PressureAction? Running => Need.Site.RunningBeside(Need.Plate);

    private int? Sign => Way switch
    {
        PressureAction.OpensOnRise => 1,
        PressureAction.OpensOnFall => -1,
        _ => null,
    };

    private bool IsByMarked { get; init; }

    private double? CutOutNeeded => Settings.In(Need.Site.CutOutNeeded);

    private double? CutInNeeded => Settings.In(Need.Site.CutInNeeded);

    private bool IsCutOutChanged => Settings.AreOthers(Need.Plate.CutOut, Need.Site.CutOutNeeded);

    private bool IsCutInChanged => Settings.AreOthers(Need.Plate.CutIn, Need.Site.CutInNeeded);

    private double? Behind(double? where) => Sign * (where - Settings.In(Readings.PressureThere));
}
