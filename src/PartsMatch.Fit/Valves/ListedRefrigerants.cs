using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves;

/// <summary>Is a valve listed for the refrigerant there, where its list is not one of bulb pressures?</summary>
internal static class ListedRefrigerants
{
    /// <summary>Listed meets; not listed is unknown, for a maker may allow what a list does not name. One that burns more readily than all that are listed fails: another class is never offered.</summary>
    /// <param name="isListed">Whether it lists refrigerants at all.</param>
    /// <param name="listed">Their places among all refrigerants.</param>
    /// <param name="there">What is there.</param>
    public static Finding Judge(bool isListed, Sequence<int> listed, Refrigerant there)
    {
        if (!isListed) return Finding.Unknown(Side.Part, "refrigerants", $"The refrigerants that it is made for are not given; {there.Name} is there.");
        if (listed.AsSpan().Contains(RefrigerantList.PlaceOf(there))) return Finding.Meets($"It is listed for {there.Name}.");
        return BurnsMost(listed) is { } most && most.Flammability < there.Flammability
            ? Finding.Fails($"It is listed for refrigerants up to class {most.SafetyClass}; {there.Name}, of class {there.SafetyClass}, burns more readily.")
            : Finding.Unknown(Side.Part, "refrigerants", $"It is not listed for {there.Name}: only its maker can say whether it bears it.") with { Shortfall = 1 };
    }

    private static Refrigerant? BurnsMost(Sequence<int> listed)
    {
        Refrigerant? most = null;
        foreach (var place in listed.AsSpan())
        {
            if (most is null || Refrigerants.All[place].Flammability > most.Flammability) most = Refrigerants.All[place];
        }

        return most;
    }
}
