using System.Text.Json;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>Every root field that reads, on the small catalogue.</summary>
public sealed class ReadingTests(SharedService shared) : IClassFixture<SharedService>
{
    private readonly TestService _service = shared.Service;

    [Fact]
    public async Task A_plate_is_read_with_where_each_field_stood_and_what_was_left_over()
    {
        const string plate = "HP 1/4 RPM 1075 xyzzy";
        var answer = await _service.AskAsync(
            "query($t: String!){readNameplate(kind: motor, text: $t){fields{name label text from length deduced spans{text from length}} leftovers{text} contradictions{sentence} complaints{code}}}", new { t = plate });
        answer.Codes.ShouldBeEmpty();
        var fields = answer.At("data.readNameplate.fields").EnumerateArray().ToDictionary(field => field.GetProperty("name").GetString()!);
        fields["power"].GetProperty("text").GetString().ShouldBe("1/4 hp");
        fields["power"].GetProperty("deduced").GetBoolean().ShouldBeFalse();
        var (from, length) = (fields["speed"].GetProperty("from").GetInt32(), fields["speed"].GetProperty("length").GetInt32());
        plate.Substring(from, length).ShouldBe("RPM 1075");
        answer.All("data.readNameplate.leftovers", "text").ShouldBe(["xyzzy"]);
    }

    [Fact]
    public async Task What_was_mended_for_a_field_is_told()
    {
        var answer = await _service.AskAsync("{readNameplate(kind: motor, text: \"l/4 HP 6O HZ 230 V\"){fields{name text mended}}}");
        var fields = answer.At("data.readNameplate.fields").EnumerateArray().ToDictionary(field => field.GetProperty("name").GetString()!);
        fields["power"].GetProperty("text").GetString().ShouldBe("1/4 hp");
        fields["power"].GetProperty("mended").GetString().ShouldBe("l/4 read as 1/4");
        fields["frequency"].GetProperty("mended").GetString().ShouldBe("6O read as 60");
        fields["voltage"].GetProperty("mended").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Fact]
    public async Task A_part_says_what_it_is_to_those_who_know_its_family_and_to_those_who_do_not()
    {
        var answer = await _service.AskAsync(
            "{part(number:\"qn100\"){number kind maker status version onHand price{amount currency} spec{...on MotorSpec{power{text value unit} si: power(units:SI){text value unit} type{text}}} fields(units:US){name label group help text value unit}}}");
        answer.Text("data.part.number").ShouldBe("QN-100");
        answer.Text("data.part.kind").ShouldBe("motor");
        answer.Text("data.part.status").ShouldBe("CURRENT");
        answer.Text("data.part.onHand").ShouldBe("3");
        answer.At("data.part.price.amount").GetDecimal().ShouldBe(84.50m);
        answer.Text("data.part.spec.power.text").ShouldBe("1/4 hp");
        answer.At("data.part.spec.power.value").GetDouble().ShouldBe(0.25);
        // A plate's horsepower is 746 W (worked by hand: 746 / 4).
        answer.At("data.part.spec.si.value").GetDouble().ShouldBe(186.5);
        answer.Text("data.part.spec.si.unit").ShouldBe("W");
        answer.At("data.part.spec.type").ValueKind.ShouldBe(JsonValueKind.Null);
        answer.All("data.part.fields", "name").ShouldBe(["power", "speed", "voltage", "phase", "frequency", "shaftDiameter"]);
        answer.At("data.part.fields.0.help").GetString().ShouldNotBeNullOrEmpty();
    }

    [Fact]
    public async Task An_unknown_number_is_no_part_and_no_error()
    {
        var answer = await _service.AskAsync("{part(number:\"NIX\"){number}}");
        answer.Codes.ShouldBeEmpty();
        answer.At("data.part").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Theory]
    [InlineData("", "CK-5, QN-100, QN-200, QN-300, ZV-7, ZV-9")]
    [InlineData("(kind: capacitor)", "CK-5")]
    [InlineData("(text: \"qn1\")", "QN-100")]
    [InlineData("(text: \"zavvo THREE-phase\")", "ZV-9")]
    [InlineData("(text: \"370 V\")", "CK-5")]
    [InlineData("(text: \"nothing of the kind\")", "")]
    [InlineData("(text: \"ZV-8\")", "")]
    public async Task The_catalogue_is_listed_by_number_without_retired_parts(string arguments, string expected) =>
        string.Join(", ", (await _service.AskAsync($"{{parts{arguments}{{edges{{node{{number}}}}}}}}")).All("data.parts.edges", "node.number")).ShouldBe(expected);

    [Theory]
    [InlineData("parts", "(first: 2, after: $after)", "node{number}", "node.number", 6)]
    [InlineData("replacements", "(need: {motor: {}}, first: 2, after: $after)", "node{part{number}}", "node.part.number", 5)]
    public async Task Going_through_all_pages_shows_every_part_once(string field, string arguments, string node, string number, int count)
    {
        var query = $"query($after: String){{{field}{arguments}{{edges{{cursor {node}}} pageInfo{{hasNextPage hasPreviousPage startCursor endCursor}}}}}}";
        List<string> seen = [];
        string? after = null;
        for (var page = 0; page < 10; page++)
        {
            var answer = await _service.AskAsync(query, new { after });
            answer.Codes.ShouldBeEmpty();
            seen.AddRange(answer.All($"data.{field}.edges", number));
            answer.At($"data.{field}.pageInfo.hasPreviousPage").GetBoolean().ShouldBe(after is not null);
            answer.Text($"data.{field}.pageInfo.startCursor").ShouldBe(answer.Text($"data.{field}.edges.0.cursor"));
            after = answer.Text($"data.{field}.pageInfo.endCursor");
            if (!answer.At($"data.{field}.pageInfo.hasNextPage").GetBoolean()) break;
        }

        seen.Count.ShouldBe(count);
        seen.Distinct().Count().ShouldBe(count);
    }

    [Fact]
    public async Task Replacements_say_how_likely_and_from_what_and_explain_each_aspect()
    {
        var answer = await _service.AskAsync("""
            {replacements(need: {motor: {plate: {shaftDiameter: "1/2 in"}}}) {
              edges {cursor node {part {number} fit likelihood likelihoodFrom score onHand price {amount} changes {kind words isCheck}
                findings {aspect title isDeciding verdict sentence shortfall margin {value unit} caution changes {kind} missing {side field} source {text status}}}}
              totalByFit {fit count} nearestMisses {part {number} inTheWay {aspect verdict sentence}} deductions {field} contradictions {sentence} nameplate {fields {name}}}}
            """);
        answer.Codes.ShouldBeEmpty();
        var numbers = answer.All("data.replacements.edges", "node.part.number");
        numbers.ShouldContain("QN-100");
        numbers.ShouldContain("ZV-7");
        numbers.ShouldNotContain("QN-300", "5/8 in does not go into a hub of 1/2 in");
        numbers.ShouldNotContain("ZV-8", "it is retired");
        answer.At("data.replacements.edges.0.node.likelihood").GetInt32().ShouldBeInRange(1, 99);
        answer.Text("data.replacements.edges.0.node.likelihoodFrom").ShouldBe("hand-set weights");
        answer.At("data.replacements.edges.0.node.score").GetDouble().ShouldBeLessThanOrEqualTo(0);
        var shaft = answer.At("data.replacements.edges.0.node.findings").EnumerateArray().Single(finding => finding.GetProperty("aspect").GetString() == "shaftDiameter");
        shaft.GetProperty("verdict").GetString().ShouldBe("MEETS");
        shaft.GetProperty("margin").GetProperty("unit").GetString().ShouldBe("mm");
        answer.At("data.replacements.totalByFit").EnumerateArray().Sum(one => one.GetProperty("count").GetInt32()).ShouldBe(5, "five motors are on offer");
        answer.Text("data.replacements.nearestMisses.0.part.number").ShouldBe("QN-300");
        answer.Text("data.replacements.nearestMisses.0.inTheWay.0.aspect").ShouldBe("shaftDiameter");
        answer.At("data.replacements.nameplate").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Fact]
    public async Task Only_the_fits_asked_for_are_listed()
    {
        var all = await _service.AskAsync("{replacements(need:{motor:{}}, first:100){edges{node{fit}}}}");
        var some = await _service.AskAsync("{replacements(need:{motor:{}}, first:100, include:[CANT_TELL_YET]){edges{node{fit}}}}");
        some.All("data.replacements.edges", "node.fit").ShouldBe([.. all.All("data.replacements.edges", "node.fit").Where(fit => fit == "CANT_TELL_YET")]);
        (await _service.AskAsync("{replacements(need:{motor:{}}, include:[]){edges{node{fit}}}}")).At("data.replacements.edges").GetArrayLength().ShouldBe(0);
    }

    [Theory]
    [InlineData("QN-300")]
    [InlineData("zv7")]
    [InlineData("ZV 8")]
    public async Task The_old_parts_entry_fills_the_need_whatever_became_of_the_part(string number)
    {
        var typed = number == "QN-300" ? "5/8 in" : "1/2 in";
        var byNumber = await NumbersAsync($"oldPartNumber: \"{number}\"");
        var byPlate = await NumbersAsync($"plate: {{power: \"{(number == "QN-300" ? "1/3" : "1/4")} hp\", speed: \"1075\", voltage: \"208-230\", phase: \"1\", frequency: \"60\", shaftDiameter: \"{typed}\"}}");
        // ZV-7 is discontinued and none is at hand: it does not replace itself.
        byNumber.ShouldBe(number == "zv7" ? [.. byPlate.Except(["ZV-7"])] : byPlate);
    }

    [Fact]
    public async Task What_is_typed_outranks_the_old_parts_entry_and_the_difference_is_reported()
    {
        var answer = await _service.AskAsync("{fitSheet(need:{motor:{oldPartNumber:\"QN-100\", plate:{shaftDiameter:\"5/8 in\"}}}, partNumber:\"QN-300\"){findings{aspect verdict} contradictions{fields sentence}}}");
        var shaft = answer.At("data.fitSheet.findings").EnumerateArray().Single(finding => finding.GetProperty("aspect").GetString() == "shaftDiameter");
        shaft.GetProperty("verdict").GetString().ShouldBe("MEETS", "both are 5/8 in");
        answer.Text("data.fitSheet.contradictions.0.fields.0").ShouldBe("shaftDiameter");
    }

    [Fact]
    public async Task A_fit_sheets_contributions_sum_to_its_score()
    {
        var answer = await _service.AskAsync("{fitSheet(need:{motor:{plate:{shaftDiameter:\"5/8 in\"}}}, partNumber:\"QN-100\"){part{number} fit likelihood likelihoodFrom score contributions{aspect amount} findings{aspect verdict} changes{kind words}}}");
        answer.Codes.ShouldBeEmpty();
        var amounts = answer.At("data.fitSheet.contributions").EnumerateArray().Sum(one => one.GetProperty("amount").GetDouble());
        amounts.ShouldBe(answer.At("data.fitSheet.score").GetDouble(), 1e-9);
        answer.At("data.fitSheet.contributions").GetArrayLength().ShouldBe(answer.At("data.fitSheet.findings").GetArrayLength());
    }

    [Fact]
    public async Task A_part_that_fails_has_no_likelihood()
    {
        var answer = await _service.AskAsync("{fitSheet(need:{motor:{plate:{shaftDiameter:\"1/2 in\"}}}, partNumber:\"QN-300\"){fit likelihood likelihoodFrom}}");
        answer.Text("data.fitSheet.fit").ShouldBe("DOESNT_FIT");
        answer.At("data.fitSheet.likelihood").ValueKind.ShouldBe(JsonValueKind.Null);
        answer.At("data.fitSheet.likelihoodFrom").ValueKind.ShouldBe(JsonValueKind.Null);
    }

    [Fact]
    public async Task Comparing_two_parts_is_the_fit_sheet_with_the_old_ones_entry_as_the_plate()
    {
        const string sheet = "fit score findings{aspect verdict sentence}";
        var answer = await _service.AskAsync($"{{a: compare(oldPartNumber:\"ZV-8\", newPartNumber:\"QN-100\"){{{sheet}}} b: fitSheet(need:{{motor:{{oldPartNumber:\"ZV-8\"}}}}, partNumber:\"QN-100\"){{{sheet}}}}}");
        answer.Text("data.a").ShouldBe(answer.Text("data.b"));
    }

    [Fact]
    public async Task A_site_changes_what_a_comparison_finds()
    {
        var answer = await _service.AskAsync("{compare(oldPartNumber:\"QN-100\", newPartNumber:\"QN-200\", site:{motor:{hubBore:\"5/8 in\"}}){findings{aspect sentence}}}");
        var shaft = answer.At("data.compare.findings").EnumerateArray().Single(finding => finding.GetProperty("aspect").GetString() == "shaftDiameter");
        shaft.GetProperty("sentence").GetString()!.ShouldContain("5/8");
    }

    private async Task<IReadOnlyList<string>> NumbersAsync(string need) =>
        (await _service.AskAsync($"{{replacements(need:{{motor:{{{need}}}}}, first:100){{edges{{node{{part{{number}}}}}}}}}}")).All("data.replacements.edges", "node.part.number");
}
