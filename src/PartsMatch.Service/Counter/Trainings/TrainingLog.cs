using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Counter.Trainings;

/// <summary>The last trainings of every family, newest first, in a file each beside the weights.</summary>
internal sealed class TrainingLog
{
    /// <summary>So many are kept.</summary>
    public const int Most = 20;

    private static readonly JsonSerializerOptions Written = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase) },
    };

    private readonly string _folder;
    private readonly Lock _adding = new();
    private volatile ImmutableDictionary<Family, ImmutableList<TrainingEntry>> _entries;

    /// <exception cref="StartRefusedException">A file cannot be read as a log, or not at all.</exception>
    public TrainingLog(DataFolder data)
    {
        _folder = data.Weights;
        _entries = Families.All.ToImmutableDictionary(family => family, Read);
    }

    public IReadOnlyList<TrainingEntry> this[Family family] => _entries[family];

    /// <summary>Writes one down. Where the disk does not take it, it is known until the service stops.</summary>
    public void Add(Family family, TrainingEntry entry)
    {
        lock (_adding)
        {
            _entries = _entries.SetItem(family, [.. _entries[family].Prepend(entry).Take(Most)]);
            try
            {
                WholeText.Write(PathOf(family), JsonSerializer.Serialize(_entries[family], Written) + "\n");
            }
            catch (Exception failed) when (WholeText.IsOfTheDisk(failed))
            {
                // The log tells of weights, and decides nothing: that it could not be kept undoes no training.
            }
        }
    }

    private ImmutableList<TrainingEntry> Read(Family family)
    {
        try
        {
            if (!File.Exists(PathOf(family))) return [];
            var entries = JsonSerializer.Deserialize<List<TrainingEntry?>>(File.ReadAllText(PathOf(family)), Written);
            return [.. (entries ?? throw new JsonException("No list.")).Select(entry => entry ?? throw new JsonException("No entry."))];
        }
        catch (Exception failed) when (failed is JsonException || WholeText.IsOfTheDisk(failed))
        {
            throw new StartRefusedException(ExitCode.WeightsRefused, $"The log of trainings in {PathOf(family)} cannot be read. Mend the file, or remove it and start again: no weight hangs on it.", failed);
        }
    }

    private string PathOf(Family family) => Path.Combine(_folder, $"{family.Kind}.trainings.json");
}
