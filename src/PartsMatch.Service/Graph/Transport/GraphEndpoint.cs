using GraphQL;
using GraphQL.Execution;
using GraphQL.Types;
using GraphQL.Validation;
using GraphQLParser.AST;
using Microsoft.Extensions.Options;
using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Limits;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>GraphQL over HTTP: https://graphql.github.io/graphql-over-http/draft/. Of a document that passed every rule before, only what its variables change is judged again.</summary>
internal sealed class GraphEndpoint(
    IDocumentExecuter executer, IDocumentBuilder documents, ISchema schema, IGraphQLTextSerializer json, IOptions<QueryLimits> limits)
{
    private const string Address = "/graphql";
    private const string Methods = "GET, POST";

    /// <summary>The executer adds the cost rule of its own accord, and looks at variables in any case.</summary>
    private static readonly IValidationRule[] OnlyCost = [];

    private readonly KnownDocuments _known = new();
    private readonly DocumentReader _reader = new(documents, schema, limits.Value);

    public static void Map(WebApplication app)
    {
        app.Map(Address, (HttpContext context, GraphEndpoint endpoint) => endpoint.AnswerAsync(context)).WithMetadata(new RefusalWriter(WriteRefusalAsync), new ForPrograms());
        app.MapGet($"{Address}/schema", () => TypedResults.Text(PrintedSchema.Text(app.Services), "text/plain")).WithMetadata(new ForPrograms());
    }

    private static Task WriteRefusalAsync(HttpContext context, int status, string code, string message) =>
        context.RequestServices.GetRequiredService<GraphEndpoint>().RefuseAsync(context, status, code, message);

    private async Task AnswerAsync(HttpContext context)
    {
        var request = context.Request;
        context.Response.Headers.CacheControl = "no-store";
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsPost(request.Method))
        {
            context.Response.Headers.Allow = Methods;
            await Problems.WriteAsync(context, StatusCodes.Status405MethodNotAllowed, Codes.MethodNotAllowed, $"GraphQL is asked by {Methods}.");
        }
        else if (MediaType.Negotiate(request) is not { } mediaType)
        {
            await Problems.WriteAsync(context, StatusCodes.Status406NotAcceptable, Codes.NotAcceptable, $"Answers come as {MediaType.Response} or {MediaType.Json}.");
        }
        else
        {
            var (asked, wrong) = await GraphRequest.ReadAsync(request, json, limits.Value);
            if (asked is null) await WriteAsync(context, mediaType, wrong!.Status, Failed(wrong.Code, wrong.Message));
            else await ExecuteAsync(context, mediaType, asked);
        }
    }

    private async Task ExecuteAsync(HttpContext context, string mediaType, GraphRequest asked)
    {
        var known = _known.Find(asked.Query);
        var (document, wrong) = known is null ? _reader.Read(asked.Query) : (known, null);
        if (document is null)
        {
            await WriteAsync(context, mediaType, StatusOf(mediaType, executed: false), new ExecutionResult(wrong!));
            return;
        }

        if (IsMutation(document, asked.OperationName))
        {
            if (HttpMethods.IsGet(context.Request.Method))
            {
                context.Response.Headers.Allow = "POST";
                await WriteAsync(context, mediaType, StatusCodes.Status405MethodNotAllowed, Failed(Codes.MethodNotAllowed, "A mutation is sent by POST."));
                return;
            }

            if (Caller.Of(context).Bearer is null)
            {
                context.Response.Headers[HeaderNames.WWWAuthenticate] = "Bearer";
                await WriteAsync(context, mediaType, StatusCodes.Status401Unauthorized, Failed(Codes.KeyNeeded, "Writing needs a key. Send it as: Authorization: Bearer <key>."));
                return;
            }
        }

        var result = await executer.ExecuteAsync(new()
        {
            Schema = schema,
            Document = document,
            ValidationRules = known is null ? null : OnlyCost,
            Query = asked.Query,
            OperationName = asked.OperationName,
            Variables = asked.Variables,
            Extensions = asked.Extensions,
            UserContext = new CallerContext(Caller.Of(context).Bearer),
            RequestServices = context.RequestServices,
            Timeout = TimeSpan.FromSeconds(limits.Value.Seconds),
            TimeoutAction = TimeoutAction.ReturnTimeoutError,
            CancellationToken = context.RequestAborted,
        });
        if (known is null && result.Executed) _known.Keep(asked.Query, document);
        await Places.MarkAsync(result, document, context.RequestAborted);
        await WriteAsync(context, mediaType, StatusOf(mediaType, result.Executed), result);
    }

    private async Task RefuseAsync(HttpContext context, int status, string code, string message) =>
        await WriteAsync(context, MediaType.Negotiate(context.Request) ?? MediaType.Json, status, Failed(code, message));

    /// <summary>application/json predates the rule that a status tells whether anything was executed; its clients expect 200.</summary>
    private static int StatusOf(string mediaType, bool executed) => executed || mediaType == MediaType.Json ? StatusCodes.Status200OK : StatusCodes.Status400BadRequest;

    /// <summary>When the name fits no operation, or several, the executer says so.</summary>
    private static bool IsMutation(GraphQLDocument document, string? operationName) => document.Definitions
        .OfType<GraphQLOperationDefinition>()
        .Any(operation => operation.Operation == OperationType.Mutation && (operationName is null || operation.Name?.StringValue == operationName));

    private static ExecutionResult Failed(string code, string message) => new(new ExecutionError(message) { Code = code });

    private async Task WriteAsync(HttpContext context, string mediaType, int status, ExecutionResult result)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = $"{mediaType}; charset=utf-8";
        // Its length said, an answer is sent in one piece: by itself the end of one in pieces costs as much again as a short answer.
        using var answer = new MemoryStream();
        await json.WriteAsync(answer, RefusedError.EachAlone(result), context.RequestAborted);
        context.Response.ContentLength = answer.Length;
        await context.Response.Body.WriteAsync(answer.GetBuffer().AsMemory(0, (int)answer.Length), context.RequestAborted);
    }
}
