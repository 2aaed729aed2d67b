using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Counter;

/// <summary>Every family's weights, from a file each. A file that is not there yet is written from the hand-set ones, so that there is something to look at and to edit.</summary>
internal sealed class FamilyWeights(DataFolder data)
{
    private readonly Dictionary<Family, Weights> _weights = Families.All.ToDictionary(family => family, family => Read(family, data.Weights));

    public Weights this[Family family] => _weights[family];

    /// <exception cref="StartRefusedException">A file cannot be read as weights, or not at all.</exception>
    private static Weights Read(Family family, string folder)
    {
        var path = Path.Combine(folder, $"{family.Kind}.json");
        try
        {
            if (!File.Exists(path))
            {
                Directory.CreateDirectory(folder);
                File.WriteAllText(path, WeightsFile.Write(Weights.HandSet(family)));
            }

            var (weights, complaints) = WeightsFile.Read(File.ReadAllText(path), family);
            return weights ?? throw Refused(path, string.Join(Environment.NewLine, complaints.Select(complaint => complaint.Message)));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            throw Refused(path, "It cannot be read or written by this user.", failed);
        }
    }

    private static StartRefusedException Refused(string path, string why, Exception? cause = null) =>
        new(ExitCode.WeightsRefused, $"The weights in {path} cannot be used. {why} Mend the file, or remove it and start again.", cause);
}
