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
internal sealed class CostRule(QueryLimits limits) : ComplexityValidationRule(Counted())
{
    /// <summary>A list without <c>first</c> is short here: a part has a dozen findings, a finding hardly a change.</summary>
    private const double ItemsOfAList = 5;

    private readonly IntrospectionRule _introspection = new(limits);

    /// <summary>Counts the fields below __schema and __type in one of the two countings only.</summary>
    public static void CountApart(ISchema schema)
    {
        foreach (var meta in (FieldType[])[schema.SchemaMetaFieldType, schema.TypeMetaFieldType])
        {
            meta.WithComplexityImpact(field => ReferenceEquals(field.Configuration, IntrospectionRule.Counting) ? new(1, 1) : new(0, 0));
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

    private static ComplexityOptions Counted()
    {
        var options = new ComplexityOptions { DefaultListImpactMultiplier = ItemsOfAList };
        var usual = options.DefaultComplexityImpactDelegate;
        // A negative first is refused later on; here it must not pay for the rest of the query.
        options.DefaultComplexityImpactDelegate = field => usual(field) is var cost && cost.ChildImpactMultiplier < 0 ? new(cost.FieldImpact, 0) : cost;
        return options;
    }

    private sealed class IntrospectionRule(QueryLimits limits) : ComplexityValidationRule(Counting)
    {
        public static readonly ComplexityOptions Counting = Counted();

        protected override ValueTask ValidateComplexityAsync(ValidationContext context, double totalComplexity, int maxDepth)
        {
            if (totalComplexity > limits.IntrospectionCost + limits.Cost)
            {
                context.ReportError(new ComplexityError("The query asks for the schema too many times over. Its text is at /graphql/schema."));
            }

            return default;
        }
    }
}
