using System.Globalization;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Motors that are alike.</summary>
/// <param name="FullLoad">Full-load amps of one; above 0.</param>
/// <param name="LockedRotor">Locked-rotor amps of one; null where its plate does not say.</param>
/// <param name="Count">How many there are.</param>
public readonly record struct MotorLoad(double FullLoad, double? LockedRotor, int Count);

/// <summary>The motors on a contact: 14/73 + 2 x 1.4/7 A. Their amps add up, full-load and locked-rotor each by themselves. Equal when the same motors stand in the same order.</summary>
public sealed class MotorLoads : IHaveTextForm<MotorLoads>, IEquatable<MotorLoads>
{
    private readonly MotorLoad[] all;

    /// <summary>Keeps the motors in the order given.</summary>
    /// <exception cref="ArgumentException">There is none: an unknown is null.</exception>
    public MotorLoads(params IEnumerable<MotorLoad> motors)
    {
        all = [.. motors];
        if (all.Length == 0) throw new ArgumentException("At least one motor is needed.", nameof(motors));
    }

    /// <inheritdoc/>
    public static TextForm<MotorLoads> Form { get; } = new MotorLoadsForm();

    /// <summary>Full-load amps, added up.</summary>
    public double FullLoad => all.Sum(motor => motor.FullLoad * motor.Count);

    /// <summary>Full-load amps of the smallest of several; 0 where one figure stands for whatever is there.</summary>
    public double Least => all.Sum(motor => motor.Count) > 1 ? all.Min(motor => motor.FullLoad) : 0;

    /// <summary>Whether every motor's locked-rotor amps are given.</summary>
    public bool AreLockedRotorAmpsGiven => Array.TrueForAll(all, motor => motor.LockedRotor is not null);

    /// <summary>Locked-rotor amps, added up.</summary>
    /// <param name="times">What full-load amps are taken times where none are given.</param>
    public double LockedRotor(double times) => all.Sum(motor => (motor.LockedRotor ?? (motor.FullLoad * times)) * motor.Count);

    /// <inheritdoc/>
    public bool Equals(MotorLoads? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as MotorLoads);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var motor in all) hash.Add(motor);
        return hash.ToHashCode();
    }

    private sealed class MotorLoadsForm : TextForm<MotorLoads>
    {
        private const double MostAmps = 10_000;

        /// <summary>More motors than that are on no contact: the figure is a slip.</summary>
        private const int MostAlike = 99;

        public override string Expected => "full-load and locked-rotor amps of each motor, such as 14/73 + 2 x 1.4/7 A";

        public override string Example => "14/73 + 2 x 1.4/7 A";

        public override TextReading<MotorLoads> Read(string text)
        {
            var plain = PlainSigns.In(text).Trim();
            var motors = new List<MotorLoad>();
            foreach (var one in plain.Split('+'))
            {
                if (ReadOne(one.Trim()) is not { } motor) return TextReading<MotorLoads>.Refused(plain.Length == 0 ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
                if (motor.LockedRotor < motor.FullLoad) return TextReading<MotorLoads>.Refused($"“{text.Trim()}” has less amps with the rotor locked than at full load: full-load amps stand first");
                motors.Add(motor);
            }

            return TextReading<MotorLoads>.Of(new(motors));
        }

        public override string Write(MotorLoads value, Units units = Units.AsGiven) => $"{string.Join(" + ", value.all.Select(Written))} A";

        private static MotorLoad? ReadOne(string text)
        {
            var rest = text.EndsWith('A') || text.EndsWith('a') ? text[..^1].TrimEnd() : text;
            var (count, amps) = rest.Split(['x', 'X', '×', '*'], StringSplitOptions.TrimEntries) switch
            {
                [var only] => (1, only),
                [var times, var each] when int.TryParse(times, NumberStyles.None, CultureInfo.InvariantCulture, out var alike) && alike is > 0 and <= MostAlike => (alike, each),
                _ => (0, string.Empty),
            };
            var figures = amps.Split('/', StringSplitOptions.TrimEntries);
            if (count == 0 || figures.Length > 2 || Amps(figures[0]) is not { } full) return null;
            if (figures.Length == 1) return new(full, null, count);
            return Amps(figures[1]) is { } locked ? new(full, locked, count) : null;
        }

        private static double? Amps(string text) =>
            TradeNumber.TryRead(text, fractions: false, signed: false, out var number, out var length) && length == text.Length && number.Double is > 0 and <= MostAmps ? number.Double : null;

        private static string Written(MotorLoad motor) =>
            $"{(motor.Count > 1 ? $"{motor.Count.ToString(CultureInfo.InvariantCulture)} x " : string.Empty)}{TradeNumber.Write(motor.FullLoad)}{(motor.LockedRotor is { } locked ? $"/{TradeNumber.Write(locked)}" : string.Empty)}";
    }
}
