using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>The main poles of a contactor or relay.</summary>
public enum PoleCount
{
    /// <summary>One pole.</summary>
    [Words("1 pole", "1P", "single pole", "one pole", "1 pole contactor")]
    One,

    /// <summary>One pole, and a shunt in the place of the second: that line stays closed.</summary>
    [Words("1 pole and shunt", "1 pole with shunt", "1 pole w/ shunt", "1 pole shunt", "1P shunt", "1P and shunt", "1P with shunt", "1P w/shunt", "single pole with shunt", "1 pole with buss bar", "1.5 pole", "1-1/2 pole")]
    OneAndShunt,

    /// <summary>Two poles.</summary>
    [Words("2 poles", "2 pole", "2P", "double pole", "two pole", "two poles")]
    Two,

    /// <summary>Three poles.</summary>
    [Words("3 poles", "3 pole", "3P", "triple pole", "three pole", "three poles")]
    Three,

    /// <summary>Four poles.</summary>
    [Words("4 poles", "4 pole", "4P", "four pole", "four poles")]
    Four,
}

/// <summary>What contacts do when the coil pulls in.</summary>
public enum ContactAction
{
    /// <summary>They close.</summary>
    [Words("normally open", "NO", "N.O.")]
    NormallyOpen,

    /// <summary>They open.</summary>
    [Words("normally closed", "NC", "N.C.")]
    NormallyClosed,

    /// <summary>They change over.</summary>
    [Words("change-over", "double throw", "changeover", "CO", "C/O")]
    ChangeOver,

    /// <summary>One pole closes and another opens: neither stands for both.</summary>
    [Words("one of each", "one normally open and one normally closed", "one NO and one NC")]
    OneOfEach,
}

/// <summary>Which sides of change-over contacts are wired, or which poles of one that has one of each kind.</summary>
public enum ContactSides
{
    /// <summary>The one that closes as the coil pulls in.</summary>
    [Words("the normally open one", "normally open", "NO", "N.O.")]
    NormallyOpen,

    /// <summary>The one that opens.</summary>
    [Words("the normally closed one", "normally closed", "NC", "N.C.")]
    NormallyClosed,

    /// <summary>Both, of one pole or of several.</summary>
    [Words("both")]
    Both,
}

/// <summary>A size of NEMA ICS 2.</summary>
public enum NemaSize
{
    /// <summary>Size 00.</summary>
    [Words("NEMA 00", "NEMA SIZE 00", "size 00", "00")]
    DoubleZero,

    /// <summary>Size 0.</summary>
    [Words("NEMA 0", "NEMA SIZE 0", "size 0", "0")]
    Zero,

    /// <summary>Size 1.</summary>
    [Words("NEMA 1", "NEMA SIZE 1", "size 1", "1")]
    One,

    /// <summary>Size 1P, for single-phase motors.</summary>
    [Words("NEMA 1P", "NEMA SIZE 1P", "size 1P", "1P")]
    OneP,

    /// <summary>Size 2.</summary>
    [Words("NEMA 2", "NEMA SIZE 2", "size 2", "2")]
    Two,

    /// <summary>Size 3.</summary>
    [Words("NEMA 3", "NEMA SIZE 3", "size 3", "3")]
    Three,
}

/// <summary>What holds a contactor or relay.</summary>
public enum ContactorMount
{
    /// <summary>Screws through its base plate.</summary>
    [Words("base plate", "panel mount", "panel", "plate mount", "screw mount")]
    BasePlate,

    /// <summary>A rail of 35 mm (IEC 60715).</summary>
    [Words("DIN rail", "rail", "35 mm rail", "DIN")]
    Rail,

    /// <summary>A bracket or flange.</summary>
    [Words("bracket", "flange mount", "side flange")]
    Bracket,

    /// <summary>A socket that it plugs into.</summary>
    [Words("socket", "plug-in", "octal base", "plug-in base")]
    Socket,
}

/// <summary>What wires go onto.</summary>
public enum TerminalKind
{
    /// <summary>Binding screws.</summary>
    [Words("screws", "screw terminals", "binding screws", "screw")]
    Screws,

    /// <summary>Box lugs, which take bare wire.</summary>
    [Words("box lugs", "lugs", "lug", "box lug", "pressure lugs")]
    Lugs,

    /// <summary>Quick-connects of 1/4 in.</summary>
    [Words("quick connects", "quick connect", "1/4 in quick connects", "QC", "spade", "spades", "tabs")]
    QuickConnects,

    /// <summary>Pins of a socket.</summary>
    [Words("pins", "plug-in pins")]
    Pins,
}
