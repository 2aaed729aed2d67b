using System.Diagnostics;

namespace PartsMatch.Service.Tests.Commands;

/// <summary>The executable as a process of its own, with a key of its own.</summary>
internal static class Child
{
    public static async Task<Ran> RunAsync(string? key, params string[] args)
    {
        using var process = Start(key, args);
        var (output, errors) = (process.StandardOutput.ReadToEndAsync(), process.StandardError.ReadToEndAsync());
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return new(process.ExitCode, (await output).Trim(), (await errors).Trim());
    }

    public static Process Start(string? key, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "PartsMatch.Service.dll"), .. args]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["PARTSMATCH_KEY"] = key ?? string.Empty;
        return Process.Start(start)!;
    }
}
