using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Pages.WhatFailed;

/// <summary>The first page: a plate's text or an old number in; read, shown back, put right, and on to the list.</summary>
internal static class WhatFailedEndpoints
{
    public const string Path = "/";
    private const string Find = "find";

    public static void Map(WebApplication app)
    {
        app.MapGet(Path, (HttpContext context, Catalogues catalogues) =>
        {
            var shelf = catalogues.Shelf;
            var typed = NeedTyped.Of(Typed.Of(context.Request.Query));
            var read = typed.Read(shelf);
            return typed.IsEmpty && typed.Shown.Length == 0 && typed.StrangeKind is null ? Show(shelf, read, Complaints.None) : Show(shelf, read, Wrong(shelf, read));
        });
        app.MapPost(Path, async (HttpContext context, Catalogues catalogues) =>
        {
            var shelf = catalogues.Shelf;
            var form = await Typed.ReadAsync(context);
            var read = NeedTyped.Of(form).Read(shelf);
            var wrong = Wrong(shelf, read);
            if (wrong.Any) return Show(shelf, read, wrong);
            var link = read.To(form["then"] == Find ? Replacements.ReplacementsEndpoints.Path : Path);
            return link.Length <= Link.Longest ? new SeeOther(link) : Show(shelf, read, TooLong);
        });
    }

    /// <summary>The page with all complaints beside their inputs; where there are any, the status says that nothing was done.</summary>
    public static IResult Show(Shelf shelf, NeedTyped typed, Complaints complaints) =>
        PageSetup.Page<WhatFailedPage>(new WhatFailedModel(typed, shelf, complaints), complaints.Any ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);

    private static Complaints TooLong { get; } = Complaints.Of([new(Codes.TooLong, "text", "So many fields are filled in that no link can hold them (2,000 characters). Leave out what decides least.")]);

    private static Complaints Wrong(Shelf shelf, NeedTyped typed)
    {
        if (typed.StrangeKind is { } kind) return Complaints.Of([new(Codes.KindMismatch, string.Empty, $"There is no kind of part called “{Shortened(kind)}”. Choose the kind above; what is shown is for a {typed.Family.Title}.")]);
        if (typed.IsEmpty) return Complaints.Of([new(Codes.Empty, "text", NothingIn(typed))]);
        var need = Counter.Needs.Read(shelf, typed.Given);
        return need.IsGiven ? Complaints.None : Complaints.OfNeed(need.Refusals);
    }

    private static string NothingIn(NeedTyped typed) => typed.Shown.Length == 0
        ? "Nothing is typed yet: the plate's text, the old part's number, or a field below."
        : $"No part has the number “{Shortened(typed.Shown)}”, and as a plate's text nothing in it could be read. Type figures with their words, such as 1/4 HP 1075 RPM 208-230 V, or fill in fields below.";

    private static string Shortened(string text) => text.Length <= 40 ? text : $"{text[..40]}…";
}
