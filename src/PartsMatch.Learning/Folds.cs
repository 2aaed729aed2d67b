using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace PartsMatch.Learning;

/// <summary>Parts examples into what is learnt from and what is held out, so that outcomes of one place stand on one side: they have a supply, a roof and a technician in common, and would tell on each other.</summary>
public static class Folds
{
    /// <summary>A number from 0 for a text, the same on every machine.</summary>
    /// <param name="text">The text, a place's name for one.</param>
    /// <param name="count">How many numbers there are.</param>
    public static int Of(string text, int count) => (int)(Hash(text) % (uint)count);

    /// <summary>Of every fold what is learnt from and what is held out. Places are dealt out, those with most outcomes first and each to the fold that has least, so that folds are as alike as places let them be; where there are fewer places than folds, there are as many folds as places, and none where there is one place.</summary>
    /// <param name="examples">What happened.</param>
    /// <param name="folds">How many folds there are at most.</param>
    public static IEnumerable<(IReadOnlyList<Example> Learnt, IReadOnlyList<Example> HeldOut)> Parted(IReadOnlyCollection<Example> examples, int folds)
    {
        string[] places = [.. examples.Select(PlaceOf)];
        var dealt = Dealt(places, folds);
        int[] foldOf = [.. places.Select(place => dealt[place])];
        for (var fold = 0; fold < folds; fold++)
        {
            List<Example> heldOut = [.. examples.Where((_, at) => foldOf[at] == fold)];
            List<Example> learnt = [.. examples.Where((_, at) => foldOf[at] != fold)];
            if (heldOut.Count > 0 && learnt.Count > 0) yield return (learnt, heldOut);
        }
    }

    /// <summary>A place however it is typed. Where nobody said which place it was, nothing says that two were one: those of a day and a part are.</summary>
    private static string PlaceOf(Example example) => example.Place.Trim() is { Length: > 0 } place ? place.ToUpperInvariant() : FormattableString.Invariant($"{example.PartNumber} {example.On:O}");

    private static Dictionary<string, int> Dealt(IEnumerable<string> places, int folds)
    {
        var dealt = new Dictionary<string, int>(StringComparer.Ordinal);
        var held = new PriorityQueue<int, (int Outcomes, int Fold)>(Enumerable.Range(0, folds).Select(fold => (fold, (0, fold))));

        // Among places of a size a hash is as good as lots drawn, and draws the same everywhere.
        foreach (var (place, outcomes) in places.CountBy(place => place, StringComparer.Ordinal).OrderByDescending(place => place.Value).ThenBy(place => Hash(place.Key)).ThenBy(place => place.Key, StringComparer.Ordinal))
        {
            held.TryDequeue(out var fold, out var least);
            dealt[place] = fold;
            held.Enqueue(fold, (least.Outcomes + outcomes, fold));
        }

        return dealt;
    }

    private static uint Hash(string text) => BinaryPrimitives.ReadUInt32LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
