using GraphQL.Types;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Learning;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Graph.Given;
using PartsMatch.Service.Graph.Limits;
using PartsMatch.Service.Graph.Results;
using PartsMatch.Store;

namespace PartsMatch.Service.Graph;

/// <summary>Results are made from the classes in Results; specs and inputs from the families' shapes.</summary>
internal sealed class PartsSchema : Schema
{
    public PartsSchema(IServiceProvider services)
        : base(services)
    {
        Description = "Which part in a catalogue will do the job of one that failed, and what must be changed on it.";
        Query = new AutoRegisteringObjectGraphType<Query>();
        Mutation = new AutoRegisteringObjectGraphType<Mutation>();

        RegisterTypeMapping(typeof(NeedGiven), typeof(OneOfFamilies<NeedGiven>));
        RegisterTypeMapping(typeof(SiteGiven), typeof(OneOfFamilies<SiteGiven>));
        RegisterTypeMapping(typeof(ReadingsGiven), typeof(OneOfFamilies<ReadingsGiven>));
        RegisterTypeMapping(typeof(PartGiven), typeof(PartInput));
        RegisterTypeMapping(typeof(OutcomeGiven), typeof(OutcomeInput));
        RegisterTypeMapping(typeof(Family), typeof(PartKindEnum));
        RegisterTypeMapping(typeof(PartFit), typeof(FitEnum));
        RegisterTypeMapping(typeof(Verdict), typeof(VerdictEnum));
        RegisterTypeMapping(typeof(Conclusion), typeof(ConclusionEnum));
        RegisterTypeMapping(typeof(ReadingVerdict), typeof(ReadingVerdictEnum));
        RegisterTypeMapping(typeof(Side), typeof(SideEnum));
        RegisterTypeMapping(typeof(SourceStatus), typeof(SourceStatusEnum));
        RegisterTypeMapping(typeof(PartStatus), typeof(PartStatusEnum));
        RegisterTypeMapping(typeof(Units), typeof(UnitsEnum));
        RegisterTypeMapping(typeof(Stage), typeof(StageEnum));
        RegisterTypeMapping(typeof(Result), typeof(OutcomeResultEnum));
        RegisterTypeMapping(typeof(OutcomeReason), typeof(OutcomeReasonEnum));
        RegisterTypeMapping(typeof(WeightsOrigin), typeof(WeightsOriginEnum));
        RegisterTypeMapping(typeof(TrainingEnd), typeof(TrainingEndEnum));

        Initialize();
        AllTypes["Decimal"]!.Description = "A decimal number, exact: money.";
        CostRule.CountApart(this);
    }
}
