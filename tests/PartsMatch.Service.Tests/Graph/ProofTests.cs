using System.Text.Json;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>Readings before a part is condemned and after it is swapped, through HTTP.</summary>
public sealed class ProofTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Diagnosis = "conclusion sentence nextReading{field label side why} checks{title verdict sentence limit source{text status}} mendFirst{name cause mend source{text}} deductions{field}";

    private readonly TestService _service = shared.Service;

    [Fact]
    public async Task Without_readings_it_asks_for_the_first_one()
    {
        var answer = await _service.AskAsync($"{{beforeCondemning(need:{{motor:{{}}}}, readings:{{motor:{{}}}}){{{Diagnosis}}}}}");
        answer.Codes.ShouldBeEmpty();
        answer.Text("data.beforeCondemning.conclusion").ShouldBe("READ_NEXT");
        answer.Text("data.beforeCondemning.nextReading.field").ShouldBe("leadVolts");
        answer.Text("data.beforeCondemning.nextReading.label").ShouldBe("Volts at the motor's leads");
        answer.At("data.beforeCondemning.nextReading.side").ValueKind.ShouldBe(JsonValueKind.Null);
        answer.At("data.beforeCondemning.checks").GetArrayLength().ShouldBe(0);
    }

    [Fact]
    public async Task A_motor_that_binds_with_its_blade_clear_has_failed_and_what_killed_it_is_named()
    {
        var answer = await _service.AskAsync(
            $"{{beforeCondemning(need:{{motor:{{oldPartNumber:\"QN-100\"}}}}, readings:{{motor:{{leadVolts:\"228 V\", hums:\"yes\", spinsFreely:\"no\", bladeClear:\"yes\", coilDirty:\"yes\"}}}}){{{Diagnosis}}}}}");
        answer.Text("data.beforeCondemning.conclusion").ShouldBe("PART_HAS_FAILED");
        answer.At("data.beforeCondemning.nextReading").ValueKind.ShouldBe(JsonValueKind.Null);
        answer.All("data.beforeCondemning.checks", "verdict").ShouldContain("BAD");
        answer.All("data.beforeCondemning.checks", "limit").ShouldContain("187.2 to 253 V");
        answer.All("data.beforeCondemning.mendFirst", "name").ShouldBe(["coilDirty"]);
    }

    [Fact]
    public async Task A_capacitor_is_judged_by_its_own_rules()
    {
        var answer = await _service.AskAsync($"{{beforeCondemning(need:{{capacitor:{{oldPartNumber:\"CK-5\"}}}}, readings:{{capacitor:{{microfarads:\"3 µF\"}}}}){{{Diagnosis}}}}}");
        answer.Text("data.beforeCondemning.conclusion").ShouldBe("PART_HAS_FAILED");
        answer.Text("data.beforeCondemning.checks.0.limit").ShouldBe("4.7 to 5.3 µF");
    }

    [Fact]
    public async Task A_field_of_the_plate_that_is_wanted_next_names_its_side()
    {
        var answer = await _service.AskAsync($"{{beforeCondemning(need:{{capacitor:{{}}}}, readings:{{capacitor:{{microfarads:\"3 µF\"}}}}){{{Diagnosis}}}}}");
        answer.Text("data.beforeCondemning.nextReading.side").ShouldBe("PLATE");
        answer.Text("data.beforeCondemning.nextReading.label").ShouldBe("Rating");
    }

    [Fact]
    public async Task After_the_swap_every_reading_has_a_verdict_and_causes_stand_in_order()
    {
        var answer = await _service.AskAsync("""
            {afterSwap(need: {motor: {site: {fanKind: "propeller"}}}, partNumber: "qn 100", readings: {motor: {
              leadVolts: "228 V", airRightWay: "yes", bladeClear: "yes", refrigerant: "R-134a", condensingPressure: "201.63 psi", enteringAir: "95 °F", coilDirty: "yes"}})
            {part {number} readings {title verdict sentence limit source {text status}} causes {name title weight evidence check}}}
            """);
        answer.Codes.ShouldBeEmpty();
        answer.Text("data.afterSwap.part.number").ShouldBe("QN-100");
        answer.All("data.afterSwap.readings", "title").ShouldBe(["Blade", "Running", "Turn", "Volts under load", "Amps", "Condensing split"]);
        answer.All("data.afterSwap.readings", "verdict").ShouldBe(["GOOD", "GOOD", "GOOD", "GOOD", "CANT_TELL", "BAD"]);
        answer.Text("data.afterSwap.causes.0.name").ShouldBe("dirtyCoil");
        answer.At("data.afterSwap.causes.0.evidence").GetArrayLength().ShouldBe(2);
    }

    [Theory]
    [InlineData("beforeCondemning(need:{motor:{}}, readings:{capacitor:{}}){sentence}", "readings.capacitor")]
    [InlineData("afterSwap(need:{motor:{}}, partNumber:\"QN-100\", readings:{capacitor:{}}){readings{title}}", "readings.capacitor")]
    [InlineData("afterSwap(need:{motor:{}}, partNumber:\"CK-5\", readings:{motor:{}}){readings{title}}", "partNumber")]
    [InlineData("beforeCondemning(need:{motor:{oldPartNumber:\"CK-5\"}}, readings:{motor:{}}){sentence}", "need.motor.oldPartNumber")]
    public async Task Need_part_and_readings_are_of_one_kind(string field, string place)
    {
        var answer = await _service.AskAsync($"{{{field}}}");
        answer.Codes.ShouldBe([Codes.KindMismatch]);
        answer.Places.ShouldBe([place]);
    }

    [Fact]
    public async Task All_that_is_wrong_comes_at_once_each_with_its_place()
    {
        var answer = await _service.AskAsync(
            "{afterSwap(need:{motor:{plate:{power:\"x\"}}}, partNumber:\"NIX\", readings:{motor:{leadVolts:\"many\", insulationToEarth:\"20 mΩ\", refrigerant:\"R-999\"}}){readings{title}}}");
        answer.Places.ShouldBe(["need.motor.plate.power", "partNumber", "readings.motor.leadVolts", "readings.motor.insulationToEarth", "readings.motor.refrigerant"], ignoreOrder: true);
        answer.Codes.Count(code => code == Codes.Unreadable).ShouldBe(4);
    }

    [Theory]
    [InlineData("{motor:{}, capacitor:{}}")]
    [InlineData("{}")]
    [InlineData("{motor:{nonsense:\"1\"}}")]
    public async Task Readings_name_exactly_one_kind_and_only_its_fields(string readings)
    {
        var answer = await _service.AskAsync($"{{beforeCondemning(need:{{motor:{{}}}}, readings:{readings}){{sentence}}}}");
        answer.Codes.ShouldAllBe(code => code == Codes.QueryInvalid);
        answer.Codes.ShouldNotBeEmpty();
    }
}
