using GraphQL.Validation.Complexity;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Transport;

namespace PartsMatch.Service.Graph.Limits;

/// <summary>How many part numbers a list may be asked about in one query, and what that costs.</summary>
internal static class NumbersAtOnce
{
    public const string Argument = "partNumbers";

    /// <summary>A number costs as much as this many fields: it is ranked beside others on all cores, and few of its parts are shown.</summary>
    private const double NumberCost = 50;

    public static List<string> Check(QueryLimits limits, IEnumerable<string> partNumbers)
    {
        var numbers = partNumbers.ToList();
        return numbers.Count <= limits.PartNumbers
            ? numbers
            : throw new RefusedError(new Refusal(Codes.ListTooLong, Argument, FormattableString.Invariant($"At most {limits.PartNumbers} part numbers are asked about at once; these are {numbers.Count}. Longer lists go to /cross-reference.")));
    }

    /// <summary>What a field costs that takes part numbers; null for any other. A list that is too long is refused later on, in a sentence about itself.</summary>
    public static FieldComplexityResult? CostOf(FieldImpactContext field, QueryLimits limits)
    {
        if (field.FieldDefinition.Arguments?.Find(Argument) is null) return null;
        var numbers = Math.Min(field.GetArgument<IReadOnlyCollection<string>>(Argument)?.Count ?? 0, limits.PartNumbers);
        return new(1 + (NumberCost * numbers), numbers);
    }
}
