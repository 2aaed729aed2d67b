using System.Globalization;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>A row that says what replaced a part, as it was typed.</summary>
public sealed record SupersessionTyped(string Number, string SaidBy, string On)
{
    public const string Prefix = "supersededBy";
    private const string NumberName = "number";
    private const string SaidByName = "saidBy";
    private const string OnName = "on";

    public static SupersessionTyped Blank { get; } = new(string.Empty, string.Empty, string.Empty);

    public static SupersessionTyped Of(Supersession by) => new(by.Number, by.SaidBy, by.On.ToString("O", CultureInfo.InvariantCulture));

    /// <summary>The rows in which something was typed, in their order.</summary>
    public static IReadOnlyList<SupersessionTyped> AllOf(Typed form) =>
        [.. form.Under(Prefix).Select(text => text.Name.Split('.')[0]).Distinct()
            .Select(row => new SupersessionTyped(form[InputOf(row, NumberName)].Trim(), form[InputOf(row, SaidByName)].Trim(), form[InputOf(row, OnName)].Trim()))];

    /// <summary>The row's inputs: name, label, help, what was typed.</summary>
    public IReadOnlyList<(string Name, string Label, string Help, string Text)> Inputs(int row)
    {
        var at = row.ToString(CultureInfo.InvariantCulture);
        return
        [
            (InputOf(at, NumberName), "Superseded by", "The number of the part that replaced it.", Number),
            (InputOf(at, SaidByName), "Who says so", "The maker, a catalogue, a person.", SaidBy),
            (InputOf(at, OnName), "Since", "As 2024-03-31.", On),
        ];
    }

    /// <summary>The row as the core takes it; null with the reasons when something in it is missing or cannot be read.</summary>
    public Supersession? Read(int row, string ofNumber, ICollection<Refusal> wrong)
    {
        var at = row.ToString(CultureInfo.InvariantCulture);
        var before = wrong.Count;
        if (Number.Length == 0) wrong.Add(new(Codes.NumberUnusable, InputOf(at, NumberName), "Which part replaced it? Leave all three blank if none did."));
        else if (PartWords.Number(Number, InputOf(at, NumberName)).FirstOrDefault() is { } unusable) wrong.Add(unusable);
        else if (PartNumber.Key(Number) == PartNumber.Key(ofNumber)) wrong.Add(new(Codes.NumberUnusable, InputOf(at, NumberName), "A part cannot replace itself."));
        if (SaidBy.Length == 0) wrong.Add(new(Codes.Empty, InputOf(at, SaidByName), "Who says that it was replaced?"));
        else if (PartWords.Words(SaidBy, InputOf(at, SaidByName)).FirstOrDefault() is { } unusable) wrong.Add(unusable);
        if (!DateOnly.TryParseExact(On, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out var on)) wrong.Add(new(Codes.Unreadable, InputOf(at, OnName), On.Length == 0 ? "Since when was it replaced? A date such as 2024-03-31." : $"“{On}” is no date; one is written 2024-03-31: year, month, day."));
        return wrong.Count == before ? new(Number, SaidBy, on) : null;
    }

    private static string InputOf(string row, string name) => $"{Prefix}.{row}.{name}";
}
