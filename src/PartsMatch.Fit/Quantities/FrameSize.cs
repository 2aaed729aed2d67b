namespace PartsMatch.Fit.Quantities;

/// <summary>Whose frame numbers they are.</summary>
public enum FrameSystem
{
    /// <summary>NEMA MG 1: sixteenths or quarters of an inch of shaft height.</summary>
    Nema,

    /// <summary>IEC 60072-1: millimetres of shaft height.</summary>
    Iec,
}

/// <summary>A frame designation: 48Y, 56C, 143TC, IEC 71, IEC 90S.</summary>
/// <param name="System">Whose numbers.</param>
/// <param name="Number">The number: 42 to 9999 (NEMA) or the shaft height in mm, 40 to 450 (IEC).</param>
/// <param name="Suffix">The letters behind it, upper case; empty when there are none.</param>
/// <remarks>NEMA MG 1 4.2: suffix Y is a special mounting and Z a special shaft: the number then promises only the shaft height. C is a face with tapped holes; H a longer foot; T the 1964 series.</remarks>
public sealed record FrameSize(FrameSystem System, int Number, string Suffix) : IHaveTextForm<FrameSize>
{
    private static readonly HashSet<int> FractionalHorsepower = [42, 48, 56];
    private static readonly HashSet<int> IecOnly = [63, 71, 80, 90, 100, 112, 132, 160];

    /// <inheritdoc/>
    public static TextForm<FrameSize> Form { get; } = new FrameSizeForm();

    /// <summary>Whether the frame's standard shaft and mounting hold: false with Y or Z behind the number.</summary>
    public bool PromisesDimensions => !Suffix.Contains('Y', StringComparison.Ordinal) && !Suffix.Contains('Z', StringComparison.Ordinal);

    private sealed class FrameSizeForm : TextForm<FrameSize>
    {
        public override string Expected => "a frame, such as 48Y, 56C, 143T or IEC 71";

        public override string Example => "48Y";

        public override bool MayBeginWithLetter => true;

        public override TextReading<FrameSize> Read(string text)
        {
            var refused = TextReading<FrameSize>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
            var given = text.Trim().ToUpperInvariant();
            var iec = given.StartsWith("IEC", StringComparison.Ordinal);
            if (iec) given = given[3..].Trim(' ', '-');
            else if (given.StartsWith("NEMA", StringComparison.Ordinal)) given = given[4..].Trim(' ', '-');

            // A letter before the number of a small motor is the maker's own and promises nothing (MG 1 gives it no meaning): S56C. Before 43T it would sooner be a 1.
            var isPrefixed = !iec && given.Length > 2 && char.IsAsciiLetterUpper(given[0]) && char.IsAsciiDigit(given[1]);
            if (isPrefixed) given = given[1..];
            var digits = given.TakeWhile(char.IsAsciiDigit).Count();
            var suffix = given[digits..].Trim();
            if (digits is < 2 or > 4 || suffix.Length > 4 || !suffix.All(char.IsAsciiLetterUpper)) return refused;
            var number = int.Parse(given[..digits], global::System.Globalization.CultureInfo.InvariantCulture);
            if (isPrefixed && !FractionalHorsepower.Contains(number)) return refused;
            var system = iec || (IecOnly.Contains(number) && suffix is "" or "S" or "M" or "L") ? FrameSystem.Iec : FrameSystem.Nema;
            if (system == FrameSystem.Iec ? number is < 40 or > 450 : number < 42) return refused;
            return TextReading<FrameSize>.Of(new(system, number, suffix));
        }

        public override string Write(FrameSize value, Units units = Units.AsGiven) =>
            FormattableString.Invariant($"{(value.System == FrameSystem.Iec ? "IEC " : string.Empty)}{value.Number}{value.Suffix}");
    }
}
