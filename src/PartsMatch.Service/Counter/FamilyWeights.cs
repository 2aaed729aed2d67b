using System.Collections.Immutable;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Counter;

/// <summary>
/// Every family's weights, from a file each, and those that they took the place of, from another. A file that is not there yet is written from the hand-set ones, so that there is something to look at and to edit.
/// </summary>
internal sealed class FamilyWeights
{
    private readonly string _folder;
    private readonly Lock _putting = new();
    private volatile ImmutableDictionary<Family, Weights> _now;

    /// <exception cref="StartRefusedException">A file cannot be read as weights, or not at all.</exception>
    public FamilyWeights(DataFolder data)
    {
        _folder = data.Weights;
        _now = Families.All.ToImmutableDictionary(family => family, ReadOrBegin);
    }

    /// <summary>All of them as they are at this moment. Take it once a request: others may be put in their place while it goes on.</summary>
    public ImmutableDictionary<Family, Weights> Now => _now;

    /// <summary>Whether there are weights to go back to.</summary>
    public bool HasPrevious(Family family) => File.Exists(PreviousOf(family));

    /// <summary>Puts weights in the place of a family's, which become the previous ones where they rank otherwise. Refused, nothing has changed.</summary>
    /// <param name="family">The family.</param>
    /// <param name="weights">The weights.</param>
    /// <param name="held">The weights that they were held against: where others rank by now, they are refused.</param>
    public Answer<Weights> Put(Family family, Weights weights, Weights held)
    {
        lock (_putting) return _now[family].Id == held.Id ? PutInPlace(family, weights, WeightsFile.Write(weights)) : new Refusal(Codes.ChangedSince, string.Empty, "Other weights were put in place meanwhile, which these were not held against: nothing was changed. Train again.");
    }

    /// <summary>Puts the previous weights back, and those that there are in their place: doing it twice changes nothing. Null when there are none to go back to.</summary>
    public Answer<Weights>? GoBack(Family family)
    {
        lock (_putting)
        {
            if (!HasPrevious(family)) return null;
            try
            {
                var text = File.ReadAllText(PreviousOf(family));
                var (weights, complaints) = WeightsFile.Read(text, family, Shelf.NumberInRanking);
                return weights is null
                    ? Answer<Weights>.Refused([.. complaints.Select(complaint => new Refusal(complaint.Code, complaint.Field, $"The weights from before cannot be used, and nothing was changed. {complaint.Message}"))])
                    : PutInPlace(family, weights, text);
            }
            catch (Exception failed) when (WholeText.IsOfTheDisk(failed))
            {
                return OfTheDisk();
            }
        }
    }

    /// <summary>Both files are whole at any moment: cut off between the two, the previous weights are those that there are.</summary>
    private Answer<Weights> PutInPlace(Family family, Weights weights, string text)
    {
        try
        {
            // The same weights made anew are nothing to go back from. Else the file as it stands, where there is one: someone may have edited it for the next start.
            var isOther = weights.Id != _now[family].Id;
            if (isOther) WholeText.Prepare(PreviousOf(family), File.Exists(CurrentOf(family)) ? File.ReadAllText(CurrentOf(family)) : WeightsFile.Write(_now[family]));
            WholeText.Prepare(CurrentOf(family), text);
            if (isOther) WholeText.Place(PreviousOf(family));
            WholeText.Place(CurrentOf(family));
            _now = _now.SetItem(family, weights);
            return weights;
        }
        catch (Exception failed) when (WholeText.IsOfTheDisk(failed))
        {
            return OfTheDisk();
        }
    }

    private static Refusal OfTheDisk() =>
        new(Codes.StoreFailed, string.Empty, "The files of the weights cannot be read or written: the disk is full, or the service's user may not. The weights are as they were.");

    private Weights ReadOrBegin(Family family)
    {
        var path = CurrentOf(family);
        try
        {
            if (!File.Exists(path))
            {
                Directory.CreateDirectory(_folder);
                WholeText.Write(path, WeightsFile.Write(Weights.HandSet(family)));
            }

            var (weights, complaints) = WeightsFile.Read(File.ReadAllText(path), family, Shelf.NumberInRanking);
            return weights ?? throw Refused(path, string.Join(Environment.NewLine, complaints.Select(complaint => complaint.Message)));
        }
        catch (Exception failed) when (WholeText.IsOfTheDisk(failed))
        {
            throw Refused(path, "It cannot be read or written by this user.", failed);
        }
    }

    private string CurrentOf(Family family) => Path.Combine(_folder, $"{family.Kind}.json");

    private string PreviousOf(Family family) => Path.Combine(_folder, $"{family.Kind}.previous.json");

    private static StartRefusedException Refused(string path, string why, Exception? cause = null) =>
        new(ExitCode.WeightsRefused, $"The weights in {path} cannot be used. {why} Mend the file, or remove it and start again.", cause);
}
