using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Needs;

/// <summary>What is wrong with a text of which nothing came.</summary>
internal static class NeedComplaints
{
    private const int LongestQuote = 40;

    /// <summary>What the text says against itself, or that nothing in it could be read; for a blank one, what to type.</summary>
    public static Complaints NothingIn(NeedTyped typed, Shelf shelf)
    {
        if (typed.Shown.Length == 0) return Complaints.Of([new(Codes.Empty, "text", "Nothing is typed yet: the plate's text, the old part's number, or a field below.")]);
        if (NumberInText.Alike(shelf, typed.Shown) is { Count: > 0 } alike) return Complaints.Of([new(Codes.PartNotFound, "text", $"No part has the number “{Shortened(typed.Shown)}”; there is {string.Join(", or ", alike.Select(entry => $"{entry.Stored.Number} ({entry.Stored.Title}, {entry.Stored.Maker})"))}, whose number looks like it.")]);
        var plate = typed.Family.ReadNameplate(typed.Shown);
        List<Refusal> said =
        [
            .. plate.Contradictions.Select(one => new Refusal(Codes.Ambiguous, "text", one.Sentence)),
            .. plate.Complaints.Where(one => one.Code != Codes.NothingRead).Select(one => new Refusal(one.Code, "text", one.Message)),
        ];
        return Complaints.Of(said.Count > 0 ? said : [new(Codes.NothingRead, "text", $"No part has the number “{Shortened(typed.Shown)}”, and as a plate's text nothing in it could be read. Type figures with their words, such as 1/4 HP 1075 RPM 208-230 V, or fill in fields below.")]);
    }

    public static string Shortened(string text) => text.Length <= LongestQuote ? text : $"{text[..LongestQuote]}…";
}
