using GraphQL;
using GraphQL.Types;
using GraphQL.Validation;
using GraphQL.Validation.Complexity;
using GraphQL.Validation.Errors.Custom;
using GraphQL.Validation.Rules.Custom;

namespace PartsMatch.Service.Graph.Limits;

/// <summary>Is the query deeper than the limit?</summary>
internal sealed class TooDeepError(string message) : ComplexityError(message);

/// <summary>Does the query ask for more than the limits allow? What introspection asks for is counted apart, against a limit that no tool meets.</summary>
internal sealed class CostRule(QueryLimits limits) : ComplexityValidationRule(Counted(limits))
{
    /// <summary>A list without <c>first</c> is short here: a part has a dozen findings, a finding hardly a change.</summary>
    private const double ItemsOfAList = 5;

    private static readonly FieldComplexityResult Nothing = new(0, 0);

    private readonly IntrospectionRule _introspection = new(limits);

    /// <summary>Counts the fields below __schema and __type in one of the two countings only, and all others in the other.</summary>
    public static void CountApart(ISchema schema)
    {
        foreach (var meta in (FieldType[])[schema.SchemaMetaFieldType, schema.TypeMetaFieldType])
        {
            meta.WithComplexityImpact(field => field.Configuration is IntrospectionOptions ? new(1, 1) : Nothing);
        }
    }

    public override async ValueTask<INodeVisitor?> GetPostNodeVisitorAsync(ValidationContext context)
    {
        await _introspection.GetPostNodeVisitorAsync(context);
        return await base.GetPostNodeVisitorAsync(context);
    }

    protected override ValueTask ValidateComplexityAsync(ValidationContext context, double totalComplexity, int maxDepth)
    {
        if (maxDepth > limits.Depth) context.ReportError(new TooDeepError($"The query is {maxDepth} levels deep; {limits.Depth} is the limit."));
        if (totalComplexity > limits.Cost)
        {
            context.ReportError(new ComplexityError(FormattableString.Invariant($"The answer could have about {totalComplexity:0} fields; {limits.Cost} is the limit. Ask for fewer items (first) or fewer fields.")));
        }

        return default;
    }

    private static ComplexityOptions Counted(QueryLimits limits)
    {
        var options = new ComplexityOptions { DefaultListImpactMultiplier = ItemsOfAList };
        var usual = options.DefaultComplexityImpactDelegate;

        // A first that is out of range is refused later on, in a sentence about itself. Here a negative one must not pay for the rest
        // of the query, and one too great counts as the greatest.
        var most = Math.Max(ItemsOfAList, limits.ListSize);
        options.DefaultComplexityImpactDelegate = field =>
        {
            if (NumbersAtOnce.CostOf(field, limits) is { } numbers) return numbers;
            var cost = usual(field);
            return new(cost.FieldImpact, Math.Clamp(cost.ChildImpactMultiplier, 0, most));
        };
        return options;
    }

    private sealed class IntrospectionRule(QueryLimits limits) : ComplexityValidationRule(new IntrospectionOptions())
    {
        protected override ValueTask ValidateComplexityAsync(ValidationContext context, double totalComplexity, int maxDepth)
        {
            if (totalComplexity > limits.IntrospectionCost)
            {
                context.ReportError(new ComplexityError("The query asks for the schema too many times over. Its text is at /graphql/schema."));
            }

            return default;
        }
    }

    /// <summary>Counts what introspection asks for, and nothing else: its types are those whose names begin with two underscores.</summary>
    private sealed class IntrospectionOptions : ComplexityOptions
    {
        public IntrospectionOptions()
        {
            DefaultListImpactMultiplier = ItemsOfAList;
            var usual = DefaultComplexityImpactDelegate;
            DefaultComplexityImpactDelegate = field => field.ParentType.Name.StartsWith("__", StringComparison.Ordinal) ? usual(field) : Nothing;
        }
    }
}
