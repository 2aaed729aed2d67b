using GraphQL;
using GraphQL.Execution;
using GraphQLParser.AST;
using PartsMatch.Service.Graph.Limits;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Makes a document of a query's text. What validation cannot bear is refused here, before any rule looks at it.</summary>
internal sealed class DocumentReader(IDocumentBuilder builder, QueryLimits limits)
{
    public (GraphQLDocument? Document, ExecutionError? Wrong) Read(string query)
    {
        try
        {
            var document = builder.Build(query);
            var wrong = WrittenOut.Refuse(document, limits);
            return wrong is null ? (document, null) : (null, wrong);
        }
        catch (ExecutionError unreadable)
        {
            return (null, unreadable);
        }
    }
}
