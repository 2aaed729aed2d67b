namespace PartsMatch.Fit.Judging;

/// <summary>With what a field is read, the easiest first: a documented effort a field, in minutes with the tool at hand (practice).</summary>
public enum Tool
{
    /// <summary>An eye: on the plate, on the part, on the wiring.</summary>
    Look,

    /// <summary>A tape.</summary>
    Tape,

    /// <summary>Calipers, with the place made bare.</summary>
    Calipers,

    /// <summary>A meter or a thermometer, on something that is live or runs.</summary>
    Meter,

    /// <summary>A ladder: what is seen only at the fan itself, with the guard off.</summary>
    Ladder,
}

/// <summary>What reading with a tool costs and is called.</summary>
public static class Tools
{
    /// <summary>Minutes, all told (practice): 1 to look, 2 with a tape, 3 with calipers, 5 with a meter, 10 with a ladder.</summary>
    public static double Minutes(this Tool tool) => tool switch
    {
        Tool.Look => 1,
        Tool.Tape => 2,
        Tool.Calipers => 3,
        Tool.Meter => 5,
        _ => 10,
    };

    /// <summary>What to do, before the field's label: "Measure with calipers".</summary>
    public static string Verb(this Tool tool) => tool switch
    {
        Tool.Look => "Look for",
        Tool.Tape => "Measure with a tape",
        Tool.Calipers => "Measure with calipers",
        Tool.Meter => "Measure with a meter",
        _ => "Go up and look at",
    };
}
