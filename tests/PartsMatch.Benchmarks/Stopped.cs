using System.Diagnostics;
using System.Globalization;

namespace PartsMatch.Benchmarks;

/// <summary>Stops a service as Ctrl+C does, so that it leaves its store in order; there is no call for it.</summary>
internal static class Stopped
{
    public static void InOrder(Process process)
    {
        if (OperatingSystem.IsWindows()) process.Kill();
        else using (Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)])) process.WaitForExit();
        process.WaitForExit();
    }
}
