using System.Diagnostics;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>The service's own executable, serving a folder from one core on a free port.</summary>
internal sealed class ServiceProcess : IDisposable
{
    private const string Listens = "PartsMatch listens at ";

    private readonly Process process;

    private ServiceProcess(Process process, Uri address) => (this.process, Address) = (process, address);

    public Uri Address { get; }

    /// <summary>What it has worked so far, on any thread.</summary>
    public TimeSpan Worked
    {
        get
        {
            process.Refresh();
            return process.TotalProcessorTime;
        }
    }

    public static async Task<ServiceProcess> StartAsync(string folder, int core, CancellationToken stop)
    {
        var started = Pinned.Start(core, "dotnet", Path.Combine(AppContext.BaseDirectory, "PartsMatch.Service.dll"), "--data", folder, "--urls", "http://127.0.0.1:0");
        Uri? address = null;
        while (await started.StandardOutput.ReadLineAsync(stop) is { } line)
        {
            if (line.StartsWith(Listens, StringComparison.Ordinal)) address = new(line[Listens.Length..].Split(';')[0]);
            if (line == Service.Hosting.Serving.ToldAll && address is not null) return new(started, address);
        }

        throw new InvalidOperationException($"The service did not start. {await started.StandardError.ReadToEndAsync(stop)}");
    }

    public void Dispose()
    {
        Stopped.InOrder(process);
        process.Dispose();
    }
}
