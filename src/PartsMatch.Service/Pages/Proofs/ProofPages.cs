using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Pages.Proofs;

/// <summary>With a meter in hand: is it the part, and is the new one right? A form of readings; what they say stands above it.</summary>
internal static class ProofPages
{
    public const string BeforePath = "/before";
    public const string AfterPath = "/after";
    public const string Part = "part";

    private static readonly Refusal NoPart = new(Codes.Empty, Part, "Name the part that was put in: its plate's amps and volts are what it is held against.");

    public static void Map(WebApplication app)
    {
        app.MapGet(BeforePath, IResult (HttpContext context, Catalogues catalogues, Counter.Proofs proofs) =>
        {
            var need = NeedTyped.Of(Typed.Of(context.Request.Query)).Read(catalogues.Shelf);
            if (need.StrangeKind is not null) return new SeeOther(need.To(WhatFailed.WhatFailedEndpoints.Path));
            if (need is { IsEmpty: true, Shown.Length: > 0 }) return Before(new(need, NeedComplaints.NothingIn(need, catalogues.Shelf).And(OfReadings(need))), null);
            if (need.ReadingsGiven is not { } readings) return Before(new(need, Complaints.None), null);
            var answer = proofs.BeforeCondemning(need.Given, readings);
            return Before(new(need, Complaints.OfNeed(answer.Refusals)), answer.Value);
        });
        app.MapGet(AfterPath, IResult (HttpContext context, Catalogues catalogues, Counter.Proofs proofs) =>
        {
            var query = Typed.Of(context.Request.Query);
            var need = NeedTyped.Of(query).Read(catalogues.Shelf);
            if (need.StrangeKind is not null) return new SeeOther(need.To(WhatFailed.WhatFailedEndpoints.Path));
            if (need is { IsEmpty: true, Shown.Length: > 0 }) return After(new(need, NeedComplaints.NothingIn(need, catalogues.Shelf).And(OfReadings(need)), query[Part]), null);
            if (need.ReadingsGiven is not { } readings) return After(new(need, Complaints.None, query[Part]), null);
            if (query[Part].Length == 0) return After(new(need, Complaints.OfNeed([NoPart, .. Counter.Needs.Read(catalogues.Shelf, need.Given).Refusals]).And(OfReadings(need))), null);
            var answer = proofs.AfterSwap(need.Given, query[Part], readings);
            return After(new(need, Complaints.OfNeed(answer.Refusals), query[Part]), answer.Value);
        });
        app.MapPost(BeforePath, (HttpContext context, Catalogues catalogues) => SendOnAsync(context, catalogues, BeforePath, model => Before(model, null)));
        app.MapPost(AfterPath, (HttpContext context, Catalogues catalogues) => SendOnAsync(context, catalogues, AfterPath, model => After(model, null)));
    }

    /// <summary>What is wrong with the readings, said together with what is wrong elsewhere.</summary>
    private static Complaints OfReadings(NeedTyped need) => need.ReadingsGiven is { } readings ? Complaints.OfNeed(Counter.Proofs.Read(need.Family, readings).Wrong) : Complaints.None;

    private static async Task<IResult> SendOnAsync(HttpContext context, Catalogues catalogues, string path, Func<ProofModel, IResult> show)
    {
        var (form, shelf) = (await Typed.ReadAsync(context), catalogues.Shelf);
        if (Families.Find(form[Typed.OtherKind]) is { } kind) return ForKind(NeedTyped.Of(form), form[Part], kind, shelf, path, show);
        var need = NeedTyped.Of(form).Read(shelf);
        var link = need.To(path, new NamedText(Part, form[Part]));
        return link.Length <= Link.Longest ? new SeeOther(link) : show(new(need, Complaints.TooLongForALink(string.Empty), form[Part]));
    }

    /// <summary>The page for another kind of part, with what was typed. A number names a part of its own kind, and is left out.</summary>
    private static IResult ForKind(NeedTyped typed, string part, Family kind, Shelf shelf, string path, Func<ProofModel, IResult> show)
    {
        if (typed.IsBlank && part.Length == 0) return new SeeOther((typed with { Family = kind }).To(path));
        var need = typed.As(kind);
        return show(new(need.HoldsNumberOfAnotherKind(shelf) ? need with { Text = string.Empty } : need, Complaints.None, shelf.Find(part) is { } put && put.Family != kind ? string.Empty : part));
    }

    private static RazorComponentResult<BeforePage> Before(ProofModel model, Diagnosed? found) => PageSetup.Page<BeforePage>(model with { Diagnosed = found }, model.Status);

    private static RazorComponentResult<AfterPage> After(ProofModel model, SwapProved? found) => PageSetup.Page<AfterPage>(model with { Proved = found }, model.Status);
}
