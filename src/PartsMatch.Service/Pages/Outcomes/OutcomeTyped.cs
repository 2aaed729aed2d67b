using System.Globalization;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Pages.Outcomes;

/// <summary>What was typed about how it went, kept as typed.</summary>
/// <param name="Need">What was replaced, and where.</param>
/// <param name="Part">The number of what was put in.</param>
/// <param name="Id">Made when the form was shown: a form that is sent twice keeps one record.</param>
/// <param name="On">The day.</param>
/// <param name="Place">Where.</param>
/// <param name="Result">What became of it.</param>
/// <param name="Reason">Why it was not right.</param>
/// <param name="Note">Anything else.</param>
/// <param name="Corrects">The id of the record that this one is to take the place of; empty for none.</param>
public sealed record OutcomeTyped(NeedTyped Need, string Part, string Id, string On, string Place, string Result, string Reason, string Note, string Corrects)
{
    public const string PartName = "part";

    public static OutcomeTyped Of(NeedTyped need, Typed form) => new(
        need,
        form[PartName].Trim(),
        form[OutcomeReading.Id],
        form[OutcomeReading.On].Trim(),
        form[OutcomeReading.Place].Trim(),
        form[OutcomeReading.Result],
        form[OutcomeReading.Reason],
        // A record's note is one line.
        string.Join(' ', form[OutcomeReading.Note].Split((char[])['\r', '\n'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)),
        form[OutcomeReading.Corrects]);

    /// <summary>A form that nothing is typed into yet, with the day that it is.</summary>
    public static OutcomeTyped New(NeedTyped need, string part, DateOnly today) => new(need, part, NewId(), Written(today), string.Empty, string.Empty, string.Empty, string.Empty, string.Empty);

    /// <summary>A form that puts a record right, with all that it says.</summary>
    public static OutcomeTyped ToCorrect(OutcomeDraft said) => new(NeedOf(said), said.Part, NewId(), Written(said.On), said.Place, said.Result, said.Reason, said.Note, said.Id);

    /// <summary>What a record says was replaced, and where.</summary>
    public static NeedTyped NeedOf(OutcomeDraft said) => new(Fit.Families.Find(said.Kind)!, string.Empty, string.Empty, said.OldPart, Texts(said.Plate), Texts(said.Site), []);

    public OutcomeGiven Given => new(Id, Need.Family.Kind, On, Place, Need.OldNumber, Need.Plate, Need.Site, Part, Result, Reason, Note, Corrects) { PlateText = Need.Text };

    /// <summary>What stands hidden in the form.</summary>
    public IEnumerable<NamedText> Hidden => [.. Need.Inputs.Where(input => input.Text.Length > 0), new(PartName, Part), new(OutcomeReading.Id, Id), new(OutcomeReading.Corrects, Corrects)];

    private static string NewId() => Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture);

    private static string Written(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);

    private static IReadOnlyList<NamedText> Texts(IEnumerable<Store.NamedText> texts) => [.. texts.Select(text => new NamedText(text.Name, text.Text))];
}
