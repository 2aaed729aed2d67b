using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>A coil that goes in and the others that hang on its contact.</summary>
/// <param name="Name">The coil at the beginning of a sentence.</param>
/// <param name="Own">What it holds by, VA.</param>
/// <param name="OwnInrush">What it takes as it pulls in, VA; null where not given.</param>
/// <param name="Others">What the others hold by, VA; 0 where none were named.</param>
internal sealed record HungCoils(CoilName Name, double Own, double? OwnInrush, double Others)
{
    /// <summary>What all of them hold by, VA.</summary>
    public double Holding => Own + Others;

    /// <summary>What it takes as it pulls in, VA; ten times what it holds by where it is not given.</summary>
    public double OwnInrushTaken => Taken(OwnInrush, Own);

    /// <summary>What all of them take as they pull in, VA: from what is known to be taken to ten times what they hold by where it is not given.</summary>
    public Band Inrush => new((OwnInrush ?? Own) + Others, OwnInrushTaken + (Others * OnTheContact.InrushTimes));

    /// <summary>What a coil takes as it pulls in, VA.</summary>
    /// <param name="given">VA; null where not given.</param>
    /// <param name="holding">What it holds by, VA.</param>
    public static double Taken(double? given, double holding) => given ?? (holding * OnTheContact.InrushTimes);

    /// <summary>What they take in words; formed only when it is shown.</summary>
    public override string ToString() => FormattableString.Invariant($"{Name} takes {Own:0.#} VA{(Others > 0 ? FormattableString.Invariant($" beside {Others:0.#} VA of other coils") : string.Empty)}");
}
