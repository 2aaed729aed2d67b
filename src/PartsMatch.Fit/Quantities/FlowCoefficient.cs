namespace PartsMatch.Fit.Quantities;

/// <summary>What a valve passes: Kv, m³/h of water at a drop of 1 bar, or Cv, US gallons a minute at 1 psi (IEC 60534-1, ISA-75.01.01).</summary>
/// <param name="Number">The number, as it was given; above 0.</param>
/// <param name="IsCv">Whether it is a Cv.</param>
public readonly record struct FlowCoefficient(double Number, bool IsCv) : IHaveTextForm<FlowCoefficient>
{
    /// <summary>Cv of a Kv of 1 (IEC 60534-2-1; from the definitions of gallon and psi).</summary>
    public const double CvPerKv = 1.1560992;

    /// <inheritdoc/>
    public static TextForm<FlowCoefficient> Form { get; } = new FlowCoefficientForm();

    /// <summary>The same as Kv, m³/h: Cv ÷ 1.1560992 (IEC 60534-2-1).</summary>
    public double Kv => IsCv ? Number / CvPerKv : Number;

    private sealed class FlowCoefficientForm : TextForm<FlowCoefficient>
    {
        private const double Least = 0.001;
        private const double Most = 1000;
        private const int Digits = 4;

        private static readonly string[] Kvs = ["Kv", "Kvs", "m³/h", "m3/h"];
        private static readonly string[] Cvs = ["Cv"];

        public override string Expected => "a flow coefficient, such as 1.2 Cv or 1 Kv";

        public override string Example => "1.2 Cv";

        public override IReadOnlyList<string> UnitSpellings => [.. Kvs, .. Cvs];

        /// <summary>The sign may stand on either side of the number: Cv 1.2.</summary>
        public override TextReading<FlowCoefficient> Read(string text)
        {
            var rest = PlainSigns.In(text).AsSpan().Trim();
            var before = Sign(rest, atFront: true);
            var number = before is null ? rest : rest[before.Length..].Trim();
            if (!TradeNumber.TryRead(number, fractions: false, signed: false, out var read, out var length)) return Refused(text);
            var behind = number[length..].Trim();
            var sign = before ?? Sign(behind, atFront: false);
            if (sign is null || (before is not null && !behind.IsEmpty)) return Refused(text);
            return read.Double is >= Least and <= Most
                ? TextReading<FlowCoefficient>.Of(new(read.Double, Cvs.Contains(sign, StringComparer.OrdinalIgnoreCase)))
                : TextReading<FlowCoefficient>.Refused(FormattableString.Invariant($"“{text.Trim()}” is outside {Least} to {Most}"));
        }

        public override string Write(FlowCoefficient value, Units units = Units.AsGiven)
        {
            var figure = Converted(value, units);
            return $"{TradeNumber.Write(figure.Value)} {figure.Unit}";
        }

        public override Figure? FigureOf(object value, Units units) => Converted((FlowCoefficient)value, units);

        private static Figure Converted(FlowCoefficient value, Units units) => (units, value.IsCv) switch
        {
            (Units.Us, false) => new(Math.Round(value.Kv * CvPerKv, Digits), "Cv"),
            (Units.Si, true) => new(Math.Round(value.Kv, Digits), "Kv"),
            (_, true) => new(value.Number, "Cv"),
            _ => new(value.Number, "Kv"),
        };

        private static string? Sign(ReadOnlySpan<char> text, bool atFront)
        {
            foreach (var sign in (string[])["Kvs", "Kv", "m³/h", "m3/h", "Cv"])
            {
                if (atFront ? text.StartsWith(sign, StringComparison.OrdinalIgnoreCase) : text.Equals(sign, StringComparison.OrdinalIgnoreCase)) return sign;
            }

            return null;
        }

        private TextReading<FlowCoefficient> Refused(string text) =>
            TextReading<FlowCoefficient>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
    }
}
