using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Trade;

/// <summary>What a maker makes.</summary>
[Flags]
public enum Programme
{
    None = 0,

    /// <summary>Fan and blower motors to NEMA habits.</summary>
    Fans = 1,

    /// <summary>Belt blower and general motors to NEMA frames.</summary>
    Frames = 2,

    /// <summary>Shaded pole and unit-bearing motors.</summary>
    Small = 4,

    /// <summary>Motors to IEC habits.</summary>
    Iec = 8,

    /// <summary>Electronically commutated motors.</summary>
    Electronic = 16,

    /// <summary>Capacitors.</summary>
    Capacitors = 32,

    /// <summary>Refrigerant valves.</summary>
    Valves = 64,

    /// <summary>Contactors and relays.</summary>
    Contactors = 128,

    /// <summary>Pressure controls.</summary>
    PressureControls = 256,

    /// <summary>Thermostats, fan-delay and defrost-end switches.</summary>
    Thermostats = 512,

    /// <summary>Defrost timers.</summary>
    DefrostTimers = 1024,
}

/// <summary>An invented maker.</summary>
/// <param name="Name">An invented word.</param>
/// <param name="NumberPattern">How it forms part numbers: # is a digit of its running number, @ a letter made from it, all else stands.</param>
/// <param name="Makes">What it makes.</param>
/// <param name="NamesTurnFrom">The end from which its catalogue names the turn.</param>
/// <param name="PriceFactor">Its prices over the usual ones.</param>
/// <param name="GapShare">How many of its entries lack fields that others give.</param>
public sealed record Maker(string Name, string NumberPattern, Programme Makes, MotorEnd NamesTurnFrom, double PriceFactor, double GapShare)
{
    /// <summary>All makers. The words are invented and meant to be nobody's name; the number patterns follow no scheme in use.</summary>
    public static IReadOnlyList<Maker> All { get; } =
    [
        new("Quorblen", "QUO-#@##-#", Programme.Fans | Programme.Frames | Programme.Small, MotorEnd.Lead, 1.00, 0.12),
        new("Vurmethka", "V#U##-@#", Programme.Fans | Programme.Frames, MotorEnd.Lead, 1.15, 0.08),
        new("Oskrilda", "OSK ## ##@", Programme.Fans | Programme.Small | Programme.Electronic, MotorEnd.Shaft, 0.95, 0.15),
        new("Plinzoram", "@PZ-####", Programme.Fans | Programme.Frames | Programme.Electronic, MotorEnd.Lead, 1.05, 0.14),
        new("Zembrasto", "##-ZEM-##@", Programme.Fans | Programme.Small, MotorEnd.Lead, 0.88, 0.20),
        new("Yavontik", "Y##@##K", Programme.Fans | Programme.Frames, MotorEnd.Shaft, 1.10, 0.10),
        new("Brulqueft", "BQ#-#@-##", Programme.Fans | Programme.Small, MotorEnd.Lead, 0.92, 0.18),
        new("Tizzavarn", "TZ@####V", Programme.Fans | Programme.Frames | Programme.Capacitors, MotorEnd.Lead, 0.98, 0.16),
        new("Uglovisk", "UGL##.##-@", Programme.Iec | Programme.Small, MotorEnd.Shaft, 1.20, 0.10),
        new("Fnarovelt", "F#@#N-##", Programme.Iec | Programme.Frames, MotorEnd.Shaft, 1.12, 0.12),
        new("Jaxumbril", "JX-##@##", Programme.Iec | Programme.Electronic, MotorEnd.Shaft, 1.25, 0.10),
        new("Krovadune", "K#D##@#", Programme.Fans | Programme.Small | Programme.Capacitors, MotorEnd.Shaft, 0.85, 0.19),
        new("Wexthrupe", "@W-#X#-##", Programme.Frames | Programme.Iec | Programme.Electronic, MotorEnd.Shaft, 1.08, 0.13),
        new("Ebblegond", "EG##@-##", Programme.Fans | Programme.Frames | Programme.Electronic, MotorEnd.Lead, 1.02, 0.15),
        new("Gwimbarule", "G-##W##@", Programme.Capacitors, MotorEnd.Shaft, 1.00, 0.15),
        new("Hozzelpid", "HZ####@", Programme.Capacitors, MotorEnd.Shaft, 0.90, 0.18),
        new("Dwovarric", "DW-##@##", Programme.Valves, MotorEnd.Shaft, 1.00, 0.14),
        new("Clirstobe", "C#L-##@#", Programme.Valves, MotorEnd.Shaft, 1.12, 0.10),
        new("Menquathe", "@#MQ###", Programme.Valves, MotorEnd.Shaft, 0.94, 0.18),
        new("Strolvimb", "SV##-@##", Programme.Valves, MotorEnd.Shaft, 1.06, 0.16),
        new("Pazzuquen", "P##.#@#", Programme.Valves, MotorEnd.Shaft, 0.90, 0.20),
        new("Drumvasket", "DV-##@-##", Programme.Contactors, MotorEnd.Shaft, 1.00, 0.12),
        new("Knilloroth", "K@#L-###", Programme.Contactors, MotorEnd.Shaft, 0.93, 0.17),
        new("Ostrefulm", "OF ##.##@", Programme.Contactors, MotorEnd.Shaft, 1.14, 0.10),
        new("Pluvarteck", "PV#-##@-#", Programme.PressureControls, MotorEnd.Shaft, 1.00, 0.13),
        new("Quendrasol", "@QD-####", Programme.PressureControls, MotorEnd.Shaft, 0.91, 0.18),
        new("Yelbranick", "YB##.@##", Programme.PressureControls, MotorEnd.Shaft, 1.09, 0.11),
        new("Thrimbolev", "TL##-##@", Programme.Thermostats, MotorEnd.Shaft, 1.00, 0.12),
        new("Vaskendorp", "@VK-##.##", Programme.Thermostats, MotorEnd.Shaft, 0.92, 0.18),
        new("Ilquarran", "IQ#@-###", Programme.Thermostats, MotorEnd.Shaft, 1.11, 0.10),
        new("Ulquetharn", "UQ#@-##", Programme.DefrostTimers, MotorEnd.Shaft, 1.00, 0.12),
        new("Brenzolith", "@#BZ-##", Programme.DefrostTimers, MotorEnd.Shaft, 0.93, 0.18),
        new("Vantaskrel", "VK##.##@", Programme.DefrostTimers, MotorEnd.Shaft, 1.11, 0.10),
    ];

    /// <summary>Those that make something.</summary>
    public static IReadOnlyList<Maker> WhoMake(Programme what) => [.. All.Where(maker => maker.Makes.HasFlag(what))];
}
