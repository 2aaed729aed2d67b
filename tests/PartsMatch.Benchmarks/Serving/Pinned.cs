using System.Diagnostics;
using System.Globalization;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>Starts a program on one core.</summary>
internal static class Pinned
{
    /// <summary>Starts it. On Linux a process takes its core over from the program that starts it: set afterwards, only its first thread would be bound.</summary>
    public static Process Start(int core, string program, params IEnumerable<string> args)
    {
        ProcessStartInfo start = OperatingSystem.IsLinux() ? new("taskset", ["-c", core.ToString(CultureInfo.InvariantCulture), program, .. args]) : new(program, args);
        (start.RedirectStandardOutput, start.RedirectStandardError) = (true, true);
        var process = Process.Start(start)!;
        if (OperatingSystem.IsWindows()) process.ProcessorAffinity = 1 << core;
        return process;
    }
}
