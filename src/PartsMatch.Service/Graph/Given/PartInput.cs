using GraphQL.Types;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Graph.Given;

/// <summary>A part as a writer gives it, whole.</summary>
internal sealed class PartInput : InputObjectGraphType
{
    public PartInput(FamilyInputs inputs)
    {
        Name = "PartInput";
        Description = "A catalogue entry, whole: what is left out is unknown afterwards.";
        Field<NonNullGraphType<IdGraphType>>("number").Description("Its part number, at most 100 characters. Dashes, spaces and case do not tell numbers apart.");
        Field<NonNullGraphType<StringGraphType>>("maker").Description("Who makes it.");
        Field<NonNullGraphType<StringGraphType>>("title").Description("A few words for it, as a catalogue's line has them.");
        AddField(new() { Name = "status", Description = "Whether it can still be bought.", ResolvedType = new NonNullGraphType(new GraphQLTypeReference("PartStatus")), DefaultValue = PartStatus.Current });
        AddField(new() { Name = "spec", Description = "What it is.", ResolvedType = new NonNullGraphType(inputs.Spec) });
        AddField(new()
        {
            Name = "supersededBy",
            Description = "Parts that replaced it, and who says so. They are evidence, and never outvote a failed aspect.",
            ResolvedType = new ListGraphType(new NonNullGraphType(new SupersessionInput())),
        });
    }

    public override object ParseDictionary(IDictionary<string, object?> value) => new PartGiven(
        value["number"]!.ToString()!,
        (string)value["maker"]!,
        (string)value["title"]!,
        (PartStatus)value["status"]!,
        (SpecGiven)value["spec"]!,
        value.TryGetValue("supersededBy", out var by) && by is IEnumerable<object> all ? [.. all.Cast<Supersession>()] : []);

    private sealed class SupersessionInput : InputObjectGraphType
    {
        public SupersessionInput()
        {
            Name = "SupersessionInput";
            Description = "That a part was replaced by another.";
            Field<NonNullGraphType<IdGraphType>>("number").Description("The number of the part that replaced it.");
            Field<NonNullGraphType<StringGraphType>>("saidBy").Description("Who says so.");
            Field<NonNullGraphType<DateOnlyGraphType>>("on").Description("Since when.");
        }

        public override object ParseDictionary(IDictionary<string, object?> value) => new Supersession(value["number"]!.ToString()!, (string)value["saidBy"]!, (DateOnly)value["on"]!);
    }
}
