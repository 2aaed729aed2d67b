using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>The words of contactors' and relays' plates.</summary>
public static class ContactorVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(
    [
        new("poleCount", "POLES", "POLE", "NO OF POLES"),
        new("contactAction", "CONTACTS", "CONTACT", "CONTACT FORM"),
        new("auxiliaries", "AUX", "AUX CONTACT", "AUX CONTACTS", "AUXILIARY", "AUXILIARY CONTACTS", "AUXILIARIES"),
        new("coilVolts", "COIL", "COIL VOLTS", "COIL VOLTAGE", "COIL V", "COIL VAC", "CONTROL VOLTS", "UC", "US", "BOBINE", "SPULE") { SaidBehind = new("coilCurrent", "DC"), Past = ["coilFrequency", "coilVa", "coilOhms"], PastUnits = CoilMarks.Taken, OthersBeside = [.. ContactLabels.BesideVolts, "continuousAmps", "acOneAmps", "acThreeAmps", "acEightAmps"] },
        new("coilVolts", "COIL VDC", "VDC COIL", "COIL DC", "DC COIL") { Says = new("coilCurrent", "DC") },
        new("coilCurrent", "COIL CURRENT"),
        new("coilFrequency", "FREQ", "FREQUENCY", "COIL HZ", "COIL FREQ") { ByUnit = true },
        new("coilVa", "COIL VA", "VA SEALED", "SEALED VA", "HOLDING VA", "VA HOLDING", "HOLDING", "HOLD") { ByUnit = true, NeverBeside = "pilotDuty" },
        new("coilOhms", "COIL OHMS", "COIL RES", "RESISTANCE", "COIL RESISTANCE") { ByUnit = true },
        new("size", "SIZE", "NEMA", "NEMA SIZE", "SZ"),
        new("continuousAmps", "CONT", "CONTINUOUS", "CONT AMPS", "CONTINUOUS AMPS", "CONT CURRENT", "ITH", "I TH"),
        new("acOneAmps", "AC-1", "AC1 AMPS", "IE AC-1", "IE/AC-1"),
        new("acThreeAmps", "AC-3", "AC3 AMPS", "IE AC-3", "IE/AC-3"),
        new("acEightAmps", "AC-8A", "AC-8B", "AC-8", "IE AC-8A", "IE AC-8B"),
        new("ratedVolts", "RATED VOLTS", "LINE VOLTS", "CONTACT VOLTS", "VOLTAGE", "UE", "LINE", "CONTACTS", "CONTACT", "CONTACT RATING", "CONTACTS RATED") { ByUnit = true },
        ContactLabels.At("acOneAmps", "acThreeAmps", "acEightAmps"),
        new("fullLoadAmps", "FLA", "F.L.A.", "FL AMPS", "FULL LOAD AMPS", "FULL LOAD", "INDUCTIVE", "IND", "IND AMPS", "MOTOR AMPS", "FL"),
        new("lockedRotorAmps", "LRA", "L.R.A.", "LR AMPS", "LOCKED ROTOR AMPS", "LOCKED ROTOR", "LR"),
        new("resistiveAmps", "RES", "RESISTIVE", "RES AMPS", "RESISTIVE AMPS", "RESIST", "RES LOAD"),
        new("singlePhaseHorsepower", "HP 1PH", "HP 1 PH", "1PH HP", "1 PH HP", "HP SINGLE PHASE", "SINGLE PHASE HP", "HP 1Ø", "1Ø HP") { Unit = "hp" },
        new("threePhaseHorsepower", "HP 3PH", "HP 3 PH", "3PH HP", "3 PH HP", "HP THREE PHASE", "THREE PHASE HP", "HP 3Ø", "3Ø HP") { Unit = "hp" },
        new("directVolts", "DC VOLTS"),
        new("directAmps", "DC AMPS", "AMPS DC"),
        new("pilotDuty", "PILOT DUTY", "PILOT", "AUX RATING", "CONTACT RATING CODE"),
        new("contacts", "CONTACTS", "CONTACT TYPE"),
        new("hazards", "HAZ", "HAZARD", "REFRIGERANT CLASS", "SUITABLE FOR"),
        new("mounts", "MOUNT", "MOUNTING", "MTG"),
        new("terminals", "TERMINALS", "TERM", "TERMS"),
    ],
    [
        new("poleCount", "SPST", "1 pole"), new("poleCount", "SPNO", "1 pole"), new("contactAction", "SPNO", "normally open"), new("poleCount", "SPNC", "1 pole"), new("contactAction", "SPNC", "normally closed"),
        .. from both in (string[])["SPNO SPNC", "SPNC SPNO", "SPNO AND SPNC", "SPNC AND SPNO", "1 SPNO 1 SPNC", "1 SPNC 1 SPNO", "1 FORM A 1 FORM B", "1 FORM B 1 FORM A"] from said in (PlateWord[])[new("poleCount", both, "2 poles"), new("contactAction", both, "one of each")] select said,
        .. from poles in (string[])["1 pole", "2 poles", "3 poles", "4 poles"] from form in (NamedText[])[new("A", "normally open"), new("B", "normally closed"), new("C", "change-over")] let word = $"{poles[0]} FORM {form.Name}" from said in (PlateWord[])[new("poleCount", word, poles), new("contactAction", word, form.Text)] select said,
        new("poleCount", "SPDT", "1 pole"), new("contactAction", "SPDT", "change-over"),
        new("poleCount", "DPST", "2 poles"), new("poleCount", "DPNO", "2 poles"), new("contactAction", "DPNO", "normally open"), new("poleCount", "DPNC", "2 poles"), new("contactAction", "DPNC", "normally closed"),
        new("poleCount", "DPDT", "2 poles"), new("contactAction", "DPDT", "change-over"),
        new("poleCount", "3PDT", "3 poles"), new("contactAction", "3PDT", "change-over"),
        OfPoles("NORMALLY OPEN", "normally open"), OfPoles("NORMALLY CLOSED", "normally closed"),
        OfPoles("N.O.", "normally open") with { OnlyBehind = "poleCount" }, OfPoles("N.C.", "normally closed") with { OnlyBehind = "poleCount" },
        .. from both in (string[])["N.O. N.C.", "N.C. N.O.", "N.O. COM N.C.", "N.C. COM N.O.", "N.O. C N.C.", "N.C. C N.O.", "COM N.O. N.C.", "COM N.C. N.O."] select OfPoles(both, "change-over") with { OnlyBehind = "poleCount" },
        .. from open in Enumerable.Range(1, 3) from closed in Enumerable.Range(1, 3) select Counted(open, closed),
        new("hasInterlock", "MECHANICAL INTERLOCK", "yes"), new("hasInterlock", "INTERLOCKED", "yes"), new("hasInterlock", "MECH INTERLOCK", "yes"), new("hasInterlock", "REVERSING", "yes"),
    ])
    {
        Fillers = ["WITH", "AND"],
        Usual = [CoilMarks.Mains("coilFrequency")],
        Alike = [new("coilVa", "INRUSH", "INRUSH VA", "VA INRUSH") { OnEitherSide = true }],
        InTurns = [("coilVolts", "coilFrequency")],
        Names = ["CONTACTOR", "DEFINITE PURPOSE CONTACTOR", "MAGNETIC CONTACTOR", "RELAY", "POWER RELAY", "FAN RELAY", "BLOWER RELAY", "SWITCHING RELAY", "GENERAL PURPOSE RELAY"],
        Example = "2 POLE FLA 30 LRA 150 COIL 24 V 50/60 HZ",
        OnlyAtLabel =
        [
            "AC", "VAC", "ALTERNATING", "DC", "VDC", "DIRECT CURRENT", "none", "open", "sealed", "screw", "lug", "lugs", "panel", "rail", "DIN", "bracket", "socket", "tabs", "QC", "CO", "NO", "NC", "N.O.", "N.C.", "normally open", "normally closed", "00", "0", "1", "1P", "2", "3",
            .. from count in Enumerable.Range(1, 4) from action in (string[])["NO", "NC"] select FormattableString.Invariant($"{count} {action}"),
        ],
        Strangers =
        [
            "MODEL", "PART NO", "P/N", "PN", "CAT", "CAT NO", "SER", "SERIAL", "S/N", "DATE", "DATE CODE", "LOT", "BATCH", "FILE", "FILE NO", "STYLE", "TYPE", "TORQUE", "WIRE", "IEC", "EN", "UI", "UIMP", "INRUSH", "INRUSH VA", "VA INRUSH",
            "NOT", "NOT FOR", "WITHOUT",
        ],
        Limits =
        [
            PlateLimit.Of<Figures<ElectricPotential>>("ratedVolts", "from 100 to 750 V", all => all.All(volts => Within.Span(volts.Volts, 100, 750))),
            CoilMarks.Volts("coilVolts", 5),
            PlateLimit.Of<Figures<Frequency>>("coilFrequency", "from 45 to 65 Hz", all => all.All(frequency => Within.Span(frequency.Hertz, 45, 65))),
            PlateLimit.Of<ElectricApparentPower>("coilVa", "from 0.5 to 200 VA", power => Within.Span(power.Voltamperes, 0.5, 200)),
            PlateLimit.Of<Ohms>("coilOhms", "from 0.5 Ω to 50 kΩ", ohms => Within.Span(ohms.Value, 0.5, 50_000)),
            PlateLimit.Of<ElectricCurrent>("continuousAmps", "from 1 to 400 A", amps => Within.Span(amps.Amperes, 1, 400)),
            .. ((string[])["fullLoadAmps", "resistiveAmps", "acOneAmps", "acThreeAmps", "acEightAmps"]).Select(field => Amps(field, 0.1, 400)),
            Amps("lockedRotorAmps", 0.5, 2500),
            PlateLimit.Of<Figures<Power>>("singlePhaseHorsepower", "from 1/20 to 25 hp", all => all.All(power => Within.Span((double)power.Watts, 35, 18_700))),
            PlateLimit.Of<Figures<Power>>("threePhaseHorsepower", "from 1/4 to 150 hp", all => all.All(power => Within.Span((double)power.Watts, 180, 112_000))),
        ],
    };

    /// <summary>Contacts that are counted by what they do; behind as many poles they may be these.</summary>
    private static PlateWord Counted(int open, int closed)
    {
        var count = FormattableString.Invariant($"{open} NO {closed} NC");
        return new("auxiliaries", count, count)
        {
            NeverNextTo = ["contactAction"],
            NeverBehind = [.. ((int[])[open, closed, open + closed]).Where(poles => poles <= 4).Select(poles => new NamedText("poleCount", FormattableString.Invariant($"{poles}P")))],
        };
    }

    /// <summary>What poles do; beside other contacts that stand on plates it may be those that do it.</summary>
    private static PlateWord OfPoles(string word, string action) => new("contactAction", word, action) { NeverBeside = "auxiliaries", NeverNextTo = ["pilotDuty", "hasInterlock"] };

    private static PlateLimit Amps(string field, double least, double most) =>
        PlateLimit.Of<Figures<ElectricCurrent>>(field, FormattableString.Invariant($"from {least} to {most} A"), all => all.All(amps => Within.Span(amps.Amperes, least, most)));
}
