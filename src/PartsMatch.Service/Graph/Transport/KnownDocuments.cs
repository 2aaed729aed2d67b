using System.Collections.Concurrent;
using GraphQLParser.AST;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Documents that were read and passed every rule, by their text: programs send the same few again and again.</summary>
/// <remarks>What depends on more than the text is asked of each request anew: what it costs with its variables, whether these are what they are to be, and whether it is a mutation by GET.</remarks>
internal sealed class KnownDocuments
{
    /// <summary>Of a client that writes its values into the document each is another: then all are forgotten, and those that are still sent come back.</summary>
    private const int Most = 256;

    /// <summary>A longer one is read each time, so that those that are kept take a few dozen megabytes at most.</summary>
    private const int Longest = 4096;

    private readonly ConcurrentDictionary<string, GraphQLDocument> _documents = new(StringComparer.Ordinal);

    public GraphQLDocument? Find(string query) => _documents.GetValueOrDefault(query);

    public void Keep(string query, GraphQLDocument document)
    {
        if (query.Length > Longest) return;
        if (_documents.Count >= Most) _documents.Clear();
        _documents[query] = document;
    }
}
