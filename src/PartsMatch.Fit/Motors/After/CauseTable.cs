using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.After;

/// <summary>What readings can speak for or against a cause; its words are those of docs/after-swap.md.</summary>
public enum Evidence
{
    /// <summary>The condensing split is over its limit.</summary>
    [Words("split over its limit")]
    SplitOver,

    /// <summary>The amps are over the plate.</summary>
    [Words("amps over the plate")]
    AmpsOver,

    /// <summary>Fewer fans run than there are.</summary>
    [Words("a fan stands still")]
    FanStands,

    /// <summary>The new one turns backwards.</summary>
    [Words("turns backwards")]
    Backwards,

    /// <summary>All fans run, and the new one the right way.</summary>
    [Words("all fans run and turn right")]
    FansRight,

    /// <summary>It runs too slowly.</summary>
    [Words("runs slowly")]
    Slow,

    /// <summary>The coil is dirty.</summary>
    [Words("coil seen dirty")]
    CoilDirty,

    /// <summary>The coil is clean.</summary>
    [Words("coil seen clean")]
    CoilClean,

    /// <summary>Leaving air comes back.</summary>
    [Words("air comes back")]
    AirComesBack,

    /// <summary>No leaving air comes back.</summary>
    [Words("no air comes back")]
    AirStaysAway,

    /// <summary>The by-pass line is warm.</summary>
    [Words("by-pass line warm")]
    BypassWarm,

    /// <summary>The by-pass line is not warm.</summary>
    [Words("by-pass line not warm")]
    BypassCold,

    /// <summary>At rest the pressure is over the refrigerant's.</summary>
    [Words("standing pressure too high")]
    StandingHigh,

    /// <summary>At rest the pressure is the refrigerant's.</summary>
    [Words("standing pressure right")]
    StandingRight,

    /// <summary>The liquid is much colder than it condenses.</summary>
    [Words("much subcooling")]
    MuchSubcooling,

    /// <summary>The box is far over its setpoint.</summary>
    [Words("box still warm")]
    BoxWarm,

    /// <summary>The suction is far over its design.</summary>
    [Words("suction over design")]
    SuctionHigh,

    /// <summary>The volts are outside the tap.</summary>
    [Words("volts off the tap")]
    VoltsOff,

    /// <summary>The volts of the legs are unlike.</summary>
    [Words("volts out of balance")]
    VoltsUnlike,

    /// <summary>It has no three legs.</summary>
    [Words("single-phase motor")]
    SinglePhase,

    /// <summary>The blade touches.</summary>
    [Words("blade touches")]
    BladeTouches,

    /// <summary>The run capacitor is not the plate's.</summary>
    [Words("capacitor measured wrong")]
    CapacitorOff,

    /// <summary>The run capacitor is the plate's.</summary>
    [Words("capacitor measured right")]
    CapacitorRight,

    /// <summary>It has no run capacitor.</summary>
    [Words("motor without run capacitor")]
    NoCapacitor,
}

/// <summary>Causes by evidence (practice): what each finding adds to a cause. docs/after-swap.md shows the same table, and a test keeps the two alike.</summary>
public static class CauseTable
{
    /// <summary>The causes, those of the split in the order in which the trade names them.</summary>
    public static IReadOnlyList<Cause<Evidence>> All { get; } =
    [
        new("fanOutOrBackwards", "A fan is out or turns backwards", "Count the fans that run, and look at the turn of each.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 3), new(Evidence.FanStands, 10), new(Evidence.Backwards, 10), new(Evidence.Slow, 3), new(Evidence.FansRight, -5)]),
        new("dirtyCoil", "Dirty coil", "Look through the coil against the light, and clean it.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 3), new(Evidence.CoilDirty, 8), new(Evidence.CoilClean, -5)]),
        new("recirculation", "Warm air comes back to the coil", "Measure the entering air at several places of the coil; look for walls, missing panels, dead openings.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 2), new(Evidence.AirComesBack, 8), new(Evidence.FanStands, 2), new(Evidence.AirStaysAway, -4)]),
        new("valveByPassing", "A condensing-pressure valve by-passes", "Feel the by-pass line in warm weather: it must be cool.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 1), new(Evidence.BypassWarm, 8), new(Evidence.BypassCold, -4)]),
        new("nonCondensables", "Air or other gas in the system", "Unit off, coil at air temperature: compare the standing pressure with the refrigerant's at that temperature.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 1), new(Evidence.StandingHigh, 8), new(Evidence.MuchSubcooling, 2), new(Evidence.StandingRight, -4)]),
        new("overcharge", "Overcharge", "Compare subcooling with the unit's papers; weigh the charge. The split is never a way to charge.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 1), new(Evidence.MuchSubcooling, 5)]),
        new("pullingDown", "A warm box still pulling down", "Wait until the box is near its setting, and measure again.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 1), new(Evidence.BoxWarm, 6), new(Evidence.SuctionHigh, 2)]),
        new("heavyLoad", "Heavy load", "Look at the suction saturation: doors, product, defrost heat.", Evidence.SplitOver,
            [new(Evidence.SplitOver, 1), new(Evidence.SuctionHigh, 5), new(Evidence.BoxWarm, 1)]),
        new("bladeTouching", "The blade drags on its ring", "Turn it by hand, power off.", Evidence.AmpsOver,
            [new(Evidence.AmpsOver, 1), new(Evidence.BladeTouches, 8)]),
        new("wrongVolts", "Volts off the tap in use", "Look which tap is connected, and measure at the leads under load.", Evidence.AmpsOver,
            [new(Evidence.AmpsOver, 2), new(Evidence.VoltsOff, 8)]),
        new("unlikeLegs", "Unlike legs", "Look at contactor poles and terminals, and at single-phase loads on one leg.", Evidence.AmpsOver,
            [new(Evidence.AmpsOver, 1), new(Evidence.VoltsUnlike, 7), new(Evidence.SinglePhase, -10)]),
        new("fanTooHeavy", "The fan is too much for the motor", "Compare blade diameter, pitch, depth and speed with the old ones: power goes with the cube of speed.", Evidence.AmpsOver,
            [new(Evidence.AmpsOver, 3), new(Evidence.Slow, 4)]),
        new("wrongCapacitor", "Wrong or weak run capacitor", "Measure it, and compare with the new motor's plate.", Evidence.AmpsOver,
            [new(Evidence.AmpsOver, 2), new(Evidence.Slow, 3), new(Evidence.CapacitorOff, 8), new(Evidence.CapacitorRight, -6), new(Evidence.NoCapacitor, -10)]),
    ];
}
