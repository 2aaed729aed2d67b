using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace PartsMatch.Learning;

/// <summary>Parts examples into what is learnt from and what is held out, so that outcomes of one place stand on one side: they have a supply, a roof and a technician in common, and would tell on each other.</summary>
public static class Folds
{
    /// <summary>The fold of a place, the same on every machine.</summary>
    /// <param name="place">The place.</param>
    /// <param name="folds">How many there are.</param>
    public static int Of(string place, int folds) => (int)(BinaryPrimitives.ReadUInt32LittleEndian(SHA256.HashData(Encoding.UTF8.GetBytes(place))) % (uint)folds);

    /// <summary>Of every fold what is learnt from and what is held out; folds in which either is empty are left out.</summary>
    public static IEnumerable<(IReadOnlyList<Example> Learnt, IReadOnlyList<Example> HeldOut)> Parted(IReadOnlyCollection<Example> examples, int folds)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        int[] foldOf = [.. examples.Select(example => FoldOf(PlaceOf(example)))];
        for (var fold = 0; fold < folds; fold++)
        {
            List<Example> heldOut = [.. examples.Where((_, at) => foldOf[at] == fold)];
            List<Example> learnt = [.. examples.Where((_, at) => foldOf[at] != fold)];
            if (heldOut.Count > 0 && learnt.Count > 0) yield return (learnt, heldOut);
        }

        // Where nobody said which place it was, nothing says that two were one: those of a day and a part are.
        static string PlaceOf(Example example) => example.Place.Length > 0 ? example.Place : FormattableString.Invariant($"{example.PartNumber} {example.On:O}");

        int FoldOf(string place) => places.TryGetValue(place, out var known) ? known : places[place] = Of(place, folds);
    }
}
