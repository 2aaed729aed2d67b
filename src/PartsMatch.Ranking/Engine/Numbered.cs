namespace PartsMatch.Ranking.Engine;

/// <summary>Distinct values, each with a number from 0 on: it only grows, so that every snapshot that shares it may read while a new one adds.</summary>
/// <typeparam name="T">What is numbered: the facets of an aspect, the numbers of parts.</typeparam>
/// <param name="comparer">Which values are the same.</param>
internal sealed class Numbered<T>(IEqualityComparer<T> comparer)
    where T : class
{
    private readonly Dictionary<T, int> numbers = new(comparer);
    private T[] values = new T[16];

    /// <summary>How many distinct values there are.</summary>
    public int Count
    {
        get
        {
            lock (numbers) return numbers.Count;
        }
    }

    /// <summary>The value of a number that was given before.</summary>
    public T this[int number] => Volatile.Read(ref values)[number];

    /// <summary>The number of a value; a new one gets the next.</summary>
    public int Add(T value)
    {
        lock (numbers)
        {
            if (numbers.TryGetValue(value, out var known)) return known;
            var number = numbers.Count;
            if (number == values.Length)
            {
                var grown = new T[2 * number];
                values.CopyTo(grown, 0);
                Volatile.Write(ref values, grown);
            }

            values[number] = value;
            numbers.Add(value, number);
            return number;
        }
    }

    /// <summary>The number of a value; null when it has none.</summary>
    public int? Find(T value)
    {
        lock (numbers) return numbers.TryGetValue(value, out var number) ? number : null;
    }
}
