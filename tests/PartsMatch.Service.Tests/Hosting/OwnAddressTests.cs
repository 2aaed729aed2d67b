using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Tests.Hosting;

public sealed class OwnAddressTests
{
    [Theory]
    [InlineData("http://127.0.0.1:5080", "http://127.0.0.1:5080")]
    [InlineData("http://0.0.0.0:8080", "http://127.0.0.1:8080")]
    [InlineData("http://[::]:8080", "http://127.0.0.1:8080")]
    [InlineData("http://+:8080", "http://127.0.0.1:8080")]
    [InlineData("http://*:8080", "http://127.0.0.1:8080")]
    [InlineData("https://127.0.0.1:5443;http://127.0.0.1:5080", "http://127.0.0.1:5080")]
    public void This_machine_reaches_the_service_at_a_loopback_address(string listening, string expected) => OwnAddress.Of(listening.Split(';')).ShouldBe(expected);
}
