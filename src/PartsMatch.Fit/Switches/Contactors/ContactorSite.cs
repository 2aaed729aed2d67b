using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What a contactor or relay will meet where it is put in. Null is unknown.</summary>
public sealed record ContactorSite : ContactSite
{
    private const string Control = "Control circuit";
    private const string Wired = "As it is wired";

    /// <summary>Volts of the control circuit.</summary>
    [Field("Control volts", "At the coil's wires while it is called for.", Group = Control, Tool = Tool.Meter, Example = "24 V")]
    public ElectricPotential? ControlVolts { get; init; }

    /// <summary>Frequency of the control circuit.</summary>
    [Field("Control frequency", "60 Hz or 50 Hz.", Group = Control)]
    public Frequency? ControlFrequency { get; init; }

    /// <summary>Current of the control circuit.</summary>
    [Field("Control current", "AC behind a transformer, DC behind a rectifier or an electronic control.", Group = Control)]
    public CoilCurrent? ControlCurrent { get; init; }

    /// <summary>The control transformer's VA.</summary>
    [Field("Transformer's VA", "On the transformer that feeds the coil.", Group = Control, Example = "40 VA")]
    public ElectricApparentPower? TransformerVa { get; init; }

    /// <summary>VA of what else hangs on it.</summary>
    [Field("Other coils' VA", "All else on that transformer, holding VA, without this coil.", Group = Control, Example = "20 VA")]
    public ElectricApparentPower? OtherCoilsVa { get; init; }

    /// <summary>Lines that it switches.</summary>
    [Field("Lines switched", "How many lines go through its contacts: a line on a shunt is not switched.", Group = Wired, Example = "2")]
    public int? LinesSwitched { get; init; }

    /// <summary>Which sides are wired.</summary>
    [Field("Sides wired", "Of an old one with change-over contacts: which of their two sides have a wire; of one with a normally open and a normally closed pole: which of the two.", Group = Wired)]
    public ContactSides? SidesWired { get; init; }

    /// <summary>Whether the shunt fed the crankcase heat.</summary>
    [Field("Shunt feeds crankcase heat", "Whether the line that stays closed keeps a crankcase heater, or the winding, warm while the compressor is off.", Group = Wired)]
    public bool? ShuntFeedsHeat { get; init; }

    /// <summary>Auxiliary contacts in use.</summary>
    [Field("Auxiliary contacts in use", "Those with wires on them: 1 NO, 1 NO + 1 NC, none.", Group = Wired)]
    public AuxiliaryContacts? AuxiliariesUsed { get; init; }

    /// <summary>Whether it is interlocked with another contactor.</summary>
    [Field("Interlocked with another", "Whether a lever keeps it and a second contactor from being in together, as on a pair that reverses a motor, changes its speed or starts it in star and delta.", Group = Wired)]
    public bool? IsInterlocked { get; init; }

    /// <summary>What is wired to the old contacts.</summary>
    internal ContactAction? WiredAction => SidesWired switch
    {
        null => null,
        ContactSides.NormallyOpen => ContactAction.NormallyOpen,
        ContactSides.NormallyClosed => ContactAction.NormallyClosed,
        _ => ContactAction.ChangeOver,
    };
}
