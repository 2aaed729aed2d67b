using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Where contacts are to move at a place, worked out once a need.</summary>
internal sealed record WantedPoints
{
    private readonly bool isCutOutKnown;
    private readonly bool isCutInKnown;
    private readonly bool isActionMarked;

    private WantedPoints(ThermostatNeed need)
    {
        var (plate, site) = (need.Plate, need.Site);
        Function = plate.Function;
        (isCutOutKnown, isCutInKnown) = (site.CutOutNeeded is not null, site.CutInNeeded is not null);
        isActionMarked = plate.Action is not null;
        var marked = site.WiredSide ?? plate.Action;
        var byTemperatures = TakenOfTheOldOne.ByTemperatures(Function, site.CutOutNeeded, site.CutInNeeded);
        var byFunction = TakenOfTheOldOne.ActionOf(Function);
        Action = HasThreeWires ? ThermostatAction.ClosesOnRise : byTemperatures ?? (HasOneWay ? byFunction : marked ?? byFunction);
        Disagrees = !HasOneWay && byTemperatures is null && AreTwo(site.WiredSide, plate.Action);
        Counts = Counted(need);
        IsTaken = marked is null && !AreBothRead && (Function == ThermostatFunction.Box || Counts is not null);
        IsMarkedAgainstFunction = !AreBothKnown && TakenOfTheOldOne.IsAgainst(Function, plate.Action);
        MayBeOfOtherSide = !HasOneWay && !HasThreeWires && !AreBothRead && site.WiredSide is { } side && plate.Action != side;
        MayBeOfEitherSide = Action == ThermostatAction.ChangeOver && isCutOutKnown != isCutInKnown;
        OfEitherWay = Action is null && isCutOutKnown != isCutInKnown ? Degrees.In(site.CutOutNeeded ?? site.CutInNeeded) : null;
        OldOfEitherSide = !AreBothRead && MarkedOfEitherSide.Of(plate) is { Only: { } was } old && Degrees.In(old.CutOut is null ? site.CutInNeeded : site.CutOutNeeded) is { } needed && needed.Equals(was) ? old : null;
        StopsAt = Function == ThermostatFunction.Box ? Degrees.In(site.CutOutNeeded) : null;
        StartsAt = Function == ThermostatFunction.Box ? Degrees.In(site.CutInNeeded) : null;
        Main = Points.Of(Action, site.CutOutNeeded, site.CutInNeeded);
        Fans = Points.Of(ThermostatAction.OpensOnRise, site.FanCutOutNeeded, site.FanCutInNeeded);
        Tells = Function switch
        {
            ThermostatFunction.FanDelay or ThermostatFunction.LowLimit => Moving.OnFall,
            ThermostatFunction.Box when Action != ThermostatAction.OpensOnRise => Moving.OnFall,
            _ => Moving.OnRise,
        };
    }

    /// <summary>What the old one was there for.</summary>
    public ThermostatFunction? Function { get; }

    /// <summary>Which way its contacts went: of three wires those that end the defrost; else by both temperatures, by its function where that leaves but one way, or else as one side of them is wired, as marked or as taken; null when not known.</summary>
    public ThermostatAction? Action { get; }

    /// <summary>Whether what is marked and what is wired say different things of that, so that nothing can be told.</summary>
    public bool Disagrees { get; }

    /// <summary>Whether its temperatures are such as no contacts of its function have.</summary>
    public bool IsAgainstItsFunction => TakenOfTheOldOne.IsAgainst(Function, Action);

    /// <summary>Whether its temperatures count as they do for what is only taken: of a box thermostat, which may be one for heat, or by a differential that is counted one way.</summary>
    public bool IsTaken { get; }

    /// <summary>Whether both temperatures are known, and neither is counted.</summary>
    public bool AreBothRead => AreBothKnown && Counts is null;

    /// <summary>The field of the temperature that is not read: counted by a differential, or not known at all.</summary>
    public string Unread => Counts ?? (isCutOutKnown ? "cutIn" : isCutInKnown ? "cutOut" : PartField(Tells));

    /// <summary>Whether one temperature of change-over contacts is known, and not of which side.</summary>
    public bool MayBeOfEitherSide { get; }

    /// <summary>Whether one temperature is known, and one side wired of contacts that have two: plates mostly name the usual side's.</summary>
    public bool MayBeOfOtherSide { get; }

    /// <summary>The one temperature that is known of contacts that may open or close on rise, °C, so that it tells nothing yet; null where both or none are, or the way is known.</summary>
    public double? OfEitherWay { get; }

    /// <summary>What is marked of old change-over contacts, where it is what is needed still; null otherwise.</summary>
    public MarkedOfEitherSide? OldOfEitherSide { get; }

    /// <summary>Where a box thermostat stops the cooling, or the heat, °C: what its function is about whichever of its sides is wired. Null of others, and where not known.</summary>
    public double? StopsAt { get; }

    /// <summary>Where it starts it again, °C, likewise.</summary>
    public double? StartsAt { get; }

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

    private bool HasOneWay => TakenOfTheOldOne.HasOneWay(Function);

    private bool AreBothKnown => isCutOutKnown && isCutInKnown;

    /// <summary>The one of the two temperatures that is not read, but counted from the other by a differential; null where none is.</summary>
    private string? Counts { get; }

    private bool IsMarkedAgainstFunction { get; }

    /// <summary>What a need wants.</summary>
    public static WantedPoints Of(ThermostatNeed need) => need.Once(static need => new WantedPoints(need));

    /// <summary>What an answer by one of the two temperatures rests on that is only taken, and the field of the old plate that would tell; null where it rests on nothing of the kind.</summary>
    public (string Field, FormattableString Taken)? RestsOn(Moving moving)
    {
        if (IsMarkedAgainstFunction) return ("action", $"What the old ones are marked to do is not what a {new Spelt<ThermostatFunction>(Function!.Value)} does: {new Spelt<ThermostatAction>(Action!.Value)} is taken.");
        if (HasOneWay && IsRead(moving)) return null;
        if (IsTaken) return ("action", $"What the old ones do is not marked: {new Spelt<ThermostatAction>(Action!.Value)} is taken.");
        if (MayBeOfOtherSide && !isActionMarked) return ("action", $"Whether the old ones change over is not marked, and so the temperature may be of a side that is not wired: of the one that is wired is taken.");
        if (MayBeOfOtherSide) return (Unread, $"Of which side of them the old one's temperature is, is not marked: of the one that is wired is taken.");
        return IsRead(moving) ? null : (Unread, $"It is counted by the old one's differential.");
    }

    /// <summary>Whether a temperature is read, so that in doubt is only which of the two it is.</summary>
    public bool IsRead(Moving moving) => PartField(moving) != Counts;

    /// <summary>The site's field of one of the two temperatures.</summary>
    public string Field(Moving moving) => $"{PartField(moving)}Needed";

    /// <summary>The part's field of one of the two temperatures.</summary>
    public string PartField(Moving moving) => (moving == Moving.OnRise) == (Action == ThermostatAction.OpensOnRise) ? "cutOut" : "cutIn";

    private static string? Counted(ThermostatNeed need) => ThermostatDeductions.ThirdOfTaken(need.Plate, need.Site).FirstOrDefault() is { } third && (third.Field == "cutInNeeded" ? need.Site.CutInNeeded : need.Site.CutOutNeeded) is { } there && Deducing.Text(there) == third.Text
        ? third.From[0] == "cutIn" ? "cutOut" : "cutIn"
        : null;

    private static bool AreTwo(ThermostatAction? one, ThermostatAction? other) => one is not null and not ThermostatAction.ChangeOver && other is not null and not ThermostatAction.ChangeOver && one != other;
}
