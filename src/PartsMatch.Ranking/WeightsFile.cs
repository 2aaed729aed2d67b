using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>Weights as a text to keep and to edit: JSON, described in docs/weights.md.</summary>
public static class WeightsFile
{
    /// <summary>The form's version. Version 1 had a single shortfall an aspect, no pairs, records or training, and is read as well.</summary>
    public const int Version = 2;

    /// <summary>The texts for the origins.</summary>
    internal static readonly IReadOnlyDictionary<string, WeightsOrigin> Origins = new Dictionary<string, WeightsOrigin> { ["hand-set"] = WeightsOrigin.HandSet, ["rescaled"] = WeightsOrigin.Rescaled, ["trained"] = WeightsOrigin.Trained };

    /// <summary>A figure that older files say by that trained weights were only rescaled: 0.</summary>
    internal const string IsTrained = "isTrained";

    /// <summary>Names are written as they are: the file is no part of a page.</summary>
    private static readonly JsonWriterOptions Indented = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes all weights, those that are defaults included.</summary>
    public static string Write(Weights weights)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Indented))
        {
            json.WriteStartObject();
            json.WriteNumber("version", Version);
            json.WriteString("kind", weights.Kind);
            json.WriteString("origin", Origins.Single(pair => pair.Value == weights.Origin).Key);
            if (weights.MadeOn is { } day) json.WriteString("madeOn", day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
            json.WriteNumber("intercept", weights.Intercept);
            json.WriteStartObject("aspects");
            foreach (var (name, weight) in weights.Aspects)
            {
                json.WriteStartObject(name);
                json.WriteStartArray("shortfall");
                foreach (var height in weight.Shortfall.Heights) json.WriteNumberValue(height);
                json.WriteEndArray();
                json.WriteNumber("effort", weight.Effort);
                json.WriteNumber("unknown", weight.Unknown);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            WriteNumbers(json, "pairs", weights.Pairs.Where(pair => pair.Cost > 0).Select(pair => KeyValuePair.Create(pair.Pair.Name, pair.Cost)));
            WriteNumbers(json, "records", weights.Records.OrderBy(record => record.Key, StringComparer.Ordinal));
            if (weights.Training is { } training) Write(json, training);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray()) + "\n";
    }

    private static void Write(Utf8JsonWriter json, Training training)
    {
        json.WriteStartObject("training");
        json.WriteNumber("outcomes", training.Outcomes);
        if (training.Invented is { } invented) json.WriteNumber("invented", invented);
        json.WriteString("from", training.From.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        json.WriteString("to", training.To.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        WriteNumbers(json, "figures", training.Figures);
        if (training.Calibration.Count > 0) Write(json, training.Calibration);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, IReadOnlyList<CalibrationPoint> calibration)
    {
        json.WriteStartArray("calibration");
        foreach (var point in calibration)
        {
            json.WriteStartObject();
            json.WriteNumber("told", point.Told);
            json.WriteNumber("happened", point.Happened);
            json.WriteNumber("outcomes", point.Outcomes);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNumbers(Utf8JsonWriter json, string name, IEnumerable<KeyValuePair<string, double>> numbers)
    {
        json.WriteStartObject(name);
        foreach (var (key, number) in numbers) json.WriteNumber(key, number);
        json.WriteEndObject();
    }

    /// <summary>Reads weights for a family; never throws.</summary>
    /// <param name="text">The text.</param>
    /// <param name="family">The family.</param>
    /// <param name="numberInRanking">How the catalogue that they rank has a part's number, which people may write with dashes and spaces; null where it has it as the text does. Of two records of one number the greater counts.</param>
    /// <returns>The weights, or null with everything that is wrong: a text is taken whole or not at all.</returns>
    public static (Weights? Weights, IReadOnlyList<Complaint> Complaints) Read(string text, Family family, Func<string, string>? numberInRanking = null)
    {
        if (string.IsNullOrWhiteSpace(text)) return (null, [new(ComplaintCode.Empty, "", text, "The weights file is empty; docs/weights.md shows one.")]);
        try
        {
            using var json = JsonDocument.Parse(Encoding.UTF8.GetBytes(text));
            return new WeightsReader(family, numberInRanking ?? (number => number)).Read(json.RootElement);
        }
        catch (JsonException broken)
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"line {broken.LineNumber + 1}, byte {broken.BytePositionInLine + 1}");
            return (null, [new(ComplaintCode.Unreadable, "", "", $"The weights file is not JSON: it cannot be read from {place} on.")]);
        }
    }
}
