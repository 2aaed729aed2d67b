using GraphQL;
using GraphQL.Types;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Graph.Given;

namespace PartsMatch.Service.Graph.Results;

/// <summary>A spec on its way out.</summary>
internal sealed record SpecOut(Family Family, Spec Spec);

/// <summary>A part's spec, for programs that know the family.</summary>
internal sealed class PartSpecUnion : UnionGraphType
{
    public PartSpecUnion()
    {
        Name = "PartSpec";
        Description = "What a part is, as its family's own type. Programs that do not know the family read Part.fields.";
        var types = Families.All.ToDictionary(family => family, family => new SpecType(family));
        foreach (var type in types.Values) AddPossibleType(type);
        ResolveType = value => types[((SpecOut)value).Family];
    }

    private sealed class SpecType : ObjectGraphType<SpecOut>
    {
        private const string UnitsArgument = "units";

        public SpecType(Family family)
        {
            Name = family.TypeName("Spec");
            Description = $"What a {family.Title} is. A field that is null is unknown.";
            foreach (var field in family.SpecShape.Fields)
            {
                Field<GraphQLClrOutputTypeReference<FieldValue>>(field.Name)
                    .Description(field.Describe())
                    .Argument<UnitsEnum>(UnitsArgument, argument => (argument.Description, argument.DefaultValue) = ("The units to write it in.", Units.AsGiven))
                    .Resolve(context => FieldValue.Of(field, context.Source.Spec, context.GetArgument<Units>(UnitsArgument)));
            }
        }
    }
}
