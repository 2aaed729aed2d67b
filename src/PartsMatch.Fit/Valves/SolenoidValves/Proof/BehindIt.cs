namespace PartsMatch.Fit.Valves.SolenoidValves.Proof;

/// <summary>How warm a pipe is behind a valve, against before it; formed only when it is shown.</summary>
/// <param name="Colder">How much colder, K; negative where it is warmer.</param>
internal readonly record struct BehindIt(double Colder)
{
    /// <summary>Fewer are none as they are shown, K.</summary>
    private const double None = 0.05 / 1.8;

    /// <inheritdoc/>
    public override string ToString() => Math.Abs(Colder) < None
        ? "as warm behind it as before it"
        : FormattableString.Invariant($"{Math.Abs(Colder) * 1.8:0.#} °F ({Math.Abs(Colder):0.#} K) {(Colder > 0 ? "colder" : "warmer")} behind it");
}
