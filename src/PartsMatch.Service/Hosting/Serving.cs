using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using PartsMatch.Service.Access;
using PartsMatch.Store;

namespace PartsMatch.Service.Hosting;

/// <summary>Runs the service until it is told to stop. What keeps it from starting is said in a sentence and an exit code.</summary>
public static class Serving
{
    /// <summary>The last line that is told at start.</summary>
    public const string ToldAll = "Stop it with Ctrl+C.";

    public static Task<int> RunAsync(string[] args, TextWriter output, TextWriter error, CancellationToken stop = default) => OrRefuseAsync(error, async () =>
    {
        await using var app = ServiceHost.Build(args);
        await ServiceHost.PrepareAsync(app);
        await ListenAsync(app, stop);
        await TellAsync(app, output);
        await app.WaitForShutdownAsync(stop);
        return ExitCode.Success;
    });

    /// <summary>Runs what needs a service, and says in a sentence what kept one from starting.</summary>
    internal static async Task<int> OrRefuseAsync(TextWriter error, Func<Task<int>> run)
    {
        try
        {
            return await run();
        }
        catch (StoreRefusedException refused)
        {
            return await RefuseAsync(error, refused.Message, ExitCode.StoreRefused);
        }
        catch (StartRefusedException refused)
        {
            return await RefuseAsync(error, refused.Message, refused.ExitCode);
        }
        catch (IOException taken) when (taken.InnerException is AddressInUseException)
        {
            return await RefuseAsync(error, "Another program listens at this address already. Stop it, or name another address with --urls.", ExitCode.AddressRefused);
        }
    }

    /// <summary>An address that is none, or none of this machine's, is told of before anyone waits for it.</summary>
    private static async Task ListenAsync(WebApplication app, CancellationToken stop)
    {
        try
        {
            await app.StartAsync(stop);
        }
        catch (Exception unusable) when (unusable is FormatException or SocketException or ArgumentException or InvalidOperationException)
        {
            throw new StartRefusedException(
                ExitCode.AddressRefused,
                $"{(app.Configuration["urls"] is { Length: > 0 } urls ? urls : "The address that is set")} cannot be listened at. Name an address of this machine's with --urls, such as http://127.0.0.1:5080: http, a port from 1 to 65535 (0 for any that is free), nothing behind it. An https address needs a certificate under Kestrel:Certificates.",
                unusable);
        }
    }

    private static async Task TellAsync(WebApplication app, TextWriter output)
    {
        var address = OwnAddress.Of(app.Urls);
        app.Services.GetRequiredService<PartStore>().AnnounceAddress(address);
        var key = await app.Services.GetRequiredService<KeyRing>().MakeFirstAsync();
        await output.WriteLineAsync($"PartsMatch listens at {string.Join(", ", app.Urls)}; GraphQL is at {address}/graphql.");
        await output.WriteLineAsync($"What it knows is kept in {app.Services.GetRequiredService<DataFolder>().Path}.");
        if (key is not null) await output.WriteLineAsync($"The key for writing, shown this once: {key}");
        if (key is not null) await output.WriteLineAsync(FormattableString.Invariant($"Or sign in in a browser, once and within {OneTimeCode.Life.TotalMinutes} minutes: {address}{SignInLink.Once(app.Services.GetRequiredService<OneTimeCode>().Make(KeyRing.FirstLabel))}"));
        await output.WriteLineAsync(ToldAll);
    }

    private static async Task<int> RefuseAsync(TextWriter error, string message, int exitCode)
    {
        await error.WriteLineAsync(message);
        return exitCode;
    }
}
