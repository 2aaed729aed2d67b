using System.Net;
using PartsMatch.Service.Pages;
using PartsMatch.Service.Pages.Replacements;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>From a plate's text to the list and the sheet, by the requests that a browser makes.</summary>
public sealed class NeedPagesTests(SharedService shared) : IClassFixture<SharedService>
{
    private const string Plate = "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 6O";

    [Fact]
    public async Task The_first_page_asks_what_failed()
    {
        var page = await GetAsync("/");
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.MediaType.ShouldBe("text/html");
        page.Body.ShouldContain("<h1>What failed?</h1>");
        page.Body.ShouldContain("lang=\"en\"");
    }

    [Fact]
    public async Task A_posted_plate_goes_on_as_a_link_that_holds_the_fields_read()
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", Plate), ("then", "find"));
        answer.Status.ShouldBe(HttpStatusCode.SeeOther);
        var link = Location(answer);
        link.ShouldStartWith("/replacements?kind=motor&");
        link.ShouldContain("plate.power=1/4+hp");
        link.ShouldContain("plate.frequency=60+Hz");
        link.ShouldNotContain("&text=");
        var list = await GetAsync(link);
        list.Body.ShouldContain("QN-100");
        list.Body.ShouldNotContain("ZV-8", customMessage: "a retired part is never offered");
    }

    [Fact]
    public async Task What_was_read_is_shown_back_marked_with_slips_and_leftovers_named()
    {
        var page = await GetAsync($"/?kind=motor&text={Uri.EscapeDataString($"{Plate} QXZZW")}");
        page.Body.ShouldContain("<mark class=\"mended\"");
        page.Body.ShouldContain("<mark class=\"left\" title=\"could not be placed\">QXZZW</mark>");
        page.Body.ShouldContain("“6O” was taken for 60");
        page.Body.ShouldContain("id=\"plate.power\" name=\"plate.power\" value=\"1/4 hp\"");
    }

    [Fact]
    public async Task A_field_that_was_put_right_outlives_a_second_reading_of_the_same_text()
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", Plate), ("shown", Plate), ("plate.power", "1/3 hp"), ("plate.speed", "1075 rpm"), ("then", "read"));
        Location(answer).ShouldContain("plate.power=1/3+hp");
        Location(answer).ShouldNotContain("plate.frequency", customMessage: "a field that was cleared stays unknown");
    }

    [Fact]
    public async Task Another_text_takes_with_it_what_the_first_one_gave_and_leaves_what_was_typed()
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", "HP 1/3 V 115"), ("shown", Plate), ("plate.power", "1/4 hp"), ("plate.speed", "1075 rpm"), ("plate.shaftDiameter", "1/2 in"), ("then", "read"));
        Location(answer).ShouldContain("plate.power=1/3+hp");
        Location(answer).ShouldContain("plate.shaftDiameter=1/2+in");
        Location(answer).ShouldNotContain("plate.speed");
    }

    [Fact]
    public async Task The_same_box_takes_the_old_parts_number()
    {
        var answer = await PostAsync("/", ("kind", "capacitor"), ("text", "zv 7"), ("then", "find"));
        Location(answer).ShouldStartWith("/replacements?kind=motor&old=ZV-7");
        (await GetAsync(Location(answer))).Body.ShouldContain(">QN-100</a> on 2021-04-30");
    }

    [Fact]
    public async Task An_old_number_takes_with_it_what_the_text_before_it_gave()
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", "QN-100"), ("shown", Plate), ("plate.power", "1/4 hp"), ("plate.speed", "1075 rpm"), ("plate.bodyLength", "4 in"), ("site.volts", "202 V"), ("then", "read"));
        Location(answer).ShouldBe("/?kind=motor&old=QN-100&plate.bodyLength=4+in&site.volts=202+V");
    }

    [Fact]
    public async Task A_text_is_read_for_what_it_says_of_another_kind_as_soon_as_that_is_chosen()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", "COIL 24 V 2 POLE"), ("to", "contactor"));
        page.Body.ShouldContain("This is how it was read");
        page.Body.ShouldContain("name=\"plate.coilVolts\" value=\"24 V\"");
    }

    [Fact]
    public async Task The_number_of_a_part_of_another_kind_stays_in_the_box_unread()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("old", "QN-100"), ("to", "contactor"));
        page.Body.ShouldContain("name=\"kind\" value=\"contactor\"");
        page.Body.ShouldContain(">QN-100</textarea>");
        page.Body.ShouldNotContain("This is how it was read");
    }

    [Theory]
    [InlineData("/?kind=motor&old=NOPE-1")]
    [InlineData("/?kind=motor&site.volts=202+V")]
    public async Task Nothing_is_shown_as_read_where_nothing_was_read(string address)
    {
        var page = await GetAsync(address);
        page.Body.ShouldNotContain("This is how it was read");
        page.Body.ShouldContain(">Read it</button>");
    }

    [Fact]
    public async Task A_sheet_leads_on_from_its_top_to_steps_readings_and_the_catalogue()
    {
        var top = WebUtility.HtmlDecode((await GetAsync("/sheet?part=QN-100&kind=motor&old=ZV-7")).Body.Split("What is asked for")[0]);
        top.ShouldContain("<a href=\"#notes\">");
        top.ShouldContain("<a href=\"/before?kind=motor&old=ZV-7\">");
        top.ShouldContain("<a href=\"/after?part=QN-100&kind=motor&old=ZV-7\">");
        top.ShouldContain("<a href=\"/parts/QN-100\">");
    }

    /// <summary>690 V is far off its taps: what does not fit has no steps to lead to.</summary>
    [Fact]
    public async Task A_sheet_of_a_part_that_does_not_fit_leads_to_no_steps() =>
        (await GetAsync("/sheet?part=QN-100&kind=motor&old=ZV-7&site.volts=690+V")).Body.ShouldNotContain("#notes");

    [Theory]
    [InlineData("old", "QN-100")]
    [InlineData("shown", Plate)]
    public async Task An_emptied_box_stays_empty(string hidden, string stood)
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", ""), (hidden, stood), ("plate.power", "1/2 hp"), ("then", "read"));
        Location(answer).ShouldBe("/?kind=motor&plate.power=1/2+hp");
    }

    [Fact]
    public async Task A_text_that_only_contradicts_itself_is_answered_with_the_contradiction()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", "HP 1/4 HP 1/3"), ("then", "find"));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("1/3");
        page.Body.ShouldNotContain("No part has the number");
    }

    [Theory]
    [InlineData("QN-100", "/?kind=motor&old=QN-100")]
    [InlineData("MODEL QN-100", "/?kind=motor&old=QN-100")]
    [InlineData("P/N: qn 100", "/?kind=motor&old=QN-100")]
    [InlineData("QN-100 QN100", "/?kind=motor&old=QN-100")]
    [InlineData("PART NO. QN-100\nHP 1/4", "/?kind=motor&old=QN-100&plate.power=1/4+hp&shown=HP+1/4")]
    public async Task A_part_number_is_found_among_other_words_which_are_read_as_its_plate(string typed, string read)
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", typed), ("then", "read"));
        Location(answer).ShouldBe(read);
    }

    [Fact]
    public async Task The_numbers_of_several_parts_are_not_one_old_part()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", "QN-100 QN-200"), ("then", "read"));
        page.Body.ShouldNotContain("old=QN");
    }

    [Fact]
    public async Task A_number_that_nobody_knows_is_answered_with_those_that_look_like_it()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", "QN-IO0"), ("then", "find"));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("No part has the number “QN-IO0”; there is QN-100 (");
    }

    [Fact]
    public async Task A_text_that_no_link_can_hold_is_shown_all_the_same()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", $"{Plate} {new string('Q', 2100)}"), ("then", "read"));
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.Body.ShouldContain(new string('Q', 2100));
    }

    [Fact]
    public async Task The_list_says_what_was_mended_and_what_was_left_over()
    {
        var page = await GetAsync($"/replacements?kind=motor&text={Uri.EscapeDataString($"{Plate} QXZZW")}");
        page.Body.ShouldContain("“6O” was taken for 60");
        page.Body.ShouldContain("“QXZZW”");
    }

    [Theory]
    [InlineData("/before")]
    [InlineData("/after")]
    public async Task A_text_of_which_nothing_is_read_is_no_plate_to_hold_readings_against(string path)
    {
        var page = await GetAsync($"{path}?kind=motor&text=QN-100X&read.leadVolts=0+V&part=QN-300");
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("No part has the number “QN-100X”");
        page.Body.ShouldContain("name=\"read.leadVolts\" value=\"0 V\"");
    }

    [Theory]
    [InlineData("/before?kind=motor&text=zzzz&read.leadVolts=lots&read.motorAmps=many", "leadVolts", "motorAmps", "text")]
    [InlineData("/after?kind=motor&text=zzzz&part=QN-300&read.leadVolts=lots&read.motorAmps=many", "leadVolts", "motorAmps", "text")]
    [InlineData("/after?kind=motor&old=QN-100&read.leadVolts=lots&read.motorAmps=many", "leadVolts", "motorAmps", "part")]
    [InlineData("/compare?old=NO-1&part=&site.volts=lots", "volts", "part", "old")]
    [InlineData("/compare?old=&part=NO-2&site.volts=lots", "volts", "part", "old")]
    public async Task All_that_is_wrong_on_a_page_of_readings_or_of_two_parts_is_said_at_once(string address, params string[] inputs)
    {
        var page = await GetAsync(address);
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain($"{inputs.Length} things are to be put right");
        foreach (var input in inputs) page.Body.ShouldMatch($"id=\"[a-z.]*{input}-wrong\"");
    }

    [Fact]
    public async Task A_field_that_says_otherwise_than_the_text_is_used_and_the_disagreement_is_told()
    {
        var answer = await PostAsync("/", ("kind", "motor"), ("text", "HP 1/4 RPM 1075"), ("plate.power", "1/3 hp"), ("plate.speed", "1075 rpm"));
        var page = await GetAsync(Location(answer));
        page.Body.ShouldContain("name=\"plate.power\" value=\"1/3 hp\"");
        page.Body.ShouldContain("Power: 1/3 hp is used, as it is typed below; the text reads 1/4 hp.");
        page.Body.ShouldNotContain("Speed: 1075 rpm is used");
    }

    [Fact]
    public async Task A_form_with_a_character_that_no_text_has_is_not_called_too_long()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", "HP 1/4\0 RPM 1075"));
        page.Status.ShouldNotBe(HttpStatusCode.RequestEntityTooLarge);
        page.Body.ShouldNotContain("send less");
    }

    [Theory]
    [InlineData("/before", "read.leadVolts")]
    [InlineData("/compare", "old")]
    public async Task What_no_link_can_hold_is_said_and_kept(string path, string input)
    {
        var page = await PostAsync(path, ("kind", "motor"), (input, new string('9', 3000)));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("no link can hold it");
        page.Body.ShouldContain(new string('9', 3000));
    }

    [Fact]
    public async Task All_that_is_wrong_is_said_at_once_beside_its_field_and_nothing_typed_is_lost()
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", Plate), ("plate.shaftDiameter", "half"), ("site.volts", "plenty"), ("then", "find"));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("2 things are to be put right");
        page.Body.ShouldContain("<a href=\"#plate.shaftDiameter\">");
        page.Body.ShouldContain("<a href=\"#site.volts\">");
        page.Body.ShouldContain("name=\"plate.shaftDiameter\" value=\"half\"");
        page.Body.ShouldContain("name=\"site.volts\" value=\"plenty\"");
        page.Body.ShouldContain(Plate);
    }

    [Theory]
    [InlineData("", "Nothing is typed yet")]
    [InlineData("xyzzy plugh", "nothing in it could be read")]
    [InlineData("🙂🙂", "nothing in it could be read")]
    public async Task A_text_without_a_single_reading_is_refused_with_what_would_be_right(string text, string says)
    {
        var page = await PostAsync("/", ("kind", "motor"), ("text", text), ("then", "find"));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain(says);
    }

    [Fact]
    public async Task A_text_of_5000_characters_is_refused_and_kept()
    {
        var text = string.Concat(Enumerable.Repeat("HP 1/4 ", 720));
        var page = await PostAsync("/", ("kind", "motor"), ("text", text), ("then", "find"));
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("a plate&#x27;s text may have 4000");
        page.Body.ShouldContain(text.Trim());
    }

    [Fact]
    public async Task A_link_with_an_unknown_field_names_it_and_shows_it()
    {
        var page = await GetAsync("/replacements?kind=motor&plate.power=1/4+hp&plate.colour=red");
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("There is no field “colour”");
        page.Body.ShouldContain("name=\"plate.colour\" value=\"red\"");
    }

    [Fact]
    public async Task A_list_with_a_cursor_of_another_order_begins_again()
    {
        var answer = await GetAsync("/replacements?after=nonsense&kind=motor&plate.power=1/4+hp");
        answer.Status.ShouldBe(HttpStatusCode.SeeOther);
        Location(answer).ShouldBe("/replacements?kind=motor&plate.power=1/4+hp");
    }

    [Fact]
    public async Task A_sheet_shows_old_beside_new_and_a_code_of_its_link()
    {
        var page = await GetAsync($"/sheet?part=QN-300&kind=motor&text={Uri.EscapeDataString(Plate)}&site.volts=202+V");
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.Body.ShouldContain("<td data-label=\"Old\">1/4 hp");
        page.Body.ShouldContain("<td data-label=\"New\">1/3 hp");
        page.Body.ShouldContain("<svg class=\"qr\"");
    }

    [Fact]
    public async Task A_sheet_of_a_part_that_is_not_there_says_so()
    {
        var page = await GetAsync($"/sheet?part=NO-SUCH&kind=motor&text={Uri.EscapeDataString(Plate)}");
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("The catalogue has no part “NO-SUCH”.");
    }

    [Fact]
    public async Task Two_parts_are_answered_in_a_sentence_first()
    {
        var page = await GetAsync("/compare?old=QN-100&part=ZV-9&site.supplyPhase=single-phase");
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.Body.ShouldContain("It does not fit: phase");
        page.Body.ShouldContain("ZV-9 in place of QN-100");
    }

    [Fact]
    public async Task Both_unknown_numbers_are_said_at_once()
    {
        var page = await GetAsync("/compare?old=NO-1&part=NO-2");
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("<a href=\"#old\">");
        page.Body.ShouldContain("<a href=\"#part\">");
    }

    [Fact]
    public async Task Readings_before_condemning_are_answered_and_stay_in_the_form()
    {
        var page = await GetAsync($"/before?kind=motor&text={Uri.EscapeDataString(Plate)}&read.circuitCalls=yes&read.leadVolts=0+V");
        page.Status.ShouldBe(HttpStatusCode.OK);
        page.Body.ShouldContain("It is not the part");
        page.Body.ShouldContain("name=\"read.leadVolts\" value=\"0 V\"");
    }

    [Fact]
    public async Task Readings_after_the_swap_need_the_part_that_was_put_in()
    {
        var page = await GetAsync($"/after?kind=motor&text={Uri.EscapeDataString(Plate)}&read.motorAmps=9+A");
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain("<a href=\"#part\">Name the part that was put in");
        page.Body.ShouldContain("name=\"read.motorAmps\" value=\"9 A\"");
    }

    [Fact]
    public async Task Units_are_chosen_once_and_kept_in_a_cookie_that_no_script_reads()
    {
        var answer = await PostAsync("/units", ("units", "si"), ("back", "/compare"));
        Location(answer).ShouldBe("/compare");
        answer.Headers["Set-Cookie"].ShouldContain("units=si");
        answer.Headers["Set-Cookie"].ShouldContain("httponly", Case.Insensitive);
        answer.Headers["Set-Cookie"].ShouldContain("samesite=lax", Case.Insensitive);
        var request = new HttpRequestMessage(HttpMethod.Get, $"/sheet?part=QN-300&kind=motor&text={Uri.EscapeDataString(Plate)}");
        request.Headers.Add("Cookie", "units=si");
        (await shared.Service.SendAsync(request)).Body.ShouldContain("<td data-label=\"New\">15.88 mm");
    }

    [Theory]
    [InlineData("foo")]
    [InlineData("DoesntFit")]
    [InlineData("1")]
    public async Task A_fit_that_there_is_none_of_is_told_beside_the_fits_that_there_are(string fit)
    {
        var page = await GetAsync($"/replacements?kind=motor&text={Uri.EscapeDataString(Plate)}&fit={fit}");
        page.Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        page.Body.ShouldContain($"There is no fit called “{fit}”, so all parts are shown.");
        page.Body.ShouldContain("/sheet?part=QN-100");
    }

    [Fact]
    public async Task A_fit_is_called_the_same_where_it_is_chosen_and_where_it_is_said()
    {
        var page = await GetAsync($"/replacements?kind=motor&text={Uri.EscapeDataString(Plate)}&plate.shaftDiameter=1/2+in&site.volts=202");
        foreach (var fit in ReplacementsModel.Shown.Where(fit => page.Body.Contains($"fit={fit}", StringComparison.Ordinal)))
            WebUtility.HtmlDecode(page.Body).ShouldMatch($">{Wording.Of(fit)} \\(\\d+\\)</a>");
        page.Body.ShouldContain("fit=");
    }

    [Fact]
    public async Task Before_the_swap_the_condensing_split_is_drawn_against_its_limits_where_it_was_measured()
    {
        const string Split = "read.refrigerant=R-404A&read.condensingPressure=290+psi&read.enteringAir=85+F";
        (await GetAsync($"/before?kind=motor&text={Uri.EscapeDataString(Plate)}&{Split}")).Body.ShouldContain("ceiling: 30 °F");
        (await GetAsync($"/before?kind=motor&text={Uri.EscapeDataString(Plate)}&read.motorAmps=2+A")).Body.ShouldNotContain("ceiling: 30 °F");
    }

    [Theory]
    [InlineData("//elsewhere.example/")]
    [InlineData("https://elsewhere.example/")]
    [InlineData("/\\elsewhere.example")]
    [InlineData("")]
    public async Task Nobody_is_sent_to_another_server(string back) => Location(await PostAsync("/units", ("units", "us"), ("back", back))).ShouldBe("/");

    [Fact]
    public async Task Pages_allow_no_script_and_no_inline_style()
    {
        var page = await GetAsync("/");
        page.Headers["Content-Security-Policy"].ShouldBe("default-src 'none'; style-src 'self'; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'");
        page.Body.ShouldNotContain("<script");
        page.Body.ShouldNotContain(" style=");
    }

    [Fact]
    public async Task A_stylesheet_may_be_kept_for_ever_at_its_address()
    {
        foreach (var address in PageAssets.Stylesheets)
        {
            var sheet = await GetAsync(address);
            sheet.MediaType.ShouldBe("text/css");
            sheet.Headers["Cache-Control"].ShouldContain("immutable");
        }
    }

    private static string Location(Answered answer) => answer.Headers["Location"];

    private Task<Answered> GetAsync(string address) => shared.Service.SendAsync(new(HttpMethod.Get, address));

    private Task<Answered> PostAsync(string address, params (string Name, string Text)[] inputs) => shared.Service.SendAsync(new(HttpMethod.Post, address)
    {
        Content = new FormUrlEncodedContent(inputs.Select(input => KeyValuePair.Create(input.Name, input.Text))),
    });
}
