global using MotorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Motors.MotorSpec, PartsMatch.Fit.Motors.MotorSite>;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.After;
using PartsMatch.Fit.Motors.Before;
using PartsMatch.Fit.Motors.Drawings;
using PartsMatch.Fit.Motors.Running;

namespace PartsMatch.Fit.Motors;

/// <summary>Fan motors as a family.</summary>
public static class MotorFamily
{
    /// <summary>The family.</summary>
    public static Family<MotorSpec, MotorSite, MotorReadings> Motor { get; } = new("motor", "fan motor", new FamilyRules<MotorSpec, MotorSite, MotorReadings>
    {
        Aspects = MotorAspects.All,
        Pairs =
        [
            new("supplyVoltage", "fanLoad", "a motor near its load has nothing left for volts that are low"),
            new("fanLoad", "ambient", "a motor near its load bears no air that is near its limit"),
            new("fanLoad", "airDensity", "cold, dense air asks most of a motor that is near its load"),
        ],
        Vocabulary = MotorVocabulary.All,
        Deduce = MotorDeductions.Deduce,
        DeduceSite = DeduceSite,
        Contradictions = MotorContradictions.Find,
        SiteContradictions = SiteAgainstPlate.Find,
        WillDiffer = MotorDifferences.Of,
        Drawings = MotorDrawings.Of,
        Steps = MotorSteps.Of,
        BeforeCondemning = MotorBefore.Diagnose,
        AfterSwap = MotorAfter.Report,
    });

    private static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site)
    {
        var (supplied, ofSupply) = MotorDeductions.DeduceSite(plate, site);
        var (placed, ofPlace) = PlaceDeductions.DeduceSite(plate, supplied);
        var (filled, ofBody) = BodyDeductions.DeduceSite(plate, placed);
        return (filled, [.. ofSupply, .. ofPlace, .. ofBody]);
    }
}
