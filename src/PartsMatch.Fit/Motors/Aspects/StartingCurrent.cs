using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>How a motor's locked-rotor amps are known.</summary>
public enum StartingBasis
{
    /// <summary>They are marked.</summary>
    Marked,

    /// <summary>By its code letter: the upper end of the letter's range.</summary>
    CodeLetter,

    /// <summary>Taken as 6 times the full-load amps (UL/IEC 60730-1, from memory).</summary>
    SixTimes,

    /// <summary>Of an electronically commutated motor: it ramps up, so that it starts at about its full-load amps (practice); what its electronics draw as they are switched on is not known.</summary>
    RampsUp,
}

/// <summary>What the starting current reads.</summary>
/// <param name="LockedRotor">Locked-rotor amps by tap and frequency.</param>
/// <param name="Basis">How they are known.</param>
public readonly record struct StartingCurrentFacet(MotorAmps LockedRotor, StartingBasis Basis);

/// <summary>Does the circuit stand the motor's locked-rotor amps, at each start?</summary>
/// <remarks>
/// The greatest amps of its speeds count: it may be started on any of them. Judged apart from full-load amps, sums likewise. Not marked, they follow from the code letter, else they are 6 times full load; so is the rating of a contact marked for full-load amps only, but a part
/// fails only what is marked. An electronically commutated motor ramps up: 6 times full load would be a false figure for it, and a contact waits for its maker's. Without a contact's rating, over 20 % more than the old plate's is to be checked (IEC 60034-1's tolerance of locked-rotor amps); plates rarely give them, and then the running current speaks for both.
/// </remarks>
public sealed class StartingCurrent() : Aspect<MotorSpec, MotorSite, StartingCurrentFacet>("Starting current", isDeciding: false, CircuitSources.StartingCurrent, new(0.3, 0.5, 0.3))
{
    private const double Tolerance = 1.2;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = CircuitDevice.Measure with { Or = OldAmps.Measure with { Limit = 100 * (Tolerance - 1) } };

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["lockedRotorAmps", "codeLetter"], ["contactLockedRotorAmps", "contactFullLoadAmps", "cyclingSwitchLockedRotorAmps"]) { Besides = [.. RatingFields.All, "otherFullLoadAmps", "otherLockedRotorAmps", "cyclingSwitchFullLoadAmps"] };

    /// <inheritdoc/>
    public override StartingCurrentFacet Read(MotorSpec part)
    {
        var marked = MotorAmps.LockedRotor(part);
        if (marked.Rows.Count > 0) return new(marked, StartingBasis.Marked);
        var lettered = MotorAmps.Of(part, row => ByCodeLetter(part, row));
        return lettered.Rows.Count > 0 ? new(lettered, StartingBasis.CodeLetter)
            : part.Type == MotorType.ElectronicallyCommutated ? new(MotorAmps.FullLoad(part), StartingBasis.RampsUp)
            : new(MotorAmps.Of(part, SixTimes), StartingBasis.SixTimes);
    }

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, StartingCurrentFacet facet) =>
        facet.LockedRotor.Rows.Count == 0
            ? Finding.Unknown(Side.Part, "lockedRotorAmps", $"The part's locked-rotor amps are not given, and neither a code letter nor full-load amps tell them.")
            : facet.LockedRotor.Connections.ForPhases((need, facet), static (phases, of) => Judge(of.need, of.facet, AmpsThere.Of(of.facet.LockedRotor, of.need, phases, of.facet.LockedRotor.Connections.Taps)));

    private static Finding Judge(MotorNeed need, StartingCurrentFacet facet, AmpsThere amps)
    {
        if (CircuitDevice.Deciding(CircuitDevice.LockedRotor(need), amps) is not { } tightest) return AgainstOld(need, facet, amps);
        if (facet.Basis == StartingBasis.RampsUp) return Finding.Unknown(Side.Part, "lockedRotorAmps", $"An electronically commutated motor ramps up to its {amps.Most:0.##} A (practice); what it draws when it is switched on is not given, and the {tightest.Name} stands {tightest.Carries:0.#} A.");
        if (tightest.Takes(amps.Most)) return With(Finding.Meets(Sentence(facet, tightest, amps)), tightest, amps);
        if (tightest.NeverTakes(amps.Least)) return With(Finding.Fails(Sentence(facet, tightest, amps)), tightest, amps);
        var missing = !tightest.IsMarked ? tightest.Field : tightest.OthersAreMarked ? amps.Missing : "otherLockedRotorAmps";
        return Finding.Unknown(Side.Site, missing, $"It starts with {new DeviceLoad(tightest, amps.Most)}, {How(facet.Basis)}: that may be more than the {tightest.Name} stands, {tightest.Carries:0.#} A{(tightest.IsMarked ? string.Empty : ", taken as 6 times its full-load amps")}.") with { Shortfall = 1 };
    }

    private static Finding AgainstOld(MotorNeed need, StartingCurrentFacet facet, AmpsThere amps)
    {
        if (facet.Basis == StartingBasis.RampsUp) return Finding.Meets($"An electronically commutated motor ramps up: it starts at about its {amps.Most:0.##} A of full load (practice).");
        if (facet.Basis != StartingBasis.Marked || OldAmps.Of(need.Once(static need => OldTaken.Of(need, need.OnceOfPlate(MotorAmps.LockedRotor))), need, facet.LockedRotor.Connections.Taps, amps) is not { } old)
        {
            return Finding.Meets($"It starts with {amps.Most:0.##} A, {How(facet.Basis)}. No rating of the contact is given: its running amps are judged instead.");
        }

        Change[] changes = Within.AtMost(amps.Most, old.Amps * Tolerance) ? [] : [new(CircuitChanges.CheckStart, $"see that contact and fuse stand {amps.Most:0.##} A at the start; the old motor took {old}")];
        return Finding.MeetsWith(changes, $"It starts with {amps.Most:0.##} A, and the old motor took {old}; up to 20 % more is within the tolerance of such amps.") with
        {
            Shortfall = Math.Clamp(((amps.Most / old.Amps) - 1) / (Tolerance - 1), 0, 1),
            Margin = new((old.Amps * Tolerance) - amps.Most, "A"),
        };
    }

    private static Finding With(Finding finding, CircuitDevice device, AmpsThere amps) =>
        finding with { Shortfall = device.Shortfall(amps.Most), Margin = new(device.Carries - device.Others - amps.Most, "A") };

    private static Reason Sentence(StartingCurrentFacet facet, CircuitDevice device, AmpsThere amps) =>
        $"It starts with {new DeviceLoad(device, amps.Most)}, {How(facet.Basis)}; the {device.Name} stands {device.Carries:0.#} A{(device.IsMarked ? string.Empty : ", taken as 6 times its full-load amps")}.";

    private static string How(StartingBasis basis) => basis switch
    {
        StartingBasis.Marked => "as marked",
        StartingBasis.CodeLetter => "at most, by its code letter",
        _ => "taken as 6 times full load",
    };

    private static Spread<ElectricCurrent>? ByCodeLetter(MotorSpec part, Rating row) =>
        part is { CodeLetter: { } letter, PowerMeaning: PowerMeaning.Output, Phase: { } phases } && row is { Power: { } power, Volts: { } volts }
        && LockedRotorCodes.Find(letter)?.Amps((double)power.ElectricalHorsepower, VoltTap.Of(volts).Low, phases).Below is { } below
            ? new(ElectricCurrent.FromAmperes(below)) : null;

    private static Spread<ElectricCurrent>? SixTimes(Rating row) =>
        row.FullLoadAmps is { } amps ? new(amps.First * CircuitDevice.LockedRotorTimes, amps.Last * CircuitDevice.LockedRotorTimes) : null;
}
