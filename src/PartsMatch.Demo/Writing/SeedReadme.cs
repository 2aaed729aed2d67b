using System.Globalization;
using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo.Writing;

/// <summary>The page beside the files: what they are, and that nothing in them is real.</summary>
public static class SeedReadme
{
    /// <summary>The page; its counts are those of the catalogue.</summary>
    public static string Of(DemoCatalogue catalogue) => string.Create(CultureInfo.InvariantCulture, $"""
        # Seed data

        **Everything here is invented.** No maker, part number, price or quantity is real, and no part can be bought. The makers' names are made-up words; if one belongs to somebody, that is chance.

        ## How it was made

            dotnet run --project src/PartsMatch.Demo -- seed-data

        writes these files, with the same bytes every time (seed {DemoCatalogue.Seed}). A test makes them again and compares. Change the generator, not the files.

        {string.Join("\n\n", catalogue.Families.Select(family => family.Family.HowDrawn))}

        The generator knows nothing of the rules that judge the parts.

        ## What became of installations

        **These outcomes are invented like all the rest, and what is learnt from them says nothing of any real part.** They are drawn from a hidden truth: for motors a hazard of volts off the tap, load near the power, heat, wet, turn, shaft and what is forgotten at the bench; for each other family how much each field matters is itself drawn. Each way to fail begins softly at a threshold, some are worse together, places are harsher or milder, technicians know more or less, one part in twenty is worse than it should be, and from September 2025 on everything is a little harder. No file holds any of that, and no model that ranks has its form.

        The records are as skewed as real ones. People mostly put in what looks most like the old part and is at hand; those who know the work keep weak parts out of harsh places, and no record says so. So parts that rank high were tried often and others never, and some parts were put in that do not fit.

        ## Files

        | file | rows | columns |
        | --- | --- | --- |
        {FamilyRows(catalogue)}
        | supersessions.csv | {catalogue.Supersessions.Count} | number (the old part), supersededBy, saidBy (maker, counter or technician), on (the day it was said) |
        | stock.csv | {catalogue.Parts.Count()} | number, price, currency, onHand (at the counter); kept apart because it changes hourly and makes no part fit |
        | outcomes.csv | {catalogue.Families.Sum(family => family.Family.Outcomes)} | what became of installations: id, kind, on, place, oldPart, plate, site, part, result, reason, note, corrects |

        Text is UTF-8 with line feeds, quoted where a comma asks for it; rows stand in the order of part numbers. Spec fields are written as the trade writes them, with their units: 1/4 hp, 208-230 V, 5.6 in. What stands side by side (1725/1140 rpm beside 5.4/2.8 A) belongs together by position.
        A rotation names the end it is seen from, some makers the shaft end and some the lead end; a reversible part's rotation is the one it ships with. A start capacitor's rating is the middle of its marked range.

        ## What is missing on purpose

        A blank is unknown, as in real catalogues; "none" says that there is none.

        - Between one part in twelve and one in five, by maker, lacks one to three of: body length, locked-rotor amps, drain holes, bearings, shaft positions, the tap it ships on, insulation, flat length.
        {Lacking(catalogue)}
        - About one motor in forty lacks something that decides: shaft length, the end a rotation is seen from, rotation and reversing, body diameter, enclosure, amps.
        - Lowest ambient, breakdown torque and hazard markings are given by few; highest altitude by about three in five European and one in eight American motors; efficiency and power factor by three-phase motors alone; poles by none of the electronically commutated. Frames are not given for the smallest motors, which have none.
        - {catalogue.Parts.Count(part => part.IsDiscontinued)} parts are discontinued; {catalogue.Supersessions.Count} of them are superseded, some by a part that was superseded in turn. Who said so was sometimes mistaken: a successor need not fit everywhere.

        ## Makers

        {string.Join(", ", Maker.All.Select(maker => maker.Name))}.

        """).ReplaceLineEndings("\n");

    private static string Lacking(DemoCatalogue catalogue) => string.Join('\n', catalogue.Families.Where(family => family.Family.WhatLacks is not null).Select(family => $"- {family.Family.WhatLacks}"));

    private static string FamilyRows(DemoCatalogue catalogue) => string.Join('\n', catalogue.Families.Select(family => string.Create(
        CultureInfo.InvariantCulture,
        $"| {SeedFolder.FileOf(family.Family)} | {family.Parts.Count} | number, maker, title, status (current or discontinued), then one column a spec field |")));
}
