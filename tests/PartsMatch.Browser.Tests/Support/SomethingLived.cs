using System.Globalization;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Browser.Tests.Support;

/// <summary>What a service has that was in use for a while: weights that were trained, of one kind, and a record of how it went. All figures are invented.</summary>
internal static class SomethingLived
{
    /// <summary>The kind whose weights are trained ones.</summary>
    public const string TrainedKind = "contactor";

    /// <summary>The id of the record.</summary>
    public const string Outcome = "roof-7";

    /// <summary>Weights as a training leaves them, with one bin further off than chance makes it.</summary>
    public static void WriteWeights(TestFolder data)
    {
        Directory.CreateDirectory(Path.Combine(data.Path, "weights"));
        var points = Enumerable.Range(0, 10).Select(bin => string.Create(CultureInfo.InvariantCulture, $"{{ \"told\": {0.55 + (0.045 * bin):0.###}, \"happened\": {0.53 + (0.045 * bin) + (bin == 3 ? -0.12 : bin % 2 * 0.03):0.###}, \"outcomes\": 180 }}"));
        data.Write(Path.Combine("weights", $"{TrainedKind}.json"), $$"""
            {
              "version": 2, "kind": "{{TrainedKind}}", "origin": "trained", "madeOn": "2026-03-14", "intercept": 3.2,
              "records": { "NO-LONGER-THERE": 0.4 },
              "training": {
                "outcomes": 1800, "from": "2024-02-01", "to": "2026-03-10",
                "figures": { "logLossRescaled": 0.412, "logLossTrained": 0.397, "gain": 0.015, "standardError": 0.004, "auc": 0.713, "calibrationError": 0.028, "calibrationFloor": 0.025 },
                "calibration": [{{string.Join(", ", points)}}]
              }
            }
            """);
    }

    /// <summary>Records how it went.</summary>
    public static async Task RecordAsync(Uri service, string key)
    {
        using var client = new HttpClient { BaseAddress = service };
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", key);
        var query = $$"""
            mutation { recordOutcome(outcome: { id: "{{Outcome}}", on: "2026-01-12", place: "cold store 4", need: { motor: { plateText: "HP 1/4 RPM 1075 V 208-230", site: { volts: "202 V" } } },
              partNumber: "{{Job.FittingPart}}", result: CAME_BACK, reason: DID_NOT_DO_THE_JOB, note: "ran hot after a week, and was taken out again" }) { id } }
            """;
        using var answer = await client.PostAsJsonAsync("/graphql", new { query });
        (await answer.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("data").GetProperty("recordOutcome").GetProperty("id").GetString().ShouldBe(Outcome);
    }
}
