using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>One known machine.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Order">Its place among all: a hash of the number.</param>
/// <param name="Known">What is known of it, with deductions: read when it is asked for, where its codes are known without.</param>
/// <param name="Codes">A code for every field of plate and site, as <see cref="FieldCodes"/> gives them.</param>
internal sealed record Machine(string Number, ulong Order, Lazy<Spec> Known, int[] Codes)
{
    /// <summary>What is known of it, with deductions.</summary>
    public Spec Spec => Known.Value;
}

/// <summary>A known machine beside a need.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Spec">What is known of it, with deductions.</param>
/// <param name="Weight">How much it counts, 1 to 1000: what is nearest to the need counts in full.</param>
public sealed record NearMachine(string Number, Spec Spec, int Weight);
