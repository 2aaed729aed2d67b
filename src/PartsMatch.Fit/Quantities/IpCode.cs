namespace PartsMatch.Fit.Quantities;

/// <summary>Degree of protection of an enclosure (IEC 60034-5): IP54.</summary>
/// <param name="Solids">First digit, 0 to 6.</param>
/// <param name="Water">Second digit, 0 to 8.</param>
public sealed record IpCode(int Solids, int Water) : IHaveTextForm<IpCode>
{
    /// <inheritdoc/>
    public static TextForm<IpCode> Form { get; } = new IpCodeForm();

    private sealed class IpCodeForm : TextForm<IpCode>
    {
        public override string Expected => "an IP code of two digits, such as IP54";

        public override string Example => "IP54";

        public override TextReading<IpCode> Read(string text)
        {
            var given = text.Trim();
            var digits = given.StartsWith("IP", StringComparison.OrdinalIgnoreCase) ? given[2..].Trim() : given;
            return digits.Length == 2 && digits[0] is >= '0' and <= '6' && digits[1] is >= '0' and <= '8'
                ? TextReading<IpCode>.Of(new(digits[0] - '0', digits[1] - '0'))
                : TextReading<IpCode>.Refused(given.Length == 0 ? "nothing is written" : $"“{given}” is not {Expected}");
        }

        public override string Write(IpCode value, Units units = Units.AsGiven) => FormattableString.Invariant($"IP{value.Solids}{value.Water}");
    }
}
