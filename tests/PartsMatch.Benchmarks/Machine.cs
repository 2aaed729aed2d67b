using System.Runtime.InteropServices;
using static System.FormattableString;

namespace PartsMatch.Benchmarks;

/// <summary>Where and when figures were taken: they mean nothing without it.</summary>
internal static class Machine
{
    public static string Line(TimeProvider time) =>
        Invariant($"{Processor}, {Environment.ProcessorCount} cores; {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.OSDescription}; {time.GetUtcNow():yyyy-MM-dd}");

    /// <summary>The name that Linux and Windows give it; there is no call that asks for it.</summary>
    private static string Processor
    {
        get
        {
            const string Linux = "/proc/cpuinfo";
            var name = File.Exists(Linux) ? File.ReadLines(Linux).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal))?.Split(':', 2)[1].Trim() : null;
            return name ?? Environment.GetEnvironmentVariable("PROCESSOR_IDENTIFIER") ?? RuntimeInformation.ProcessArchitecture.ToString();
        }
    }
}
