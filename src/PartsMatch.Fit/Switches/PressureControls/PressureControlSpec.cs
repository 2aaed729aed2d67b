using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What a pressure control is: a plate, or a catalogue entry. Null is unknown.</summary>
public sealed record PressureControlSpec : ContactSpec
{
    private const string Does = "What it does";
    private const string Setting = "Setting";
    private const string Body = "Body";

    /// <summary>Its function.</summary>
    [Field("Function", "High pressure, low pressure, or fan cycling.", Group = Does)]
    public PressureFunction? Function { get; init; }

    /// <summary>What its contacts do.</summary>
    [Field("Contacts do", "Open on rise, open on fall (close on rise), or change over.", Group = Does)]
    public PressureAction? Action { get; init; }

    /// <summary>Reset.</summary>
    [Field("Reset", "Automatic, or manual with a button.", Group = Does)]
    public ContactReset? Reset { get; init; }

    /// <summary>Poles.</summary>
    [Field("Poles", "Contacts that move together.", Group = Does, Example = "1")]
    public int? Poles { get; init; }

    /// <summary>Whether it can be set.</summary>
    [Field("Can be set", "Whether it has a setting screw; a disc-type switch has none.", Group = Setting)]
    public bool? IsAdjustable { get; init; }

    /// <summary>Pressures that it can be set to.</summary>
    [Field("Range", "From the lowest to the highest setting, gauge pressure; a vacuum in inches of mercury: 20 in Hg to 100 psi.", Group = Setting)]
    public PressureSpan? Range { get; init; }

    /// <summary>Differentials that it can be set to.</summary>
    [Field("Differential", "From the least to the greatest, or the only one.", Group = Setting, Example = "20 to 80 psi")]
    public PressureSpan? Differential { get; init; }

    /// <summary>Where it opens.</summary>
    [Field("Cut-out", "Where the contacts that keep the equipment running open, as set or as shipped.", Group = Setting, Example = "10 psi")]
    public Pressure? CutOut { get; init; }

    /// <summary>Where it closes again.</summary>
    [Field("Cut-in", "Where they close again, as set or as shipped.", Group = Setting, Example = "30 psi")]
    public Pressure? CutIn { get; init; }

    /// <summary>Highest working pressure.</summary>
    [Field("Highest pressure", "Highest working pressure of its bellows: MAX, MWP.", Group = Body, Example = "475 psi")]
    public Pressure? PressureMost { get; init; }

    /// <summary>How it is connected.</summary>
    [Field("Connection", "Capillary, flare, thread, or braze.", Group = Body)]
    public PressureConnection? Connection { get; init; }

    /// <summary>What is wetted.</summary>
    [Field("Wetted materials", "Copper, brass, steel: all that the refrigerant touches.", Group = Body)]
    public Choices<WettedMaterial>? Materials { get; init; }

    /// <summary>Which way the contacts go that keep the equipment running, whose settings cut-out and cut-in are: of change-over contacts one side, by the function; null when not known.</summary>
    internal PressureAction? Running => (Action, Function) switch
    {
        (PressureAction.OpensOnRise or PressureAction.OpensOnFall, _) => Action,
        (_, PressureFunction.HighPressure) => PressureAction.OpensOnRise,
        (_, not null) => PressureAction.OpensOnFall,
        _ => null,
    };
}
