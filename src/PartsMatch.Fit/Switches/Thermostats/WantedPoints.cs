using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Where contacts are to move at a place, worked out once a need.</summary>
internal sealed record WantedPoints
{
    private WantedPoints(ThermostatNeed need)
    {
        Function = need.Plate.Function;
        var side = OneSideOf(need.Site.Wired);
        var marked = side ?? need.Plate.Action;
        var byTemperatures = TakenOfTheOldOne.ByTemperatures(Function, need.Site.CutOutNeeded, need.Site.CutInNeeded);
        var byFunction = TakenOfTheOldOne.ActionOf(Function);
        IsDefined = Function is ThermostatFunction.FanDelay or ThermostatFunction.LowLimit or ThermostatFunction.HighLimit;
        Action = IsDefined ? byFunction : byTemperatures ?? marked ?? byFunction;
        Disagrees = !IsDefined && byTemperatures is null && AreTwo(side, need.Plate.Action);
        Counts = Counted(need);
        IsTaken = marked is null && !(Counts is null && AreBothKnown(need)) && (Function == ThermostatFunction.Box || Counts is not null);
        MayBeOfEitherSide = Action == ThermostatAction.ChangeOver && !HasThreeWires && need.Site.SidesWired is null && (need.Site.CutOutNeeded is null) != (need.Site.CutInNeeded is null);
        StopsAt = Function == ThermostatFunction.Box ? Degrees.In(need.Site.CutOutNeeded) : null;
        Main = Points.Of(Action, need.Site.CutOutNeeded, need.Site.CutInNeeded);
        Fans = Points.Of(ThermostatAction.OpensOnRise, need.Site.FanCutOutNeeded, need.Site.FanCutInNeeded);
        Tells = Function switch
        {
            ThermostatFunction.FanDelay or ThermostatFunction.LowLimit => Moving.OnFall,
            ThermostatFunction.Box when Action != ThermostatAction.OpensOnRise => Moving.OnFall,
            _ => Moving.OnRise,
        };
    }

    /// <summary>What the old one was there for.</summary>
    public ThermostatFunction? Function { get; }

    /// <summary>Which way its contacts went, by their function where that defines it, by both temperatures, or else as one side of them is wired, as marked or as taken; null when not known.</summary>
    public ThermostatAction? Action { get; }

    /// <summary>Whether what is marked and what is wired say different things of that, so that nothing can be told.</summary>
    public bool Disagrees { get; }

    /// <summary>Whether its temperatures count as they do for what is only taken: of a box thermostat, which may be one for heat, or by a differential that is counted one way.</summary>
    public bool IsTaken { get; }

    /// <summary>Whether one of them does: what is read of one whose function defines its action does not.</summary>
    public bool RestsOnTaken(Moving moving) => IsTaken && !(IsDefined && IsRead(moving));

    private bool IsDefined { get; }

    /// <summary>The one of the two temperatures that is not read, but counted from the other by a differential; null where none is.</summary>
    private string? Counts { get; }

    /// <summary>Whether a temperature is read, so that in doubt is only which of the two it is.</summary>
    public bool IsRead(Moving moving) => PartField(moving) != Counts;

    /// <summary>Whether one temperature of change-over contacts is known, and not of which side.</summary>
    public bool MayBeOfEitherSide { get; }

    /// <summary>Where a box thermostat stops the cooling, or the heat, °C: what its function is about whichever of its sides is wired. Null of others, and where not known.</summary>
    public double? StopsAt { get; }

    /// <summary>Where its contacts are to move; with three wires those that end the defrost.</summary>
    public Points Main { get; }

    /// <summary>Where the fans' contacts are to move, with three wires.</summary>
    public Points Fans { get; }

    /// <summary>The one of its two temperatures that its function is about: where a box thermostat stops the cooling, a fan delay starts the fans, a defrost end ends the defrost, a limit trips.</summary>
    public Moving Tells { get; }

    /// <summary>The other one.</summary>
    public Moving Other => Tells == Moving.OnRise ? Moving.OnFall : Moving.OnRise;

    /// <summary>Whether the old one had three wires.</summary>
    public bool HasThreeWires => Function == ThermostatFunction.FanDelayAndDefrostEnd;

    /// <summary>What a need wants.</summary>
    public static WantedPoints Of(ThermostatNeed need) => need.Once(static need => new WantedPoints(need));

    private static string? Counted(ThermostatNeed need) => ThermostatDeductions.ThirdOfTaken(need.Plate).FirstOrDefault() is { } third && (third.Field == "cutInNeeded" ? need.Site.CutInNeeded : need.Site.CutOutNeeded) is { } there && Deducing.Text(there) == third.Text
        ? third.From[0] == "cutIn" ? "cutOut" : "cutIn"
        : null;

    private static bool AreTwo(ThermostatAction? one, ThermostatAction? other) => one is not null and not ThermostatAction.ChangeOver && other is not null and not ThermostatAction.ChangeOver && one != other;

    private static ThermostatAction? OneSideOf(ThermostatAction? wired) => wired == ThermostatAction.ChangeOver ? null : wired;

    private static bool AreBothKnown(ThermostatNeed need) => need.Site is { CutOutNeeded: not null, CutInNeeded: not null };

    /// <summary>The site's field of one of the two temperatures.</summary>
    public string Field(Moving moving) => $"{PartField(moving)}Needed";

    /// <summary>The part's field of one of the two temperatures.</summary>
    public string PartField(Moving moving) => (moving == Moving.OnRise) == (Action == ThermostatAction.OpensOnRise) ? "cutOut" : "cutIn";
}
