using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Pages.Errors;

namespace PartsMatch.Service.Pages.Models;

/// <summary>What a kind of part is ranked by: to look at, and for whoever signed in to train anew, to stop that, and to go back.</summary>
internal static class ModelEndpoints
{
    private const string SendAgain = "This page was open for too long, or you signed in anew meanwhile. Nothing was done; if it is still meant, send it again.";

    public static void Map(WebApplication app)
    {
        app.MapGet(ModelAddress.Path, (HttpContext context, ModelTrainings trainings, Catalogues catalogues) =>
            Typed.Of(context.Request.Query)[ModelAddress.Kind] is var kind && (kind.Length == 0 ? Families.All[0] : Families.Find(kind)) is { } family ? (IResult)Show(context, family, trainings, catalogues) : NotThere(kind));
        MapAction(ModelAddress.Train, (trainings, family, by) =>
        {
            trainings.Begin(family, by);
            return null;
        });
        MapAction(ModelAddress.Stop, (trainings, family, _) =>
        {
            trainings.Stop(family);
            return null;
        });
        MapAction(ModelAddress.Back, (trainings, family, by) => trainings.GoBack(family, by) is { IsGiven: false } refused ? refused.Refusals : null);

        void MapAction(string address, Func<ModelTrainings, Family, string, IReadOnlyList<Refusal>?> act) =>
            app.MapPost(address, async (HttpContext context, IAntiforgery antiforgery, ModelTrainings trainings, Catalogues catalogues) =>
            {
                var kind = (await Typed.ReadAsync(context))[ModelAddress.Kind];
                if (Families.Find(kind) is not { } family) return NotThere(kind);
                if (!await antiforgery.IsRequestValidAsync(context)) return Show(context, family, trainings, catalogues, SendAgain, StatusCodes.Status400BadRequest);
                return act(trainings, family, Caller.Of(context).KeyLabel!) is { } refusals
                    ? (IResult)Show(context, family, trainings, catalogues, refusals[0].Message, refusals[0].Code == Codes.StoreFailed ? StatusCodes.Status503ServiceUnavailable : StatusCodes.Status409Conflict)
                    : new SeeOther(ModelAddress.Of(family));
            }).WithMetadata(new NeedsKey());
    }

    private static IResult NotThere(string kind) => ErrorModel.Page(StatusCodes.Status404NotFound, $"There is no kind of part “{kind}”. Nothing was done.");

    private static RazorComponentResult<ModelPage> Show(HttpContext context, Family family, ModelTrainings trainings, Catalogues catalogues, string? wrong = null, int status = StatusCodes.Status200OK) =>
        PageSetup.Page<ModelPage>(new WeightsModel(trainings.Report(family), catalogues.Shelf, UnitChoice.Of(context), wrong), status);
}
