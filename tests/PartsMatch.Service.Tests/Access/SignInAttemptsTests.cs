using System.Globalization;
using System.Net;
using PartsMatch.Service.Access;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Access;

/// <summary>Guessing is slowed. Waits are worked by hand from the first one, 30 s, doubled with each wrong try, 15 min at most.</summary>
public sealed class SignInAttemptsTests
{
    private static readonly IPAddress One = IPAddress.Parse("192.0.2.7");
    private static readonly IPAddress Other = IPAddress.Parse("192.0.2.8");
    private readonly SteppedClock _clock = new();

    [Theory]
    [InlineData(5, 30)]
    [InlineData(6, 60)]
    [InlineData(7, 120)]
    [InlineData(9, 480)]
    [InlineData(10, 900)]
    [InlineData(30, 900)]
    public void After_five_wrong_ones_every_further_one_doubles_the_wait(int wrong, int seconds)
    {
        var attempts = new SignInAttempts(_clock);
        Try(attempts, wrong);
        attempts.Begin(One).ShouldBe(TimeSpan.FromSeconds(seconds));
        _clock.Step(TimeSpan.FromSeconds(seconds - 1));
        attempts.Begin(One).ShouldBe(TimeSpan.FromSeconds(1), "to ask during the wait does not make it longer");
        _clock.Step(TimeSpan.FromSeconds(1));
        attempts.Begin(One).ShouldBe(TimeSpan.Zero);
    }

    [Fact]
    public void Another_address_does_not_wait_and_a_right_key_begins_anew()
    {
        var attempts = new SignInAttempts(_clock);
        Try(attempts, 5);
        attempts.Begin(One).ShouldBeGreaterThan(TimeSpan.Zero);
        attempts.Begin(Other).ShouldBe(TimeSpan.Zero);
        attempts.WasRight(One);
        attempts.Begin(One).ShouldBe(TimeSpan.Zero);
    }

    [Fact]
    public void An_hour_after_the_last_wrong_one_it_is_forgotten()
    {
        var attempts = new SignInAttempts(_clock);
        Try(attempts, 10);
        _clock.Step(TimeSpan.FromHours(1));
        Try(attempts, 5);
        attempts.Begin(One).ShouldBe(TimeSpan.FromSeconds(30));
    }

    [Fact]
    public void All_addresses_together_have_sixty_tries_a_minute()
    {
        var attempts = new SignInAttempts(_clock);
        for (var host = 1; host <= 60; host++) attempts.Begin(IPAddress.Parse(FormattableString.Invariant($"198.51.100.{host}"))).ShouldBe(TimeSpan.Zero);
        attempts.Begin(Other).ShouldBe(TimeSpan.FromMinutes(1));
        _clock.Step(TimeSpan.FromMinutes(1));
        attempts.Begin(Other).ShouldBe(TimeSpan.Zero);
    }

    [Fact]
    public void Addresses_of_one_IPv6_prefix_wait_together_and_an_IPv4_address_is_the_same_in_either_form()
    {
        var attempts = new SignInAttempts(_clock);
        for (var host = 1; host <= 5; host++) attempts.Begin(IPAddress.Parse(FormattableString.Invariant($"2001:db8:0:1::{host}")));
        attempts.Begin(IPAddress.Parse("2001:db8:0:1:ffff::9")).ShouldBe(TimeSpan.FromSeconds(30));
        attempts.Begin(IPAddress.Parse("2001:db8:0:2::1")).ShouldBe(TimeSpan.Zero);
        Try(attempts, 5);
        attempts.Begin(One.MapToIPv6()).ShouldBe(TimeSpan.FromSeconds(30));
    }

    [Fact]
    public async Task The_page_says_how_long_to_wait_and_even_the_right_key_waits()
    {
        await using var service = await TestService.StartAsync(_clock, inDataFolder: null);
        var visitor = new Visitor(service);
        await visitor.GetAsync("/sign-in");
        for (var wrong = 1; wrong <= 5; wrong++) (await visitor.SendAsync("/sign-in", ("key", wrong.ToString(CultureInfo.InvariantCulture)))).Status.ShouldBe(HttpStatusCode.UnprocessableEntity);
        (await visitor.SendAsync("/sign-in", ("key", service.Key))).Status.ShouldBe(HttpStatusCode.TooManyRequests);
        visitor.Page.Headers["Retry-After"].ShouldBe("30");
        visitor.Page.Body.ShouldContain("Wait 30 seconds");
        visitor.Cookies.ShouldNotContainKey("signed-in");

        await visitor.GetAsync("/sign-in/once?code=x");
        (await visitor.ResendAsync("/sign-in/once")).Status.ShouldBe(HttpStatusCode.TooManyRequests, "codes are guessed no faster than keys");
        _clock.Step(TimeSpan.FromSeconds(30));
        (await visitor.SendAsync("/sign-in", ("key", service.Key))).Status.ShouldBe(HttpStatusCode.SeeOther);
    }

    private void Try(SignInAttempts attempts, int wrong)
    {
        for (var tried = 0; tried < wrong; tried++)
        {
            while (attempts.Begin(One) is var wait && wait > TimeSpan.Zero) _clock.Step(wait);
        }
    }
}
