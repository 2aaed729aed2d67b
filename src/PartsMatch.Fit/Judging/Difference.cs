using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging;

/// <summary>Something that will be different once the new part runs: an estimate, with its band and what it assumes.</summary>
/// <param name="Name">Its name at every edge, in camel case: speed.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Unit">Its unit, or empty for a ratio: rpm, W, %, A.</param>
/// <param name="Old">With the old part; null where only the ratio can be told.</param>
/// <param name="New">With the new part; null where only the ratio can be told.</param>
/// <param name="Ratio">New over old; null where it means nothing.</param>
/// <param name="Assumptions">What it rests on, each in a few words without a stop, which lists put themselves.</param>
public sealed record Difference(string Name, string Title, string Unit, Band? Old, Band? New, Band? Ratio, IReadOnlyList<string> Assumptions)
{
    /// <summary>The same estimate in the units that were chosen; a ratio is the same in all.</summary>
    /// <param name="units">The units.</param>
    public Difference In(Units units) => !ChosenUnits.Change(Unit, units) ? this : this with
    {
        Unit = ChosenUnits.In(1, Unit, units).Unit!,
        Old = Old is { } old ? ChosenUnits.In(old, Unit, units) : null,
        New = New is { } now ? ChosenUnits.In(now, Unit, units) : null,
    };
}
