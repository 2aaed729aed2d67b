using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>A thermostat and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record ThermostatCase(ThermostatNeed Need, ThermostatReadings Readings, ThermostatSpec? New = null)
{
    /// <summary>The one the readings were taken at.</summary>
    public ThermostatSpec Measured => New ?? Need.Plate;

    /// <summary>Where its contacts are to move: as it is needed, or as an old one is marked that cannot be set.</summary>
    internal Points Main => IsAsMarked ? Marked : By(Need.Site.CutOutNeeded, Need.Site.CutInNeeded);

    /// <summary>Where those of an old one move as it is marked, where that is elsewhere; null where nothing else is needed.</summary>
    internal Points? AsMarked => New is null && Marked != Main ? Marked : null;

    /// <summary>The same of the fans' contacts of a switch with three wires.</summary>
    internal Points Fans => New is null ? Either(Points.Of(ThermostatAction.OpensOnRise, Need.Plate.FanCutOut, Need.Plate.FanCutIn), WantedPoints.Of(Need).Fans) : WantedPoints.Of(Need).Fans;

    /// <summary>Whether the contacts that are measured open on rise; null when not known.</summary>
    internal bool? OpensOnRise => Action is { } action ? action == ThermostatAction.OpensOnRise : null;

    /// <summary>Whether they are one side of change-over contacts, and nobody said which sides are wired.</summary>
    internal bool IsSideOpen => Action is null && Need.Plate.Action == ThermostatAction.ChangeOver;

    /// <summary>Whether the one temperature that is known is hardly that of the side that is measured: plates mostly name where the side moves that closes on rise. New single contacts have no other side; they are judged by the temperature that is taken for them.</summary>
    internal bool IsOfOtherSide => OpensOnRise == true && New is not { Action: ThermostatAction.OpensOnRise } && WantedPoints.Of(Need).MayBeOfOtherSide;

    /// <summary>Whether fans wait for a cold coil by it.</summary>
    internal bool DelaysFans => Need.Plate.Function is ThermostatFunction.FanDelay or ThermostatFunction.FanDelayAndDefrostEnd;

    /// <summary>Whether it ends a defrost.</summary>
    internal bool EndsDefrost => Need.Plate.Function is ThermostatFunction.DefrostEnd or ThermostatFunction.FanDelayAndDefrostEnd;

    /// <summary>What was seen at it.</summary>
    /// <param name="closed">Whether its contacts are closed.</param>
    internal SeenAtSwitch Seen(bool closed) => new(closed, IsManual, Readings.OpenedAt is not null, Readings.ClosedAt is not null) { There = "bulbTemperature", Instrument = "the thermometer at its bulb", Feels = "its bulb" };

    /// <summary>The field that is asked for where it is to open: of the place, or of the plate where that alone tells it.</summary>
    internal (string Field, Side Side) AskedCutOut => Need.Site.CutOutNeeded is null && !(IsAsMarked && Degrees.AreOthers(Need.Plate.CutIn, Need.Site.CutInNeeded)) ? ("cutOutNeeded", Side.Site) : ("cutOut", Side.Plate);

    /// <summary>The same where it is to close.</summary>
    internal (string Field, Side Side) AskedCutIn => Need.Site.CutInNeeded is null && !(IsAsMarked && Degrees.AreOthers(Need.Plate.CutOut, Need.Site.CutOutNeeded)) ? ("cutInNeeded", Side.Site) : ("cutIn", Side.Plate);

    /// <summary>Whether it is reset by hand.</summary>
    internal bool IsManual => Measured.Reset == ContactReset.Manual;

    /// <summary>Whether box and coil are said to be warm still.</summary>
    internal bool IsWarm => Readings.BoxIsCold == false;

    /// <summary>The temperature at its bulb, °C; null when not read.</summary>
    internal double? There => Degrees.In(Readings.BulbTemperature);

    /// <summary>What the contacts do that are measured; null when not known. Where nothing is marked, and nothing tells a box thermostat for cold from one for heat, none is condemned by what most do, nor by temperatures that go against its function.</summary>
    private ThermostatAction? Action => Measured.Action is null or ThermostatAction.ChangeOver ? WiredSide : Measured.Action;

    /// <summary>Of change-over contacts the side that is wired: with three wires the one that ends the defrost; with both wired the one that its function is about, or else the one that closes on rise; of new ones in the place of single ones the side that does as those did.</summary>
    private ThermostatAction? WiredSide => Need switch
    {
        { Plate.Function: ThermostatFunction.FanDelayAndDefrostEnd } => ThermostatAction.ClosesOnRise,
        { Site.WiredSide: { } wired } => wired,
        { Plate.Action: ThermostatAction.ChangeOver } or { Site.Wired: ThermostatAction.ChangeOver } => TakenOfTheOldOne.HasOneWay(Need.Plate.Function) ? TakenOfTheOldOne.ActionOf(Need.Plate.Function) : Need.Site.Wired is null ? null : ThermostatAction.ClosesOnRise,
        _ => Need.Plate.Action ?? Taken,
    };

    /// <summary>An old one goes the way of its own two temperatures, whatever is needed now.</summary>
    private ThermostatAction? Taken => New is null && TakenOfTheOldOne.ByTemperatures(Need.Plate.Function, Need.Plate.CutOut, Need.Plate.CutIn) is { } own
        ? TakenOfTheOldOne.IsAgainst(Need.Plate.Function, own) ? null : own
        : WantedPoints.Of(Need) is { IsAgainstItsFunction: false } wanted && (!wanted.IsTaken || TakenOfTheOldOne.HasOneWay(wanted.Function)) ? wanted.Action : null;

    private bool IsAsMarked => New is null && Need.Plate.IsAdjustable == false;

    /// <summary>What is not marked is taken as it is needed, unless something else is needed than is marked.</summary>
    private Points Marked => By(
        Need.Plate.CutOut ?? (Degrees.AreOthers(Need.Plate.CutIn, Need.Site.CutInNeeded) ? null : Need.Site.CutOutNeeded),
        Need.Plate.CutIn ?? (Degrees.AreOthers(Need.Plate.CutOut, Need.Site.CutOutNeeded) ? null : Need.Site.CutInNeeded));

    private Points By(Temperature? cutOut, Temperature? cutIn) => Points.Of(Action, cutOut, cutIn);

    private static Points Either(Points one, Points other) => new(one.OnRise ?? other.OnRise, one.OnFall ?? other.OnFall);
}
