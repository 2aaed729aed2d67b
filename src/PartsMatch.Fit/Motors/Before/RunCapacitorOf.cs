using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>The run capacitor that a motor is to get, from what is known at the motor.</summary>
internal static class RunCapacitorOf
{
    /// <summary>The motor's plate asks; the can that is there tells of itself where the plate is silent, or where its other section serves another motor: the fan's is the second then.</summary>
    public static OtherPart Motor(MotorNeed need)
    {
        var asked = need.Plate.RunCapacitor is { IsNone: false } plate ? plate : null;
        var there = need.Site.CapacitorThere is { IsNone: false } can && (can.SecondSection is not null || asked is null) ? can : null;
        var isShared = there?.SecondSection is not null;
        return new(CapacitorFamily.Capacitor, new CapacitorSpec { Rating = there }, new CapacitorSite
        {
            MotorAsksFor = isShared ? null : asked,
            SecondMotorAsksFor = isShared ? asked : null,
            SupplyFrequency = need.Site.SupplyFrequency,
        });
    }
}
