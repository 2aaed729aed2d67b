using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Published designations as text: letters and figures, whatever stands between them.</summary>
/// <typeparam name="T">What stands for one.</typeparam>
/// <param name="all">The designations.</param>
/// <param name="example">One of them.</param>
/// <param name="of">What stands for one of them.</param>
/// <param name="write">The designation that it stands for.</param>
internal sealed class DesignationForm<T>(IReadOnlyList<string> all, string example, Func<string, T> of, Func<T, string> write) : TextForm<T>
    where T : notnull
{
    public override string Expected => $"one of: {string.Join(", ", all)}";

    public override string Example => example;

    public override IReadOnlyList<string> Choices => all;

    public override IReadOnlyList<string> Words => all;

    public override TextReading<T> Read(string text)
    {
        var plain = string.Concat(text.Where(char.IsLetterOrDigit)).ToUpperInvariant();
        return all.Contains(plain) ? TextReading<T>.Of(of(plain))
            : TextReading<T>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
    }

    public override string Write(T value, Units units = Units.AsGiven) => write(value);
}
