using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Notes;

/// <summary>Notes from texts, so that a case is one line: fields as name=text, semicolons between.</summary>
internal static class NotesCases
{
    /// <summary>An everyday condenser fan's motor.</summary>
    public const string Motor = "type=PSC; power=1/4 hp; speed=1075 rpm; speeds=1; voltage=208-230 V; phase=1; frequency=60 Hz; fullLoadAmps=2.1 A; runCapacitor=5/370; mounts=band; bodyDiameter=5.6 in; "
        + "shaftDiameter=1/2 in; shaftLength=4 in; shaftForm=flat; shaftEnds=1; rotation=CW shaft end; reversing=fixed; enclosure=TEAO; "
        + "bearings=ball; insulation=B; ambientMost=60 °C; protection=automatic; bodyLength=5 in";

    /// <summary>Its place.</summary>
    public const string Place = "volts=230 V; surroundings=dry; bladeStays=yes; drive=direct; fanKind=propeller; speedsUsed=1";

    public static (FitSheet Sheet, InstallNotes Notes) Of(string kind, string plate, string site, string part)
    {
        var family = Families.Find(kind)!;
        var need = family.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        var (spec, complaints) = family.ReadSpec(Named.Texts(part));
        complaints.ShouldBeEmpty();
        var sheet = family.Judge(need.Need, spec);
        return (sheet, family.NotesFor(need.Need, spec, sheet, []));
    }

    public static InstallNotes OfMotor(string plate = Motor, string site = Place, string part = Motor) => Of("motor", plate, site, part).Notes;

    public static Step Single(this InstallNotes notes, ChangeKind kind) => notes.Steps.Single(step => step.Kind == kind);

    /// <summary>A case with a field in another text; a field that is not there is added.</summary>
    public static string With(string texts, string field, string text) =>
        string.Join("; ", texts.Split("; ").Where(pair => !pair.StartsWith(field + "=", StringComparison.Ordinal)).Append($"{field}={text}"));
}
