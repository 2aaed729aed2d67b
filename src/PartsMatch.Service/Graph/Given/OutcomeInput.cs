using System.Globalization;
using GraphQL.Types;
using PartsMatch.Learning;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Given;

/// <summary>What became of a part, as a writer gives it.</summary>
internal sealed class OutcomeInput : InputObjectGraphType
{
    private const string Need = "need";
    private const string PartNumber = "partNumber";

    public OutcomeInput(FamilyInputs inputs)
    {
        Name = "OutcomeInput";
        Description = "What became of a part that was put in for a need.";
        Field<NonNullGraphType<IdGraphType>>(OutcomeReading.Id).Description("Made by whoever records it, once for each outcome: 1 to 64 letters, digits, dashes, underscores and points. The same id with the same content is the same record, so that sending it again is safe.");
        Field<NonNullGraphType<DateOnlyGraphType>>(OutcomeReading.On).Description("The day on which it was known; at most a day ahead.");
        Field<StringGraphType>(OutcomeReading.Place).Description("Where, in your own words, at most 100 characters. Outcomes of one place are taken to be alike.");
        AddField(new() { Name = Need, Description = "What was replaced, and where, as it was asked for.", ResolvedType = new NonNullGraphType(inputs.Need) });
        Field<NonNullGraphType<IdGraphType>>(PartNumber).Description("The number of the part that was put in, retired ones too.");
        AddField(new() { Name = OutcomeReading.Result, Description = "What became of it.", ResolvedType = new NonNullGraphType(new GraphQLTypeReference("OutcomeResult")) });
        AddField(new() { Name = OutcomeReading.Reason, Description = "Why it was not right; left out where it was right first time.", ResolvedType = new GraphQLTypeReference("OutcomeReason") });
        Field<StringGraphType>(OutcomeReading.Note).Description("Anything else, at most 500 characters.");
        Field<IdGraphType>(OutcomeReading.Corrects).Description("The id of an earlier outcome that this one takes the place of. That one is kept, and no longer counts.");
    }

    public override object ParseDictionary(IDictionary<string, object?> value)
    {
        var need = (NeedGiven)value[Need]!;
        return new OutcomeGiven(
            Text(value, OutcomeReading.Id),
            need.Family.Kind,
            ((DateOnly)value[OutcomeReading.On]!).ToString("O", CultureInfo.InvariantCulture),
            Text(value, OutcomeReading.Place),
            need.OldPartNumber ?? string.Empty,
            need.Plate,
            need.Site,
            Text(value, PartNumber),
            OutcomeWords.Of((Result)value[OutcomeReading.Result]!),
            value.TryGetValue(OutcomeReading.Reason, out var reason) && reason is OutcomeReason why ? OutcomeWords.Of(why) : string.Empty,
            Text(value, OutcomeReading.Note),
            Text(value, OutcomeReading.Corrects))
        {
            PlateText = need.PlateText,
        };
    }

    /// <summary>The place in this input of what is wrong.</summary>
    public static Refusal Place(Refusal refusal, OutcomeGiven given) => refusal with
    {
        At = refusal.At.Split('.')[0] switch
        {
            OutcomeReading.Plate or OutcomeReading.Site or OutcomeReading.PlateText => $"{Need}.{given.Kind}.{refusal.At}",
            OutcomeReading.OldPart => $"{Need}.{given.Kind}.oldPartNumber",
            OutcomeReading.Part => PartNumber,
            _ => refusal.At,
        },
    };

    private static string Text(IDictionary<string, object?> value, string name) => value.TryGetValue(name, out var text) ? text?.ToString() ?? string.Empty : string.Empty;
}
