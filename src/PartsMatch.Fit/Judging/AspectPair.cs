namespace PartsMatch.Fit.Judging;

/// <summary>Two aspects that may be worse together than each by itself: a motor near its load on a low tap. By hand they cost nothing more; outcomes may say otherwise.</summary>
/// <param name="One">The first aspect's name.</param>
/// <param name="Other">The second aspect's name.</param>
/// <param name="Why">Why they belong together, as a clause.</param>
public sealed record AspectPair(string One, string Other, string Why)
{
    /// <summary>Its name at every edge: both aspects', with a plus between.</summary>
    public string Name => $"{One}+{Other}";
}
