using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Proof;

/// <summary>Is it the expansion valve, and is the new one right?</summary>
public static class ExpansionValveProof
{
    /// <summary>The rules, before and after alike: what clears it first, for most valves that are changed were good; what condemns it last.</summary>
    public static IReadOnlyList<ReadingRule<ExpansionValveCase>> Rules { get; } = [new BulbPlace(), new LiquidBefore(), new AirOverCoil(), new FollowsBulb(), new BulbSuperheat()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(ExpansionNeed need, ExpansionValveReadings readings)
    {
        var one = new ExpansionValveCase(need, readings);
        return Diagnosis.Of(Rules, one, readings.OpensWhenWarmed == false || readings.ClosesWhenChilled == false ? [Dirt] : []) with { Drawings = Drawn(one) };
    }

    /// <summary>Whether the new one works as it should.</summary>
    public static AfterSwapReport Report(ExpansionNeed need, ExpansionValveSpec part, ExpansionValveReadings readings)
    {
        var one = new ExpansionValveCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], Drawn(one));
    }

    private static MendFirst Dirt { get; } = new("dirtOrMoisture", "A valve that is stuck was most often stopped by dirt, wax or ice.", "Change the filter-drier and evacuate well: the same dirt or moisture stops the new valve.", ExpansionValveReadingSources.BulbTest);

    private static IReadOnlyList<Drawing> Drawn(ExpansionValveCase one)
    {
        if (one.Superheat is not { } superheat) return [];
        var range = new Band(Math.Min(0, superheat - 1), Math.Max(20, superheat + 2));
        return
        [
            new Scale(
                "superheat",
                "Superheat at the bulb",
                $"Superheat is {one.Words(superheat)}; 5 to 15 °F (2.8 to 8.3 K) are usual.",
                "K",
                range,
                [new("flooded", Role.Bad, new(range.Low, BulbSuperheat.Least)), new("good", Role.Good, new(BulbSuperheat.Least, BulbSuperheat.Most)), new("starved", Role.Bad, new(BulbSuperheat.Most, range.High))],
                [new("measured", Role.New, Band.Exactly(superheat))]),
        ];
    }
}
