namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Where contacts are to move at a place, worked out once a need.</summary>
internal sealed record WantedPoints
{
    private WantedPoints(ThermostatNeed need)
    {
        Function = need.Plate.Function;
        Action = OneSideOf(need.Site.Wired) ?? need.Plate.Action ?? TakenOfTheOldOne.Action(Function, need.Site.CutOutNeeded, need.Site.CutInNeeded);
        MayBeForHeat = need is { Plate: { Function: ThermostatFunction.Box, Action: null }, Site.SidesWired: null } && !AreBothRead(need);
        MayBeOfEitherSide = Action == ThermostatAction.ChangeOver && !HasThreeWires && need.Site.SidesWired is null && (need.Site.CutOutNeeded is null) != (need.Site.CutInNeeded is null);
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

    /// <summary>What its contacts did, as one side of them is wired, as marked or as taken; null when not known.</summary>
    public ThermostatAction? Action { get; }

    /// <summary>Whether it is a box thermostat that nothing tells to be one for cold: one for heat moves at its temperatures the other way.</summary>
    public bool MayBeForHeat { get; }

    /// <summary>Whether one temperature of change-over contacts is known, and not of which side.</summary>
    public bool MayBeOfEitherSide { get; }

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

    private static ThermostatAction? OneSideOf(ThermostatAction? wired) => wired == ThermostatAction.ChangeOver ? null : wired;

    /// <summary>Whether both temperatures are read, and neither follows by a differential from the way that it is taken to move.</summary>
    private static bool AreBothRead(ThermostatNeed need) => need is { Plate: { CutOut: not null, CutIn: not null } } or { Plate.Differential: null, Site: { CutOutNeeded: not null, CutInNeeded: not null } };

    /// <summary>The site's field of one of the two temperatures.</summary>
    public string Field(Moving moving) => $"{PartField(moving)}Needed";

    /// <summary>The part's field of one of the two temperatures.</summary>
    public string PartField(Moving moving) => (moving == Moving.OnRise) == (Action == ThermostatAction.OpensOnRise) ? "cutOut" : "cutIn";
}
