using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>What the old motor's body, shaft, turn and capacitor say of the place it came out of.</summary>
public static class BodyDeductions
{
    /// <summary>A field of the site, and the field of the plate that tells it where nobody measured.</summary>
    private static readonly Pair[] Pairs =
    [
        Pair.Of(nameof(MotorSite.TurnNeeded), nameof(MotorSpec.Rotation)),
        Pair.Of(nameof(MotorSite.HubBore), nameof(MotorSpec.ShaftDiameter)),
        Pair.Of(nameof(MotorSite.HubHoldsOn), nameof(MotorSpec.ShaftForm)),
        Pair.Of(nameof(MotorSite.MountThere), nameof(MotorSpec.Mounts)),
        Pair.Of(nameof(MotorSite.MountDiameter), nameof(MotorSpec.BodyDiameter)),
        Pair.Of(nameof(MotorSite.BracketStudCircle), nameof(MotorSpec.StudCircle)),
        Pair.Of(nameof(MotorSite.FaceBoltCircleThere), nameof(MotorSpec.FaceBoltCircle)),
        Pair.Of(nameof(MotorSite.CapacitorThere), nameof(MotorSpec.RunCapacitor)),
    ];

    /// <summary>What goes with the old blade, where that does not stay.</summary>
    private static readonly HashSet<Field> OfTheOldHub = [Shape<MotorSite>.Of.Find("hubBore")!, Shape<MotorSite>.Of.Find("hubHoldsOn")!];

    private static readonly Pair ShaftLengths = Pair.Of(nameof(MotorSite.ShaftLengthNeeded), nameof(MotorSpec.ShaftLength));

    /// <summary>One step of MG 1's shaft lengths, 1/4 in, in mm (NEMA MG 1 4.4.1 note 3): a blade is set back so far without a thought (practice).</summary>
    internal const double ShaftStepMillimetres = 6.35;

    /// <summary>The least shaft that reaches where the old one did: one step shorter. Null when the old one's length is not known.</summary>
    internal static Length? LeastShaft(Length? old) => old is { } length && length.Millimeters > ShaftStepMillimetres ? length - Length.FromInches(0.25) : null;

    /// <summary>Fills what is not known of the site; a turn whose end is not named tells nothing.</summary>
    public static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site)
    {
        MotorSite? filled = null;
        var deductions = new List<Deduction>();
        foreach (var (there, old, because) in Pairs)
        {
            if (there.Get(site) is not null || old.Get(plate) is not { } value || value is Turn { FacingShaft: null }) continue;
            if (site.BladeStays == false && OfTheOldHub.Contains(there)) continue;
            there.Set(filled ??= site with { }, value);
            deductions.Add(new(Side.Site, there.Name, old.Form.WriteAny(value, Units.AsGiven), because, [old.Name], BodySources.AsTheOldMotor));
        }

        if (site.ShaftLengthNeeded is null && LeastShaft(plate.ShaftLength) is { } least)
        {
            ShaftLengths.Site.Set(filled ??= site with { }, least);
            deductions.Add(new(Side.Site, ShaftLengths.Site.Name, ShaftLengths.Site.Form.WriteAny(least, Units.AsGiven), "the old motor's shaft, less the 1/4 in that a blade is set back", [ShaftLengths.Plate.Name], BodySources.AsTheOldMotor));
        }

        return (filled ?? site, deductions);
    }

    /// <summary>A field of the site, the one of the plate that tells it, and in words what that is.</summary>
    private sealed record Pair(Field Site, Field Plate, string Because)
    {
        public static Pair Of(string site, string plate)
        {
            var old = Shape<MotorSpec>.Of.Find(plate)!;
            return new(Shape<MotorSite>.Of.Find(site)!, old, $"the old motor's {InSentence.Of(old.Label)}");
        }
    }
}
