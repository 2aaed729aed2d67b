using System.Buffers;
using System.Collections.Concurrent;
using System.Reflection;

namespace PartsMatch.Fit.Quantities;

/// <summary>The words on an enum's members, by the members' numbers.</summary>
/// <remarks>It knows nothing of the enum's type: what does, the runtime compiles anew for each of the many enums, and a start waits for it.</remarks>
internal sealed class ChoiceWords
{
    private static readonly ConcurrentDictionary<Type, ChoiceWords> Known = [];

    /// <summary>Those that nearly all words are made of.</summary>
    private static readonly SearchValues<char> LettersAndDigits = SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789");

    private readonly int[] numbers;
    private readonly string[] written;
    private readonly Dictionary<string, int> byWord = new(StringComparer.Ordinal);

    private ChoiceWords(Type type)
    {
        var names = Enum.GetNames(type);
        (numbers, written) = (new int[names.Length], new string[names.Length]);
        var all = new List<string>();
        for (var at = 0; at < names.Length; at++)
        {
            var words = type.GetField(names[at])!.GetCustomAttribute<WordsAttribute>() ?? throw new InvalidOperationException($"{type.Name}.{names[at]} has no words.");
            (numbers[at], written[at]) = ((int)Enum.Parse(type, names[at]), words.Written);
            foreach (var word in words.Also.Prepend(words.Written))
            {
                all.Add(word);
                if (!byWord.TryAdd(Plain(word), numbers[at]) && byWord[Plain(word)] != numbers[at]) throw new InvalidOperationException($"“{word}” is two choices of {type.Name}.");
            }
        }

        (All, Expected) = (all, $"one of: {string.Join(", ", written)}");
    }

    /// <summary>What a right text is.</summary>
    public string Expected { get; }

    /// <summary>How each member is written.</summary>
    public IReadOnlyList<string> Written => written;

    /// <summary>Every word of every member.</summary>
    public IReadOnlyList<string> All { get; }

    /// <summary>The words of an enum.</summary>
    /// <exception cref="InvalidOperationException">A member has no words, or one word is two members.</exception>
    public static ChoiceWords Of(Type type) => Known.GetOrAdd(type, one => new(one));

    /// <summary>The number of the member that a text is a word for; null when it is none.</summary>
    public int? Find(string text) => byWord.TryGetValue(Plain(text), out var number) ? number : null;

    /// <summary>How a member is written.</summary>
    public string WrittenOf(int number) => written[Array.IndexOf(numbers, number)];

    /// <summary>Why a text is no member.</summary>
    public string Wrong(string text) => string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}";

    /// <summary>Case, spaces, dashes and dots do not tell words apart.</summary>
    private static string Plain(string text) =>
        (text.AsSpan().ContainsAnyExcept(LettersAndDigits) ? string.Concat(text.Where(char.IsLetterOrDigit)) : text).ToUpperInvariant();
}
