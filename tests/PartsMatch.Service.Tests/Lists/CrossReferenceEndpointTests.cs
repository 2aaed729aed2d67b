using System.Globalization;
using System.Net;
using System.Text;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Lists;

/// <summary>POST /cross-reference, as programs see it.</summary>
public sealed class CrossReferenceEndpointTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Plate = "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60";

    private readonly TestService _service = shared.Service;

    [Fact]
    public async Task An_answer_is_the_list_with_its_own_columns_first_and_then_each_replacement()
    {
        var answer = await _service.SendAsync("shelf,number,note\nA-3,zv 7,\"ours; since 2019\"\n");
        answer.Status.ShouldBe(HttpStatusCode.OK);
        (answer.Headers["Content-Type"], answer.Headers["Row-Count"]).ShouldBe(("text/csv; charset=utf-8; header=present", "1"));
        answer.Body.Split('\n')[0].ShouldBe("shelf,number,note,replacement1.number,replacement1.maker,replacement1.title,replacement1.fit,replacement1.changes,replacement1.likelihood,replacement1.likelihoodFrom,replacement1.onHand,replacement1.price,supersessions,why");
        answer.Body.ShouldStartWith(answer.Body.Split('\n')[0] + "\nA-3,zv 7,\"ours; since 2019\",QN-100,Quennor,fan motor 1/4 hp,");
        var row = answer.Rows().ShouldHaveSingleItem();
        row.Of(1, "likelihoodFrom").ShouldBe("hand-set weights");
        (row.Of(1, "onHand"), row.Of(1, "price"), row["supersessions"]).ShouldBe(("3", "84.50 USD", "QN-100 on 2021-04-30 (maker)"));
        row["why"].ShouldStartWith("Not known yet: ");
    }

    /// <summary>Rows drawn at random, with repeats, so that sharing answers and working in parallel show if they change any.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public async Task Each_row_is_what_replacements_answers_to_it_alone(int first)
    {
        var random = new Random(first);
        string[] numbers = ["QN-100", "qn 100", "QN-200", "QN-300", "ZV-7", "ZV-8", "ZV-9", ""], texts = ["", Plate, "HP 1/3 RPM 1075 V 115 PH 1 HZ 60"], volts = ["", "208 V", "230 V", "115 V"], bores = ["", "1/2 in", "5/8 in"];
        List<(string Number, string Text, string Volts, string Bore)> list = [.. Enumerable.Range(0, 60).Select(_ => (Any(numbers), Any(texts), Any(volts), Any(bores))).Where(row => row.Item1.Length + row.Item2.Length > 0)];
        var rows = (await _service.SendAsync("number,text,site.volts,site.hubBore\n" + string.Concat(list.Select(row => $"{row.Number},{row.Text},{row.Volts},{row.Bore}\n")), $"?first={first}")).Rows();
        rows.Count.ShouldBe(list.Count);
        foreach (var (row, asked) in rows.Zip(list))
        {
            string[] site = [.. asked.Volts.Length > 0 ? ["volts: \"" + asked.Volts + "\""] : (string[])[], .. asked.Bore.Length > 0 ? ["hubBore: \"" + asked.Bore + "\""] : (string[])[]];
            var alone = await _service.AskAsync($"{{replacements(first:{first}, need:{{motor:{{oldPartNumber:\"{asked.Number}\", plateText:\"{asked.Text}\", site:{{{string.Join(' ', site)}}}}}}}){{edges{{node{{part{{number maker title}} fit likelihood changes{{words isCheck}} onHand price{{amount currency}}}}}} nearestMisses(first:1){{part{{number}} inTheWay{{sentence}}}}}}}}");
            alone.Codes.ShouldBeEmpty();
            var nodes = Enumerable.Range(0, alone.At("data.replacements.edges").GetArrayLength()).Select(at => $"data.replacements.edges.{at}.node.").ToList();
            for (var at = 1; at <= first; at++)
            {
                var node = nodes.ElementAtOrDefault(at - 1);
                row.Of(at, "number").ShouldBe(node is null ? string.Empty : alone.Text(node + "part.number"));
                if (node is null) continue;
                (row.Of(at, "maker"), row.Of(at, "title"), row.Of(at, "likelihood"), row.Of(at, "onHand")).ShouldBe((alone.Text(node + "part.maker"), alone.Text(node + "part.title"), alone.Text(node + "likelihood"), alone.Text(node + "onHand")));
                row.Of(at, "price").ShouldBe(alone.Text(node + "price") is "" ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"{alone.At(node + "price.amount").GetDecimal():0.00} {alone.Text(node + "price.currency")}"));
                row.Of(at, "fit").ShouldBe(FitOf(alone.Text(node + "fit"), alone.All(node + "changes", "isCheck").All(check => check == "True")));
                row.Of(at, "changes").ShouldStartWith(string.Join("; ", alone.All(node + "changes", "words")));
            }

            if (nodes.Count == 0) row["why"].ShouldStartWith($"Nothing on offer fits. {alone.Text("data.replacements.nearestMisses.0.part.number")} comes nearest: ");
            if (nodes.Count == 0) row["why"].ShouldContain(alone.Text("data.replacements.nearestMisses.0.inTheWay.0.sentence"));
        }

        string Any(string[] of) => of[random.Next(of.Length)];
    }

    [Theory]
    [InlineData("NO-SUCH,,,", "The catalogue has no part “NO-SUCH”.")]
    [InlineData(",,,230 V", "There is neither a number nor a plate's text here.")]
    [InlineData(",banana banana,,", "Nothing on the plate could be read")]
    [InlineData(",,banana,", "There is no kind “banana”. The kinds are: motor, ")]
    [InlineData("CK-5,,motor,", "CK-5 is a run capacitor; what is asked for is a fan motor.")]
    [InlineData("QN-100,,,many", "Volts")]
    [InlineData("QN-100,,,230 V,,too many", "The row has 6 cells, and the header names 4 columns.")]
    [InlineData("QN-100,\"an open mark,,", "A quotation mark opens this cell and is not closed before the line ends")]
    [InlineData("QN-100,a \"mark\" inside,,", "A quotation mark stands inside this cell")]
    public async Task A_bad_row_keeps_its_place_and_says_what_is_wrong(string bad, string why)
    {
        var answer = await _service.SendAsync($"number,text,kind,site.volts\nCK-5,,,\n{bad}\nQN-100,,,\n");
        var rows = answer.Rows();
        rows.Select(row => row.Number).ShouldBe([2, 3, 4]);
        rows[1]["why"].ShouldContain(why);
        rows[1].Of(1, "number").ShouldBeEmpty();
        (rows[0].Of(1, "number"), rows[2].Of(1, "number")).ShouldBe(("CK-5", "QN-100"));
        rows[1].Wrong.ShouldBeNull("the answer itself is a table by the book");
    }

    [Fact]
    public async Task Blank_rows_stay_so_that_each_row_of_the_answer_stands_where_it_stood()
    {
        var lines = (await _service.SendAsync("number,note\n\nQN-100,a\n , \n\nQN-100,b\n\n")).Body.Split('\n');
        lines.Length.ShouldBe(7, "the header, five rows, and what is behind the last line's end");
        lines[1].ShouldBe(",,,,,,,,,,,,");
        lines[2].ShouldStartWith("QN-100,a,QN-100,");
        (lines[3], lines[4]).ShouldBe((lines[1], lines[1]));
        lines[5].ShouldStartWith("QN-100,b,QN-100,");
    }

    [Fact]
    public async Task Own_columns_come_back_letter_for_letter_and_begin_no_formula()
    {
        var answer = await _service.SendAsync("number,a,b\nQN-100,'=1+1,\"two\nlines, \"\"quoted\"\"\"\nQN-100,=1+1,' as it was\n");
        answer.Body.ShouldContain("\nQN-100,'=1+1,\"two\nlines, \"\"quoted\"\"\",QN-100,");
        answer.Body.ShouldContain("\nQN-100,'=1+1,' as it was,QN-100,");
    }

    [Fact]
    public async Task A_plate_of_several_lines_is_read_and_its_kind_decides_how()
    {
        var rows = (await _service.SendAsync("text,kind\n\"HP 1/4\nRPM 1075\nV 208-230\nPH 1 HZ 60\",\n5 MFD 370 VAC,Capacitor\n")).Rows();
        rows[0].Of(1, "number").ShouldBe("QN-100");
        rows[1].Of(1, "number").ShouldBe("CK-5");
    }

    [Fact]
    public async Task A_number_that_nobody_knows_is_found_by_its_plate_and_that_is_said()
    {
        var row = (await _service.SendAsync($"number,text\nNO-SUCH,{Plate}\n")).Rows().ShouldHaveSingleItem();
        row.Of(1, "number").ShouldBe("QN-100");
        row["why"].ShouldStartWith("The catalogue has no part “NO-SUCH”. This is by the plate's text.");
    }

    [Fact]
    public async Task Gone_on_with_at_any_row_it_is_the_rest_of_the_same_bytes()
    {
        const string List = "number,note\nQN-100,\"two\nlines\"\nNO-SUCH,\n\nZV-7,x\nQN-100,y\nZV-9,\"open\nQN-300,z\n";
        var whole = (await _service.SendAsync(List, "?first=3")).Body;
        (await _service.SendAsync(List, "?first=3&from=2")).Body.ShouldBe(whole);
        for (var from = 3; from <= 9; from++)
        {
            var rest = await _service.SendAsync(List, $"?first=3&from={from}");
            rest.Headers["Content-Type"].ShouldBe("text/csv; charset=utf-8; header=absent");
            var rows = int.Parse(rest.Headers["Row-Count"], CultureInfo.InvariantCulture);
            rows.ShouldBe(8 - from + 1);
            whole.ShouldEndWith(rest.Body);
            new Service.Exchange.CsvReader(Encoding.UTF8.GetBytes("h\n" + rest.Body), _ => false).Rows().Select(row => row.Number).LastOrDefault(1).ShouldBe(rows + 1);
        }
    }

    [Theory]
    [InlineData("maker,title\nx,y\n", "", HttpStatusCode.UnprocessableEntity, Codes.ColumnMissing)]
    [InlineData("", "", HttpStatusCode.UnprocessableEntity, Codes.Empty)]
    [InlineData("number;text\n", "", HttpStatusCode.UnprocessableEntity, Codes.NotATable)]
    [InlineData("number,site.vlots\n", "", HttpStatusCode.UnprocessableEntity, Codes.UnknownField)]
    [InlineData("number,why\n", "", HttpStatusCode.UnprocessableEntity, Codes.GivenTwice)]
    [InlineData("number,Number\n", "", HttpStatusCode.UnprocessableEntity, Codes.GivenTwice)]
    [InlineData("number,\"text\n", "", HttpStatusCode.UnprocessableEntity, Codes.NotATable)]
    [InlineData("number\nQN-100\n", "?first=6", HttpStatusCode.BadRequest, Codes.FirstOutOfRange)]
    [InlineData("number\nQN-100\n", "?first=0", HttpStatusCode.BadRequest, Codes.FirstOutOfRange)]
    [InlineData("number\nQN-100\n", "?from=1", HttpStatusCode.BadRequest, Codes.RequestMalformed)]
    [InlineData("number\nQN-100\n", "?from=two", HttpStatusCode.BadRequest, Codes.RequestMalformed)]
    public async Task What_is_no_list_or_no_question_is_refused_as_a_whole(string list, string query, HttpStatusCode status, string code)
    {
        var answer = await _service.SendAsync(list, query);
        (answer.Status, answer.MediaType, answer.Text("code")).ShouldBe((status, "application/problem+json", code));
    }

    [Fact]
    public async Task A_field_of_the_site_that_is_none_is_told_with_the_nearest() =>
        (await _service.SendAsync("number,site.vlots\n")).Text("errors.0.message").ShouldBe("A site has no field “vlots”. Did you mean site.volts?");

    [Fact]
    public async Task Another_media_type_is_refused() =>
        (await _service.SendAsync(new(HttpMethod.Post, "/cross-reference") { Content = new StringContent("number\n", Encoding.UTF8, "text/plain") })).Text("code").ShouldBe(Codes.MediaTypeUnsupported);

    [Fact]
    public async Task From_another_machine_it_needs_a_key_as_all_reading_does()
    {
        var request = new HttpRequestMessage(HttpMethod.Post, "/cross-reference") { Content = new StringContent("number\n", Encoding.UTF8, "text/csv"), Headers = { { TestService.FromHeader, "192.0.2.7" } } };
        (await _service.SendAsync(request)).Text("code").ShouldBe(Codes.KeyNeeded);
    }

    /// <summary>The words of docs/api.md for a fit; what only waits for a look fits once it is checked.</summary>
    private static string FitOf(string fit, bool needsChecksOnly) => (fit, needsChecksOnly) switch
    {
        ("DROP_IN", _) => "drop-in",
        ("FITS_WITH_CHANGES", true) => "fits once checked",
        ("FITS_WITH_CHANGES", false) => "fits with changes",
        _ => "can't tell yet",
    };
}
