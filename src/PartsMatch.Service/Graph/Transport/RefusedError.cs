using GraphQL;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>All that is wrong with one field's arguments. A resolver can throw one error only, so this one is taken apart when the answer is written.</summary>
internal sealed class RefusedError(IReadOnlyList<Refusal> refusals) : ExecutionError(refusals[0].Message)
{
    public RefusedError(Refusal refusal)
        : this([refusal])
    {
    }

    public static ExecutionResult EachAlone(ExecutionResult result)
    {
        if (result.Errors?.Any(error => error is RefusedError) != true) return result;
        var alone = new ExecutionErrors();
        alone.AddRange(result.Errors.SelectMany(error => error is RefusedError refused ? refused.Each() : [error]));
        result.Errors = alone;
        return result;
    }

    private IEnumerable<ExecutionError> Each() => refusals.Select(refusal =>
    {
        var error = new ExecutionError(refusal.Message) { Code = refusal.Code, Path = Path };
        foreach (var location in Locations ?? []) error.AddLocation(location);
        error.Extensions = new Dictionary<string, object?>(StringComparer.Ordinal) { ["at"] = refusal.At };
        return error;
    });
}
