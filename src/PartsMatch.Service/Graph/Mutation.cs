using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Graph.Given;
using PartsMatch.Service.Graph.Results;
using PartsMatch.Service.Graph.Transport;
using PartsMatch.Store;

namespace PartsMatch.Service.Graph;

[Description("What writes. Every field needs a key, and POST.")]
internal sealed class Mutation
{
    [Description("Adds a part. A number that is taken is answered with the part that has it.")]
    [OutputType(typeof(GraphQL.Types.NonNullGraphType<PartWriteUnion>))]
    public static async Task<object> AddPart(
        [Description("The part.")] PartGiven part,
        [FromServices] PartWrites writes,
        [FromUserContext] CallerContext caller) =>
        PartWriteUnion.Of((await writes.AddAsync(part, caller.Label)).OrRefuse("part"));

    [Description("Replaces a part, whole: what is left out is unknown afterwards. If someone else changed it meanwhile, nothing is written and the answer is the part as it is now. A retired part can be brought back this way.")]
    [OutputType(typeof(GraphQL.Types.NonNullGraphType<PartWriteUnion>))]
    public static async Task<object> ChangePart(
        [Description("The version that was read.")] int version,
        [Description("The part as it is to be. Its number says which.")] PartGiven part,
        [FromServices] PartWrites writes,
        [FromUserContext] CallerContext caller) =>
        PartWriteUnion.Of((await writes.ChangeAsync(version, part, caller.Label)).OrRefuse("part"));

    [Description("Takes a part out of the catalogue: its number still resolves, but it is never offered.")]
    [OutputType(typeof(GraphQL.Types.NonNullGraphType<PartWriteUnion>))]
    public static async Task<object> RetirePart(
        [Id, Description("Which part.")] string number,
        [Description("The version that was read.")] int version,
        [FromServices] PartWrites writes,
        [FromUserContext] CallerContext caller) =>
        PartWriteUnion.Of((await writes.RetireAsync(number, version, caller.Label)).OrRefuse());

    [Description("Records what became of a part that was put in. The same id with the same content is answered as before; with other content it is refused.")]
    public static async Task<OutcomeOut> RecordOutcome(
        [Description("The outcome.")] OutcomeGiven outcome,
        [FromServices] OutcomeRecords records,
        [FromUserContext] CallerContext caller)
    {
        var answer = await records.RecordAsync(outcome, caller.Label);
        return new((answer.IsGiven ? answer : Answer<StoredOutcome>.Refused([.. answer.Refusals.Select(refusal => OutcomeInput.Place(refusal, outcome))])).OrRefuse("outcome"));
    }

    [Description("Trains the weights of a kind on all outcomes, in the background. What comes of it is put in place when it is done: cursors of rankings by other weights then expire. One training of a kind goes on at a time: where one does, that is the answer.")]
    public static TrainingRunOut Retrain(
        [Description("The kind.")] Family kind,
        [FromServices] ModelTrainings trainings,
        [FromUserContext] CallerContext caller) =>
        new(kind, trainings.Begin(kind, caller.Label));

    [Description("Tells the training that goes on to stop, and leaves the weights as they are; null when none goes on.")]
    public static TrainingRunOut? CancelRetrain(
        [Description("The kind.")] Family kind,
        [FromServices] ModelTrainings trainings) =>
        trainings.Stop(kind) is { } run ? new(kind, run) : null;

    [Description("Puts the previous weights of a kind back, and those that there are in their place: done twice, nothing has changed. Null when there are none to go back to.")]
    public static ModelOut? Rollback(
        [Description("The kind.")] Family kind,
        [FromServices] ModelTrainings trainings,
        [FromServices] Catalogues catalogues,
        [FromUserContext] CallerContext caller) =>
        trainings.GoBack(kind, caller.Label) is { } answer ? new(answer.OrRefuse(), catalogues) : null;
}
