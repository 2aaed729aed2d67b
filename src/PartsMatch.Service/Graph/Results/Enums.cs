using GraphQL.Types;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Learning;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Store;

namespace PartsMatch.Service.Graph.Results;

/// <summary>An enum of ours, with what the schema says of each value.</summary>
/// <typeparam name="T">The enum.</typeparam>
internal abstract class DescribedEnum<T> : EnumerationGraphType<T>
    where T : struct, Enum
{
    protected DescribedEnum(string name, string description, params (T Value, string Description)[] values)
    {
        (Name, Description) = (name, description);
        foreach (var (value, words) in values) Values.FindByValue(value)!.Description = words;
    }
}

internal sealed class FitEnum() : DescribedEnum<PartFit>(
    "Fit",
    "Whether a part does the job, all aspects together.",
    (PartFit.DropIn, "Nothing need be changed."),
    (PartFit.FitsWithChanges, "It fits once something is changed or checked."),
    (PartFit.CantTellYet, "A deciding aspect is unknown."),
    (PartFit.DoesntFit, "An aspect fails."));

internal sealed class VerdictEnum() : DescribedEnum<Verdict>(
    "Verdict",
    "One aspect's answer about one part.",
    (Verdict.Meets, "The part meets it as it is."),
    (Verdict.MeetsWithChanges, "The part meets it once something is changed or checked."),
    (Verdict.Unknown, "Something that decides it is not known."),
    (Verdict.Fails, "The part does not meet it, and no change would help."));

internal sealed class SideEnum() : DescribedEnum<Side>(
    "Side",
    "Whose field is meant.",
    (Side.Plate, "The old part's plate: a reading to take."),
    (Side.Site, "The site: a reading to take."),
    (Side.Part, "The new part: ask the counter."));

internal sealed class SourceStatusEnum() : DescribedEnum<SourceStatus>(
    "SourceStatus",
    "How far a rule or figure was confirmed.",
    (SourceStatus.Published, "Seen in a published page or file."),
    (SourceStatus.Memory, "Known from memory, not seen."),
    (SourceStatus.Practice, "Common practice without a published source."),
    (SourceStatus.Derived, "Follows from geometry or arithmetic."));

internal sealed class StageEnum() : DescribedEnum<Stage>(
    "Stage",
    "The stages of a job, in working order.",
    (Stage.MakeSafe, "Lock out, prove dead, discharge."),
    (Stage.ProveThePart, "See that it is the part that failed."),
    (Stage.NoteWhatIsThere, "Note what is there before it comes off."),
    (Stage.MendFirst, "Mend what killed the old one."),
    (Stage.Bench, "What is done to the new part before it goes in."),
    (Stage.Mount, "Put it in its place."),
    (Stage.Wire, "Connect it."),
    (Stage.FirstStart, "Start it for a second, before anything is proved on it, and lock out again."),
    (Stage.StartAndCheck, "Start it, and prove that it runs as it should."),
    (Stage.Record, "Write down what was done."));

internal sealed class ConclusionEnum() : DescribedEnum<Conclusion>(
    "Conclusion",
    "Whether it is the part.",
    (Conclusion.PartHasFailed, "The part has failed; the sentence says how."),
    (Conclusion.NotThePart, "Something else is to be mended; the sentence says where to look."),
    (Conclusion.ReadNext, "The readings do not tell yet; the next one is named."),
    (Conclusion.NothingWrongFound, "Nothing that was read is surely wrong; the sentence says what of it does not tell."));

internal sealed class ReadingVerdictEnum() : DescribedEnum<ReadingVerdict>(
    "ReadingVerdict",
    "What a reading says of the part it was taken at.",
    (ReadingVerdict.Good, "It is as it should be."),
    (ReadingVerdict.Bad, "It is not as it should be."),
    (ReadingVerdict.CantTell, "It does not decide: something is not known, or it lies between two limits."),
    (ReadingVerdict.NotApplicable, "It means nothing here, and must not be judged by."));

internal sealed class PartStatusEnum() : DescribedEnum<PartStatus>(
    "PartStatus",
    "Whether a part may still be bought, and may still be offered.",
    (PartStatus.Current, "The maker makes it."),
    (PartStatus.Discontinued, "The maker no longer makes it; it may still be on a shelf."),
    (PartStatus.Retired, "Taken out of the catalogue: its number resolves, but it is never offered."));

internal sealed class WeightsOriginEnum() : DescribedEnum<WeightsOrigin>(
    "WeightsOrigin",
    "Where weights come from.",
    (WeightsOrigin.HandSet, "A person's judgement."),
    (WeightsOrigin.Rescaled, "A person's judgement of what costs how much beside another, brought to the scale of outcomes of past installations."),
    (WeightsOrigin.Trained, "Outcomes of past installations."));

internal sealed class TrainingEndEnum() : DescribedEnum<TrainingEnd>(
    "TrainingEnd",
    "How a training ended, or what else became of the weights.",
    (TrainingEnd.Adopted, "Trained weights were put in place."),
    (TrainingEnd.Rescaled, "Trained weights were not better enough: hand-set ones, rescaled, were put in place."),
    (TrainingEnd.Kept, "Nothing was better enough than the weights in place, which were trained before: they stayed."),
    (TrainingEnd.TooFew, "There are too few outcomes: the weights stayed."),
    (TrainingEnd.Stopped, "Someone stopped it, or the service stopped: the weights stayed."),
    (TrainingEnd.Failed, "Something went wrong: the weights stayed."),
    (TrainingEnd.WentBack, "Nothing was trained: someone put the previous weights back."));

internal sealed class UnitsEnum() : DescribedEnum<Units>(
    "Units",
    "In which units a value is written.",
    (Units.AsGiven, "In the unit it was given in."),
    (Units.Us, "In the units of a US plate: hp, in, °F."),
    (Units.Si, "In SI units: W, mm, °C."));

internal sealed class OutcomeResultEnum() : DescribedEnum<Result>(
    "OutcomeResult",
    "What became of a part that was put in.",
    (Result.RightFirstTime, "It went in as foreseen, and stayed."),
    (Result.Reworked, "It stayed, but more had to be changed than was foreseen."),
    (Result.CameBack, "It did not do the job."));

internal sealed class OutcomeReasonEnum() : DescribedEnum<OutcomeReason>(
    "OutcomeReason",
    "Why a part that was put in was not right.",
    (OutcomeReason.FailedAgain, "It failed as the old one had."),
    (OutcomeReason.DidNotDoTheJob, "It ran, and the machine still did not do what it should."),
    (OutcomeReason.MoreToChangeThanForeseen, "More had to be changed than was foreseen."),
    (OutcomeReason.SomethingWasMissing, "Something to put it in with was not there."),
    (OutcomeReason.WasNotThePart, "Something else had failed: it teaches nothing about parts."),
    (OutcomeReason.Other, "Something else; the note says what."));

/// <summary>The families, by kind: one value each.</summary>
internal sealed class PartKindEnum : EnumerationGraphType
{
    public PartKindEnum()
    {
        Name = "PartKind";
        Description = "A kind of part, with its own spec, site and questions.";
        foreach (var family in Families.All) Add(family.Kind, family, $"A {family.Title}.");
    }
}
