using System.Collections;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>A terminal of a timer.</summary>
/// <param name="Function">What it is there for.</param>
/// <param name="Mark">What stands beside it, in capitals: 4, X.</param>
public readonly record struct MarkedTerminal(TerminalFunction Function, string Mark);

/// <summary>Which terminal is there for what: common 2, heater 3, fans 4. Equal when the same marks stand for the same functions, in any order.</summary>
public sealed class TerminalMap : IReadOnlyList<MarkedTerminal>, IEquatable<TerminalMap>, IHaveTextForm<TerminalMap>
{
    private readonly MarkedTerminal[] all;

    /// <summary>Keeps the terminals in the order of their functions; none has two.</summary>
    public TerminalMap(params IEnumerable<MarkedTerminal> terminals) => all = [.. terminals.OrderBy(one => one.Function)];

    /// <inheritdoc/>
    public static TextForm<TerminalMap> Form { get; } = new TerminalMapForm();

    /// <inheritdoc/>
    public int Count => all.Length;

    /// <inheritdoc/>
    public MarkedTerminal this[int index] => all[index];

    /// <inheritdoc/>
    public bool Equals(TerminalMap? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as TerminalMap);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var one in all) hash.Add(one);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<MarkedTerminal> GetEnumerator() => ((IEnumerable<MarkedTerminal>)all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private sealed class TerminalMapForm : TextForm<TerminalMap>
    {
        private const int LongestMark = 4;

        private static readonly EnumForm<TerminalFunction> Functions = new();

        public override string Expected => $"functions ({string.Join(", ", Functions.Choices)}) with their terminals and commas between, such as {Example}";

        public override string Example => "common 2, clock 1, heater 3, fans 4";

        public override TextReading<TerminalMap> Read(string text)
        {
            var terminals = new List<MarkedTerminal>();
            foreach (var one in PlainSigns.In(text).Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            {
                var space = one.LastIndexOf(' ');
                var function = Functions.Read(space < 0 ? string.Empty : one[..space]);
                var mark = one[(space + 1)..].ToUpperInvariant();
                if (!function.IsRead || mark.Length > LongestMark || !mark.All(char.IsAsciiLetterOrDigit)) return TextReading<TerminalMap>.Refused($"“{one}” is no function with its terminal; write {Expected}");
                if (terminals.Exists(other => other.Function == function.Value)) return TextReading<TerminalMap>.Refused($"{Functions.Write(function.Value)} is given twice");
                terminals.Add(new(function.Value, mark));
            }

            return terminals.Count > 0 ? TextReading<TerminalMap>.Of(new(terminals)) : TextReading<TerminalMap>.Refused("nothing is written");
        }

        public override string Write(TerminalMap value, Units units = Units.AsGiven) => string.Join(", ", value.Select(one => $"{Functions.Write(one.Function)} {one.Mark}"));
    }
}
