using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Physics;

/// <summary>A refrigerant by its designation or common name. One that is not known is refused: a neighbour's pressures would be wrong.</summary>
internal sealed class RefrigerantForm : TextForm<Refrigerant>
{
    /// <inheritdoc/>
    public override string Expected => $"one of: {string.Join(", ", Choices)}";

    /// <inheritdoc/>
    public override string Example => "R-404A";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Choices => [.. Refrigerants.All.Select(one => one.Name)];

    /// <summary>Plates print the R; a bare 22 or 410A may be anything there.</summary>
    public override IReadOnlyList<string> Words =>
        [.. Refrigerants.All.SelectMany(one => one.AlsoCalled.Prepend(one.Name.Replace("-", string.Empty, StringComparison.Ordinal)).Prepend(one.Name))];

    /// <inheritdoc/>
    public override TextReading<Refrigerant> Read(string text) =>
        Refrigerants.Find(text) is { } found ? TextReading<Refrigerant>.Of(found)
        : TextReading<Refrigerant>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");

    /// <inheritdoc/>
    public override string Write(Refrigerant value, Units units = Units.AsGiven) => value.Name;
}
