using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What follows from a motor's readings.</summary>
public static class MotorDeductions
{
    /// <summary>What follows for the motor.</summary>
    public static (MotorSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(MotorSpec spec) => (spec, []);

    /// <summary>What follows for the site from the old motor.</summary>
    public static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site) => (site, []);
}
