using System.Net;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Access;

/// <summary>A form that did not come from a page of this service writes nothing, whoever's cookie comes with it.</summary>
public sealed class FormTokenTests
{
    [Theory]
    [InlineData("/sign-in")]
    [InlineData("/sign-in/once")]
    [InlineData("/sign-out")]
    [InlineData("/parts/new")]
    [InlineData("/parts/QN-100/change")]
    [InlineData("/parts/QN-100/retire")]
    public async Task Without_its_token_it_is_refused_with_a_page_that_says_to_send_it_again(string address)
    {
        await using var service = await TestService.StartAsync();
        var visitor = await Visitor.SignedInAsync(service);
        foreach (var token in (string[])["", "made-up"])
        {
            var answer = await visitor.PostAsync(address, ("token", token), ("key", service.Key), ("version", "1"), ("number", "QN-901"), ("maker", "Quennor"), ("title", "typed with care"), ("status", "current"));
            answer.Status.ShouldBe(HttpStatusCode.BadRequest);
            answer.MediaType.ShouldBe("text/html");
            answer.Body.ShouldContain("end it again");
            if (answer.Body.Contains("name=\"title\"", StringComparison.Ordinal)) answer.Body.ShouldContain("value=\"typed with care\"");
        }

        (await visitor.GetAsync("/parts/QN-100")).Body.ShouldContain("version 1<");
        visitor.Page.Body.ShouldNotContain("Retired:");
        (await visitor.GetAsync("/parts/QN-901")).Status.ShouldBe(HttpStatusCode.NotFound);
        visitor.Cookies.ShouldContainKey("signed-in");
    }

    [Fact]
    public async Task A_token_of_before_signing_in_is_too_old_and_the_page_holds_a_new_one_with_all_that_was_typed()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        await visitor.GetAsync("/sign-in");
        var old = visitor.Hidden("token");
        await visitor.SendAsync("/sign-in", ("key", service.Key));

        await visitor.PostAsync("/parts/new", ("token", old), ("kind", "motor"), ("version", "0"), ("number", "QN-902"), ("maker", "Quennor"), ("title", "fan motor"), ("status", "current"), ("spec.power", "1/4 hp"));
        visitor.Page.Status.ShouldBe(HttpStatusCode.BadRequest);
        await visitor.ResendAsync("/parts/new");
        visitor.Page.Status.ShouldBe(HttpStatusCode.SeeOther);
        (await visitor.FollowAsync()).Body.ShouldContain("1/4 hp");
    }

    [Fact]
    public async Task Someone_elses_token_is_refused()
    {
        await using var service = await TestService.StartAsync();
        var (visitor, other) = (await Visitor.SignedInAsync(service), await Visitor.SignedInAsync(service));
        await other.GetAsync("/parts/QN-100/retire");
        (await visitor.PostAsync("/parts/QN-100/retire", ("token", other.Hidden("token")), ("version", "1"))).Status.ShouldBe(HttpStatusCode.BadRequest);
    }

    [Fact]
    public async Task What_writes_nothing_needs_none()
    {
        await using var service = await TestService.StartAsync();
        var visitor = new Visitor(service);
        (await visitor.PostAsync("/units", ("units", "us"), ("back", "/parts"))).Status.ShouldBe(HttpStatusCode.SeeOther);
        (await visitor.PostAsync("/", ("kind", "motor"), ("text", "HP 1/4 RPM 1075"))).Status.ShouldBe(HttpStatusCode.SeeOther);
    }
}
