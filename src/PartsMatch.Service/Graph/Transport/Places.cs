using GraphQL;
using GraphQL.Validation;
using GraphQLParser.AST;
using GraphQLParser.Visitors;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Says of errors that the library finds in arguments and variables at which place of the input they are, as our own refusals do.</summary>
internal sealed class Places : ASTVisitor<Places.Sought>
{
    private static readonly Places Visitor = new();

    /// <summary>Puts the place on each error that has one: need, part.spec; in a variable $need.motor.plate.</summary>
    public static async Task MarkAsync(ExecutionResult result, GraphQLDocument document, CancellationToken stop)
    {
        foreach (var error in result.Errors?.OfType<ValidationError>() ?? [])
        {
            if (await PlaceOf(error, document, stop) is { } place) error.Extensions = new Dictionary<string, object?>(StringComparer.Ordinal) { ["at"] = place };
        }
    }

    protected override ValueTask VisitArgumentAsync(GraphQLArgument argument, Sought context) =>
        context.Enter(argument, argument.Name) ? base.VisitArgumentAsync(argument, context) : default;

    protected override ValueTask VisitObjectFieldAsync(GraphQLObjectField objectField, Sought context) =>
        context.Enter(objectField, objectField.Name) ? base.VisitObjectFieldAsync(objectField, context) : default;

    private static async Task<string?> PlaceOf(ValidationError error, GraphQLDocument document, CancellationToken stop)
    {
        // The library tells a variable's path in its sentence only: Variable '$need.motor' is invalid.
        if (error is InvalidVariableError) return error.Message.Split('\'', 3) is [_, ['$', ..] path, _] ? path : null;
        if (error.Nodes.LastOrDefault() is not { } node) return null;
        var sought = new Sought(node.Location.Start, stop);
        await Visitor.VisitAsync(document, sought);
        return sought.Path.Count > 0 ? string.Join('.', sought.Path) : null;
    }

    /// <summary>Where in the document to look, and the names on the way there.</summary>
    internal sealed class Sought(int at, CancellationToken stop) : IASTVisitorContext
    {
        public List<string> Path { get; } = [];

        public CancellationToken CancellationToken => stop;

        /// <summary>Whether the node holds what is sought.</summary>
        public bool Enter(ASTNode node, GraphQLName name)
        {
            if (at < node.Location.Start || at >= node.Location.End) return false;
            Path.Add(name.StringValue);
            return true;
        }
    }
}
