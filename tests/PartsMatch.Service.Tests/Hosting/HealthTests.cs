using System.Net;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Hosting;

public sealed class HealthTests
{
    [Fact]
    public async Task A_service_that_is_stopping_is_alive_and_not_ready()
    {
        await using var service = await TestService.StartAsync();
        (await GetAsync(service, "/health/ready")).Status.ShouldBe(HttpStatusCode.OK);
        service.Services.GetRequiredService<IHostApplicationLifetime>().StopApplication();
        (await GetAsync(service, "/health/live")).Status.ShouldBe(HttpStatusCode.OK);
        (await GetAsync(service, "/health/ready")).Status.ShouldBe(HttpStatusCode.ServiceUnavailable);
    }

    private static Task<Answered> GetAsync(TestService service, string address) => service.SendAsync(new(HttpMethod.Get, address));
}
