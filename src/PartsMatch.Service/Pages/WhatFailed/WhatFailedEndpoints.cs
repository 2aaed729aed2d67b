using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
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
            return typed.IsEmpty && typed.Shown.Length == 0 && typed.StrangeKind is null ? Show(context, shelf, read, Complaints.None) : Show(context, shelf, read, Wrong(shelf, read));
        });
        app.MapPost(Path, async (HttpContext context, Catalogues catalogues) =>
        {
            var shelf = catalogues.Shelf;
            var form = await Typed.ReadAsync(context);
            var typed = NeedTyped.Of(form);
            if (form.IsOnlyShown && (typed.IsBlank || form[Typed.OtherKind].Length > 0)) return ShowForKind(context, shelf, typed, Families.Find(form[Typed.OtherKind]) ?? typed.Family);
            var read = typed.Text.Length == 0 ? typed.WithEmptyBox() : typed.Read(shelf);
            var wrong = Wrong(shelf, read);
            if (wrong.Any) return Show(context, shelf, read, wrong);
            var goesOn = form["then"] == Find;
            var link = read.To(goesOn ? Replacements.ReplacementsEndpoints.Path : Path);
            if (link.Length > Link.Longest) return Show(context, shelf, read, Complaints.TooLongForALink("text"));

            // A text that no link can hold is shown at once, or it would be lost.
            return goesOn || read.IsWholeIn(link) ? new SeeOther(link) : Show(context, shelf, read, Complaints.None);
        });
    }

    /// <summary>The page for another kind of part: a link where nothing is typed yet; else with the text read for what it says of that kind.</summary>
    private static IResult ShowForKind(HttpContext context, Shelf shelf, NeedTyped typed, Family kind)
    {
        if (typed.IsBlank) return new SeeOther((typed with { Family = kind }).To(Path));
        var other = typed.As(kind);
        return Show(context, shelf, other.HoldsNumberOfAnotherKind(shelf) ? other : other.Read(shelf), Complaints.None);
    }

    /// <summary>The page with all complaints beside their inputs; where there are any, the status says that nothing was done.</summary>
    public static IResult Show(HttpContext context, Shelf shelf, NeedTyped typed, Complaints complaints) =>
        PageSetup.Page<WhatFailedPage>(new WhatFailedModel(typed, shelf, complaints, Visit.Of(context).Units), complaints.Any ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);

    private static Complaints Wrong(Shelf shelf, NeedTyped typed)
    {
        if (typed.StrangeKind is { } kind) return Complaints.Of([new(Codes.KindMismatch, string.Empty, $"There is no kind of part called “{NeedComplaints.Shortened(kind)}”. Choose the kind above; what is shown is for a {typed.Family.Title}.")]);
        if (typed.IsEmpty) return NeedComplaints.NothingIn(typed, shelf);
        var need = Counter.Needs.Read(shelf, typed.Given);
        return need.IsGiven ? Complaints.None : Complaints.OfNeed(need.Refusals);
    }
}
