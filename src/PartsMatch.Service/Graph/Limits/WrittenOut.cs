using GraphQL;
using GraphQLParser.AST;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Limits;

/// <summary>
/// How much a query is once it is written out, with what a fragment selects in every place that spreads it: a few fragments that each spread the next one twice are more than anyone can walk,
/// and validation walks them so. Here each fragment is counted once.
/// </summary>
internal sealed class WrittenOut
{
    /// <summary>Counted no further.</summary>
    private const int Beyond = 1_000_000_000;

    /// <summary>How deep fields and fragments may stand in one another: ample for any query whose fields keep to their own limit, and a small part of what a thread's stack bears.</summary>
    private const int MostLevels = 256;

    private static readonly Size Nothing = new(0, 0);

    private readonly Dictionary<string, GraphQLFragmentDefinition> _fragments = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Size> _counted = new(StringComparer.Ordinal);

    private WrittenOut(GraphQLDocument document)
    {
        // Of two that share a name the first counts; validation refuses them.
        foreach (var fragment in document.Definitions.OfType<GraphQLFragmentDefinition>()) _fragments.TryAdd(fragment.FragmentName.Name.StringValue, fragment);
    }

    /// <summary>Why a document is too much; null when it is not.</summary>
    public static ExecutionError? Refuse(GraphQLDocument document, QueryLimits limits)
    {
        var size = new WrittenOut(document).Of(document);
        if (size.Levels > MostLevels) return new(FormattableString.Invariant($"Fields and fragments stand more than {MostLevels} deep in one another.")) { Code = Codes.QueryTooDeep };
        if (size.Selections <= limits.Selections) return null;
        var found = size.Selections < Beyond ? FormattableString.Invariant($"{size.Selections}") : "a billion or more";
        return new(FormattableString.Invariant($"With each fragment written out where it is spread, the query has {found} fields and fragments; {limits.Selections} is the limit.")) { Code = Codes.QueryTooCostly };
    }

    /// <summary>All operations, and the fragments that none of them spreads: rules look at those too.</summary>
    private Size Of(GraphQLDocument document)
    {
        var operations = document.Definitions.OfType<GraphQLOperationDefinition>().Aggregate(Nothing, (size, operation) => size.And(Of(operation.SelectionSet, 1)));
        return _fragments.Keys.Where(name => !_counted.ContainsKey(name)).Aggregate(operations, (size, name) => size.And(Of(name, 1)));
    }

    private Size Of(GraphQLSelectionSet? set, int level)
    {
        if (set is null) return Nothing;
        if (level > MostLevels) return new(0, level);
        return set.Selections.Aggregate(Nothing, (size, selection) => size.And(new Size(1, 0).And(selection switch
        {
            GraphQLField field => Of(field.SelectionSet, level + 1),
            GraphQLInlineFragment inline => Of(inline.SelectionSet, level + 1),
            GraphQLFragmentSpread spread => Of(spread.FragmentName.Name.StringValue, level + 1),
            _ => Nothing,
        }))).Inside();
    }

    /// <summary>What a fragment is wherever it is spread. One that is unknown or that spreads itself is nothing: validation refuses it.</summary>
    private Size Of(string name, int level)
    {
        if (_counted.TryGetValue(name, out var counted)) return counted;
        if (!_fragments.TryGetValue(name, out var fragment)) return Nothing;
        _counted[name] = Nothing;
        return _counted[name] = Of(fragment.SelectionSet, level);
    }

    /// <param name="Selections">Fields, spreads and inline fragments.</param>
    /// <param name="Levels">How many stand in one another.</param>
    private readonly record struct Size(int Selections, int Levels)
    {
        public Size And(Size other) => new(Math.Min(Beyond, Selections + other.Selections), Math.Max(Levels, other.Levels));

        public Size Inside() => this with { Levels = Levels + 1 };
    }
}
