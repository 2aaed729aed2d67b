using GraphQL;
using GraphQL.Execution;
using GraphQL.Types;
using GraphQLParser.AST;
using GraphQLParser.Exceptions;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Limits;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Makes a document of a query's text. What validation cannot bear is refused here, before any rule looks at it.</summary>
internal sealed class DocumentReader(IDocumentBuilder builder, ISchema schema, QueryLimits limits)
{
    public (GraphQLDocument? Document, ExecutionError? Wrong) Read(string query)
    {
        try
        {
            var document = builder.Build(query);
            var wrong = RefuseSubscription(document) ?? RefuseDefaultOfNoInput(document) ?? WrittenOut.Refuse(document, limits);
            return wrong is null ? (document, null) : (null, wrong);
        }
        catch (GraphQLMaxDepthExceededException)
        {
            return (null, new("Fields, lists or objects stand too deep in one another to be read.") { Code = Codes.QueryTooDeep });
        }
        catch (ExecutionError unreadable)
        {
            return (null, unreadable);
        }
    }

    /// <summary>The schema has no type for one, and its rules fail on that rather than say so.</summary>
    private static ExecutionError? RefuseSubscription(GraphQLDocument document) =>
        document.Definitions.OfType<GraphQLOperationDefinition>().Any(operation => operation.Operation == OperationType.Subscription)
            ? new("There are no subscriptions here: ask by query, write by mutation.") { Code = Codes.QueryInvalid }
            : null;

    /// <summary>A variable of an output's type is refused by validation too, but not before a rule that reads its default value fails on it.</summary>
    private ExecutionError? RefuseDefaultOfNoInput(GraphQLDocument document) => document.Definitions
        .OfType<GraphQLOperationDefinition>()
        .SelectMany(operation => operation.Variables?.Items ?? [])
        .Where(variable => variable.DefaultValue is not null && schema.AllTypes[NameOf(variable.Type)]?.IsInputType() == false)
        .Select(variable => new ExecutionError($"The variable ${variable.Variable.Name.StringValue} cannot be of the type {NameOf(variable.Type)}: that is no input.") { Code = Codes.QueryInvalid })
        .FirstOrDefault();

    private static string NameOf(GraphQLType type) => type switch
    {
        GraphQLNonNullType required => NameOf(required.Type),
        GraphQLListType list => NameOf(list.Type),
        _ => ((GraphQLNamedType)type).Name.StringValue,
    };
}
