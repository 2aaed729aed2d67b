using System.Text.Encodings.Web;
using GraphQL;
using GraphQL.Execution;
using GraphQL.Types;
using GraphQL.Validation;
using Microsoft.Extensions.Options;
using PartsMatch.Service.Graph.Given;
using PartsMatch.Service.Graph.Limits;
using PartsMatch.Service.Graph.Results;
using PartsMatch.Service.Graph.Transport;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Graph;

/// <summary>What the service's other rooms see of GraphQL: these two methods and the printed schema.</summary>
internal static class GraphServices
{
    public static IServiceCollection AddGraph(this IServiceCollection services)
    {
        services.AddOptions<QueryLimits>().BindConfiguration(QueryLimits.Section);
        services.AddSingleton<FamilyInputs>().AddSingleton<PartInput>().AddSingleton<OutcomeInput>();
        services.AddSingleton(provider => provider.GetRequiredService<FamilyInputs>().Need).AddSingleton(provider => provider.GetRequiredService<FamilyInputs>().Site);
        services.AddSingleton(provider => provider.GetRequiredService<FamilyInputs>().Readings).AddSingleton<ConclusionEnum>().AddSingleton<ReadingVerdictEnum>();
        services.AddSingleton<PartSpecUnion>().AddSingleton<PartWriteUnion>().AddSingleton<PartKindEnum>();
        services.AddSingleton<FitEnum>().AddSingleton<VerdictEnum>().AddSingleton<SideEnum>().AddSingleton<SourceStatusEnum>().AddSingleton<PartStatusEnum>().AddSingleton<UnitsEnum>().AddSingleton<StageEnum>().AddSingleton<OutcomeResultEnum>().AddSingleton<OutcomeReasonEnum>();
        services.AddSingleton<WeightsOriginEnum>().AddSingleton<TrainingEndEnum>();
        services.AddSingleton<GraphEndpoint>().AddSingleton<IDocumentValidator, LastingValidation>();
        services.AddGraphQL(graph => graph
            .AddSchema<PartsSchema>()
            .AddAutoClrMappings()
            // What people typed is read back to them: quotes and µ stay themselves. No browser takes JSON for a page, and nosniff says so.
            .AddSystemTextJson(json => json.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping)
            .AddErrorInfoProvider<ErrorCodes>()
            .AddValidationRule(provider => new CostRule(provider.GetRequiredService<IOptions<QueryLimits>>().Value))
            .AddUnhandledExceptionHandler(Mask));
        return services;
    }

    public static void MapGraph(this WebApplication app)
    {
        _ = app.Services.GetRequiredService<ISchema>();
        GraphEndpoint.Map(app);
    }

    /// <summary>The client is told an id; the log holds the exception under it.</summary>
    private static Task Mask(UnhandledExceptionContext failure)
    {
        var logger = failure.ExecutionOptions.RequestServices!.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(GraphServices).FullName!);
        failure.ErrorMessage = Problems.Masked(Problems.Log(logger, failure.OriginalException));
        return Task.CompletedTask;
    }
}
