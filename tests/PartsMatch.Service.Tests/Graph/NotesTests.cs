using System.Text.Json;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

public sealed class NotesTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Asked = "fit notes{steps{stage words detail diagram change}} kit{what quantity} cautions{stage words}";

    private readonly TestService _service = shared.Service;

    [Fact]
    public async Task A_part_at_two_sites_has_two_sets_of_notes()
    {
        var answer = await _service.AskAsync($"{{a: {Sheet("QN-100", "volts:\"202 V\", hubBore:\"1/2 in\"")} b: {Sheet("QN-100", "volts:\"230 V\", hubBore:\"5/8 in\"")}}}");
        answer.Codes.ShouldBeEmpty();
        var (one, other) = (Words(answer.At("data.a.notes.steps")), Words(answer.At("data.b.notes.steps")));
        one.ShouldContain("prove it dead at the motor's leads, with a meter that was proved live; it was on 202 V");
        other.ShouldContain("prove it dead at the motor's leads, with a meter that was proved live; it was on 230 V");
        one.ShouldNotContain(words => words.StartsWith("fit a bushing", StringComparison.Ordinal));
        other.ShouldContain("fit a bushing from a 1/2 in (12.7 mm) shaft to a 5/8 in (15.88 mm) hub");
        answer.At("data.b.notes.steps").EnumerateArray().Single(step => step.GetProperty("change").ValueKind != JsonValueKind.Null && step.GetProperty("change").GetString() == "fitBushing").GetProperty("stage").GetString().ShouldBe("MOUNT");
        answer.At("data.b.kit").EnumerateArray().Select(item => (item.GetProperty("what").GetString(), item.GetProperty("quantity").GetInt32())).ShouldContain(("bushing, 1/2 in (12.7 mm) bore, 5/8 in (15.88 mm) outside", 1));
    }

    [Fact]
    public async Task A_part_that_does_not_fit_has_no_notes_no_kit_and_no_cautions()
    {
        var answer = await _service.AskAsync($"{{a: {Sheet("QN-300", "hubBore:\"1/2 in\"")}}}");
        answer.Text("data.a.fit").ShouldBe("DOESNT_FIT");
        answer.At("data.a.notes").ValueKind.ShouldBe(JsonValueKind.Null);
        answer.At("data.a.kit").GetArrayLength().ShouldBe(0);
        answer.At("data.a.cautions").GetArrayLength().ShouldBe(0);
    }

    [Fact]
    public async Task A_comparison_has_the_same_notes_as_the_fit_sheet_of_the_same_need()
    {
        var answer = await _service.AskAsync($"{{a: compare(oldPartNumber:\"ZV-8\", newPartNumber:\"QN-100\"){{{Asked}}} b: fitSheet(need:{{motor:{{oldPartNumber:\"ZV-8\"}}}}, partNumber:\"QN-100\"){{{Asked}}}}}");
        answer.Codes.ShouldBeEmpty();
        answer.At("data.a.notes.steps").GetArrayLength().ShouldBeGreaterThan(5);
        answer.At("data.a").GetRawText().ShouldBe(answer.At("data.b").GetRawText());
    }

    [Fact]
    public async Task What_killed_the_old_part_is_mended_before_the_new_one_goes_in()
    {
        const string Readings = "readings:{motor:{coilDirty:\"yes\", leadVolts:\"202 V\"}}";
        var answer = await _service.AskAsync($"{{a: fitSheet(need:{{motor:{{oldPartNumber:\"ZV-8\"}}}}, partNumber:\"QN-100\", {Readings}){{{Asked}}} b: beforeCondemning(need:{{motor:{{oldPartNumber:\"ZV-8\"}}}}, {Readings}){{mendFirst{{mend}}}}}}");
        answer.Codes.ShouldBeEmpty();
        var mend = answer.At("data.b.mendFirst").EnumerateArray().Select(one => one.GetProperty("mend").GetString()).ToList();
        mend.ShouldNotBeEmpty();
        var steps = answer.At("data.a.notes.steps").EnumerateArray().ToList();
        steps.Where(step => step.GetProperty("stage").GetString() == "MEND_FIRST").Select(step => step.GetProperty("words").GetString()).ShouldBe(mend);
        steps.FindIndex(step => step.GetProperty("stage").GetString() == "MEND_FIRST").ShouldBeLessThan(steps.FindIndex(step => step.GetProperty("stage").GetString() == "MOUNT"));
    }

    [Fact]
    public async Task Readings_of_another_kind_or_that_cannot_be_read_are_refused_with_a_sheet_too()
    {
        var answer = await _service.AskAsync($"{{a: fitSheet(need:{{motor:{{oldPartNumber:\"ZV-8\"}}}}, partNumber:\"QN-100\", readings:{{motor:{{leadVolts:\"many\"}}}}){{fit}}}}");
        answer.Places.ShouldBe(["readings.motor.leadVolts"]);
    }

    private static string Sheet(string number, string site) => $"fitSheet(need:{{motor:{{oldPartNumber:\"ZV-8\", site:{{{site}}}}}}}, partNumber:\"{number}\"){{{Asked}}}";

    private static List<string> Words(JsonElement steps) => [.. steps.EnumerateArray().Select(step => step.GetProperty("words").GetString()!)];
}
