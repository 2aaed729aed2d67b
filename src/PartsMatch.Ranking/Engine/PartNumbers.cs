namespace PartsMatch.Ranking.Engine;

/// <summary>The index of every part number: it only grows, so that every snapshot that shares it may read while a new one adds.</summary>
internal sealed class PartNumbers
{
    private readonly Dictionary<string, int> indexes = new(StringComparer.Ordinal);
    private string[] numbers = new string[16];

    /// <summary>The number of an index that was given before.</summary>
    public string this[int part] => Volatile.Read(ref numbers)[part];

    /// <summary>The index of a number; a new one gets the next.</summary>
    public int IndexOf(string number)
    {
        lock (indexes)
        {
            if (indexes.TryGetValue(number, out var known)) return known;
            var index = indexes.Count;
            if (index == numbers.Length)
            {
                var grown = new string[2 * index];
                numbers.CopyTo(grown, 0);
                Volatile.Write(ref numbers, grown);
            }

            numbers[index] = number;
            indexes.Add(number, index);
            return index;
        }
    }

    /// <summary>The index of a number, letter for letter; null when it has none.</summary>
    public int? Find(string number)
    {
        lock (indexes) return indexes.TryGetValue(number, out var index) ? index : null;
    }
}
