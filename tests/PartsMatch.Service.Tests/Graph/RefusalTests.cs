using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>Bad input is answered with all that is wrong, at its place.</summary>
public sealed class RefusalTests(SharedService shared) : IClassFixture<SharedService>
{
    private readonly TestService _service = shared.Service;

    [Theory]
    [InlineData("{motor:{}, capacitor:{}}")]
    [InlineData("{}")]
    [InlineData("{motor:null}")]
    [InlineData("{valve:{}}")]
    [InlineData("{motor:{plate:{nonsense:\"1\"}}}")]
    [InlineData("{motor:{plate:{power:1}}}")]
    public async Task A_need_names_exactly_one_kind_and_only_its_fields(string need)
    {
        var literal = await _service.AskAsync($"{{replacements(need:{need}){{edges{{node{{fit}}}}}}}}");
        literal.Codes.ShouldAllBe(code => code == Codes.QueryInvalid);
        literal.Codes.ShouldNotBeEmpty();
        literal.Has("data").ShouldBeFalse();
    }

    [Theory]
    [InlineData("{\"motor\":{},\"capacitor\":{}}")]
    [InlineData("{}")]
    [InlineData("{\"motor\":null}")]
    [InlineData("{\"motor\":{\"plate\":{\"nonsense\":\"1\"}}}")]
    public async Task The_same_holds_for_variables(string need)
    {
        var answer = await _service.AskAsync("query($need: NeedInput!){replacements(need:$need){edges{node{fit}}}}", new { need = System.Text.Json.JsonDocument.Parse(need).RootElement });
        answer.Codes.ShouldBe([Codes.VariablesInvalid]);
    }

    [Theory]
    [InlineData("{replacements(need:{motor:{}, capacitor:{}}){edges{cursor}}}", "need")]
    [InlineData("{replacements(need:{valve:{}}){edges{cursor}}}", "need")]
    [InlineData("mutation{addPart(part:{number:\"N\", maker:\"m\", title:\"t\", spec:{}}){__typename}}", "part.spec")]
    [InlineData("{parts(first:3, frist:4){edges{cursor}}}", "frist")]
    public async Task What_the_schema_refuses_is_refused_at_its_place(string query, string place)
    {
        var answer = await _service.WriteAsync(query);
        answer.Codes.ShouldBe([Codes.QueryInvalid]);
        answer.Places.ShouldBe([place]);
    }

    [Theory]
    [InlineData("{\"motor\":{},\"capacitor\":{}}", "$need")]
    [InlineData("{\"motor\":{\"plate\":{\"nonsense\":\"1\"}}}", "$need.motor.plate")]
    [InlineData("{\"motor\":{\"plate\":{\"power\":1}}}", "$need.motor.plate.power")]
    public async Task What_is_wrong_in_a_variable_is_refused_at_its_place_there(string need, string place)
    {
        var answer = await _service.AskAsync("query($need: NeedInput!){replacements(need:$need){edges{node{fit}}}}", new { need = System.Text.Json.JsonDocument.Parse(need).RootElement });
        answer.Places.ShouldBe([place]);
    }

    [Theory]
    [InlineData("subscription{x}")]
    [InlineData("{__typename} subscription Later{parts{edges{cursor}}}")]
    public async Task Subscriptions_are_none_of_the_schemas(string query)
    {
        var answer = await _service.AskAsync(query);
        answer.Codes.ShouldBe([Codes.QueryInvalid]);
        answer.Text("errors.0.message").ShouldContain("subscriptions");
    }

    [Theory]
    [InlineData("Part")]
    [InlineData("[Part!]!")]
    [InlineData("PartSpec")]
    public async Task A_variable_of_an_outputs_type_is_refused_whether_it_has_a_default_value_or_not(string type)
    {
        foreach (var written in (string[])[string.Empty, " = null", " = {number: \"N\"}"])
        {
            (await _service.AskAsync($"query($v: {type}{written}){{part(number: $v){{number}}}}")).Codes.ShouldAllBe(code => code == Codes.QueryInvalid);
        }
    }

    [Theory]
    [InlineData("{", "a{", "a", "}", "}")]
    [InlineData("{", "...{", "a", "}", "}")]
    [InlineData("{parts(after:", "[", "1", "]", "){edges{cursor}}}")]
    [InlineData("{parts(after:", "{a:", "1", "}", "){edges{cursor}}}")]
    [InlineData("query($a:", "[", "Int", "]", "){parts{edges{cursor}}}")]
    [InlineData("query($a:Int=", "[", "1", "]", "){parts{edges{cursor}}}")]
    public async Task What_stands_too_deep_to_be_read_is_refused(string head, string open, string core, string close, string tail)
    {
        string Deep(int times) => head + string.Concat(Enumerable.Repeat(open, times)) + core + string.Concat(Enumerable.Repeat(close, times)) + tail;
        foreach (var times in (int[])[40, 100, 150, 2000]) (await _service.AskAsync(Deep(times))).Codes.ShouldAllBe(code => code == Codes.QueryTooDeep || code == Codes.QueryInvalid);
        (await _service.AskAsync(Deep(150))).Codes.ShouldBe([Codes.QueryTooDeep]);
    }

    [Fact]
    public async Task A_field_that_does_not_exist_has_no_place_in_the_input() =>
        (await _service.AskAsync("{parts(first:3){nonsense}}")).Places.ShouldBe([string.Empty]);

    [Fact]
    public async Task All_complaints_come_at_once_each_with_its_place()
    {
        var answer = await _service.AskAsync("""
            {replacements(need: {motor: {plate: {power: "1 banana", speed: "quick", frame: "48Y"}, oldPartNumber: "NIX-1", site: {hubBore: "wide"}}}) {edges {cursor}}}
            """);
        answer.Codes.ShouldBe([Codes.Unreadable, Codes.Unreadable, Codes.PartNotFound, Codes.Unreadable]);
        answer.Places.ShouldBe(["need.motor.plate.power", "need.motor.plate.speed", "need.motor.oldPartNumber", "need.motor.site.hubBore"]);
        answer.Text("errors.0.message").ShouldContain("1/4 hp", Case.Sensitive, "a complaint says what would be right");
        answer.All("errors", "path.0").ShouldBe(["replacements", "replacements", "replacements", "replacements"]);
    }

    [Fact]
    public async Task A_plates_text_that_is_too_long_is_refused_at_its_place()
    {
        var text = new string('H', 4001);
        var need = await _service.AskAsync("query($t: String){replacements(need:{motor:{plateText:$t}}){edges{cursor}}}", new { t = text });
        need.Codes.ShouldBe([Codes.TooLong]);
        need.Places.ShouldBe(["need.motor.plateText"]);
        var plate = await _service.AskAsync("query($t: String!){readNameplate(kind:motor, text:$t){fields{name}}}", new { t = text });
        plate.Codes.ShouldBe([Codes.TooLong]);
        plate.Places.ShouldBe(["text"]);
    }

    [Theory]
    [InlineData("🔥", "NOTHING_READ")]
    [InlineData("MODEL 7 SER 0115A", "NOTHING_READ")]
    [InlineData("HP 1/0", "UNREADABLE")]
    [InlineData("A 60 HZ", "AMBIGUOUS")]
    public async Task A_need_of_which_nothing_can_be_read_is_refused_and_one_typed_field_makes_it_a_need(string text, string code)
    {
        const string Query = "query($n: NeedInput!){replacements(need:$n){edges{cursor}}}";
        var alone = await _service.AskAsync(Query, new { n = new { motor = new { plateText = text } } });
        alone.Codes.ShouldBe([code]);
        alone.Places.ShouldBe(["need.motor.plateText"]);
        (await _service.AskAsync(Query, new { n = new { motor = new { plateText = text, plate = new { power = "1/4 hp" } } } })).Codes.ShouldBeEmpty();
        (await _service.AskAsync(Query, new { n = new { motor = new { plateText = text, site = new { supplyFrequency = "60 Hz" } } } })).Codes.ShouldBeEmpty();
    }

    [Fact]
    public async Task An_empty_plate_is_refused_where_the_plate_is_all_that_is_asked_about() =>
        (await _service.AskAsync("{readNameplate(kind:motor, text:\" \"){fields{name}}}")).Codes.ShouldBe([Codes.Empty]);

    [Theory]
    [InlineData("replacements(need:{motor:{oldPartNumber:\"CK-5\"}}){edges{cursor}}", "need.motor.oldPartNumber")]
    [InlineData("fitSheet(need:{motor:{}}, partNumber:\"CK-5\"){fit}", "partNumber")]
    [InlineData("compare(oldPartNumber:\"QN-100\", newPartNumber:\"CK-5\"){fit}", "newPartNumber")]
    [InlineData("compare(oldPartNumber:\"QN-100\", newPartNumber:\"QN-200\", site:{capacitor:{}}){fit}", "site.capacitor")]
    public async Task A_part_of_another_kind_is_a_mismatch(string field, string place)
    {
        var answer = await _service.AskAsync($"{{{field}}}");
        answer.Codes.ShouldBe([Codes.KindMismatch]);
        answer.Places.ShouldBe([place]);
    }

    [Theory]
    [InlineData("fitSheet(need:{motor:{plate:{power:\"x\"}}}, partNumber:\"NIX\"){fit}", "need.motor.plate.power, partNumber")]
    [InlineData("compare(oldPartNumber:\"NIX\", newPartNumber:\"QN-100\"){fit}", "oldPartNumber")]
    [InlineData("compare(oldPartNumber:\"NIX\", newPartNumber:\"NIX-2\"){fit}", "oldPartNumber, newPartNumber")]
    [InlineData("compare(oldPartNumber:\"QN-100\", newPartNumber:\"NIX\", site:{motor:{hubBore:\"x\"}}){fit}", "newPartNumber, site.motor.hubBore")]
    public async Task Unknown_numbers_are_named_beside_whatever_else_is_wrong(string field, string places)
    {
        var answer = await _service.AskAsync($"{{{field}}}");
        string.Join(", ", answer.Places).ShouldBe(places);
        answer.Codes.ShouldContain(Codes.PartNotFound);
    }

    [Theory]
    [InlineData("parts(after:\"???\"){edges{cursor}}")]
    [InlineData("parts(after:\"\"){edges{cursor}}")]
    [InlineData("parts(after:\"LS0t\"){edges{cursor}}")]
    [InlineData("replacements(need:{motor:{}}, after:\"???\"){edges{cursor}}")]
    [InlineData("replacements(need:{motor:{}}, after:\"abcd\"){edges{cursor}}")]
    public async Task What_is_no_cursor_is_malformed(string field)
    {
        var answer = await _service.AskAsync($"{{{field}}}");
        answer.Codes.ShouldBe([Codes.CursorMalformed]);
        answer.Places.ShouldBe(["after"]);
    }
}
