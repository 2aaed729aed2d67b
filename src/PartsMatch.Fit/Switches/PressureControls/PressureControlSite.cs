using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What a pressure control will meet where it is put in. Null is unknown.</summary>
public sealed record PressureControlSite : ContactSite
{
    private const string Setting = "Setting there";
    private const string Circuit = "Refrigerant circuit";

    /// <summary>Where it is to open.</summary>
    [Field("Cut-out needed", "Where the contacts that keep the equipment running are to open.", Group = Setting, Example = "10 psi")]
    public Pressure? CutOutNeeded { get; init; }

    /// <summary>Where it is to close again.</summary>
    [Field("Cut-in needed", "Where they are to close again; of no matter with manual reset.", Group = Setting, Example = "30 psi")]
    public Pressure? CutInNeeded { get; init; }

    /// <summary>Which sides are wired.</summary>
    [Field("Sides wired", "Of an old one with change-over contacts: which of its two sides have a wire.", Group = Setting)]
    public SidesWired? SidesWired { get; init; }

    /// <summary>What is wired to the old contacts.</summary>
    internal PressureAction? Wired => SidesWired switch
    {
        null => null,
        Contacts.SidesWired.OpensOnRise => PressureAction.OpensOnRise,
        Contacts.SidesWired.ClosesOnRise => PressureAction.OpensOnFall,
        _ => PressureAction.ChangeOver,
    };

    /// <summary>Which way the contacts go that keep the equipment running: as the old one's plate tells, or else the side that alone is wired; null when not known.</summary>
    internal PressureAction? RunningBeside(PressureControlSpec plate) => plate.Running ?? (Wired == PressureAction.ChangeOver ? null : Wired);

    /// <summary>Design pressure of its side.</summary>
    [Field("Design pressure", "On the unit's plate, of the side that it sits on.", Group = Circuit, Example = "450 psi")]
    public Pressure? DesignPressure { get; init; }

    /// <summary>Whether that side has a relief valve.</summary>
    [Field("Relief valve there", "Whether that side has a relief valve: small equipment often has none, or a fusible plug instead, and then the design pressure alone limits.", Group = Circuit)]
    public bool? HasRelief { get; init; }

    /// <summary>Setting of the relief valve.</summary>
    [Field("Relief's setting", "Marked on the relief valve of that side.", Group = Circuit, Example = "450 psi")]
    public Pressure? ReliefSetting { get; init; }

    /// <summary>Test pressure of its side.</summary>
    [Field("Test pressure", "On the unit's plate, of the side that it sits on.", Group = Circuit, Example = "475 psi")]
    public Pressure? TestPressure { get; init; }
}
