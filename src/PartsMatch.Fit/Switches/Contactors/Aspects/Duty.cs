using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the duty reads of a contactor: the kinds of load that it is marked for at all.</summary>
/// <param name="Compressors">Locked-rotor amps, or AC-8.</param>
/// <param name="MotorLoads">Full-load or locked-rotor amps, horsepower, or AC-3.</param>
/// <param name="Resistance">Resistive amps, or AC-1.</param>
/// <param name="Coils">Pilot duty.</param>
public readonly record struct DutyFacet(bool Compressors, bool MotorLoads, bool Resistance, bool Coils)
{
    /// <summary>Whether it is marked for anything.</summary>
    internal bool IsMarked => Compressors || MotorLoads || Resistance || Coils;

    /// <summary>What it is for a part.</summary>
    internal static DutyFacet Of(ContactorSpec part) => new(
        part.LockedRotorAmps is not null || part.AcEightAmps is not null,
        part.FullLoadAmps is not null || part.LockedRotorAmps is not null || part.AcThreeAmps is not null || part.SinglePhaseHorsepower is not null || part.ThreePhaseHorsepower is not null,
        part.ResistiveAmps is not null,
        part.PilotDuty is not null);
}

/// <summary>Is the contactor marked for the kind of load that is on it?</summary>
/// <remarks>
/// Categories are never crossed: of a contactor that is marked for resistance or coils alone it stays unknown whether it is for motors, as its full-load amps may only be missing; marked for AC-8 alone it stays so for other motors than hermetic compressors. Marked for motors, and neither with locked-rotor amps nor for AC-8, it stays unknown for a hermetic compressor.
/// Where nobody named what is on it, it is marked for the kinds that the old one was marked for.
/// </remarks>
public sealed class Duty() : Aspect<ContactorSpec, ContactorSite, DutyFacet>("Duty category", isDeciding: true, ContactorSources.Duty, new(0.3, 0.5, 0.8))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["acThreeAmps", "acEightAmps", "lockedRotorAmps"], ["loads"])
    {
        Besides = ["fullLoadAmps", "singlePhaseHorsepower", "threePhaseHorsepower", "resistiveAmps", "pilotDuty", "loadCurrent"],
    };

    /// <inheritdoc/>
    public override DutyFacet Read(ContactorSpec part) => DutyFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, DutyFacet facet)
    {
        var on = OnTheContact.Of(need);
        if (on.IsDirect) return Finding.Meets($"Direct current is on it, which DC amps answer for, and no category of alternating current.");
        if (on.Loads is null) return AsTheOldOne(DutyFacet.Of(need.Plate), facet);
        if (!facet.IsMarked) return Finding.Unknown(Side.Part, "fullLoadAmps", $"What it is marked to switch is not known.");
        if (!facet.MotorLoads && (on.Has(ContactLoad.Motor) == true || (on.HasCompressor && !facet.Compressors))) return Finding.Unknown(Side.Part, "fullLoadAmps", $"A motor is on it, AC-3 ({UtilizationCategories.UseOf("AC-3")}); what is given of it is for {(facet.Compressors ? "hermetic compressors" : facet.Resistance ? "resistance" : "coils")} alone, which does not stand in for that.");
        if (on.Has(ContactLoad.Compressor) == true && !facet.Compressors) return Finding.Unknown(Side.Part, "acEightAmps", $"A compressor is on it, AC-8 ({UtilizationCategories.UseOf("AC-8b")}); whether it is made for those is not known without locked-rotor or AC-8 amps.");
        if (on.Has(ContactLoad.Heater) == true && !facet.Resistance) return Finding.Unknown(Side.Part, "resistiveAmps", $"A heater is on it, AC-1 ({UtilizationCategories.UseOf("AC-1")}); its resistive amps are not known, and those of motors do not stand in for them.");
        return on.Has(ContactLoad.Coil) == true && !facet.Coils
            ? Finding.Unknown(Side.Part, "pilotDuty", $"A coil is on it, AC-15 ({UtilizationCategories.UseOf("AC-15")}); its pilot duty is not known.")
            : Finding.Meets($"It is marked for all that is on it.");
    }

    private static Finding AsTheOldOne(DutyFacet old, DutyFacet facet)
    {
        if (!old.IsMarked) return Finding.Unknown(Side.Site, "loads", $"What is on the contact, and what the old one was marked for, is not known.");
        if (!facet.IsMarked) return Finding.Unknown(Side.Part, "fullLoadAmps", $"What it is marked to switch is not known.");
        return (old.Compressors && !facet.Compressors) || (old.MotorLoads && !facet.MotorLoads) || (old.Resistance && !facet.Resistance) || (old.Coils && !facet.Coils)
            ? Finding.Unknown(Side.Site, "loads", $"The old one was marked for a kind of load that this one is not marked for; whether it is on the contact is not known.")
            : Finding.Meets($"It is marked for all kinds of load that the old one was.");
    }
}
