using System.Diagnostics;

namespace PartsMatch.Store.Tests;

/// <summary>The crash writer as a process of its own.</summary>
internal sealed class OtherProcess : IDisposable
{
    private readonly Process _process;

    private OtherProcess(Process process) => _process = process;

    public int Id => _process.Id;

    public static OtherProcess Start(params string[] arguments) => Start("dotnet", [Program, .. arguments]);

    /// <summary>With files limited to a size, as a full disk would: `ulimit -f` counts blocks of 1,024 bytes in bash.</summary>
    /// <remarks>The runtime keeps its compiled code in an unnamed file of 2 GiB, which the limit would forbid, unless told not to.</remarks>
    public static OtherProcess StartWithFilesUpTo(int kibibytes, params string[] arguments) => Start(
        "bash", ["-c", FormattableString.Invariant($"ulimit -f {kibibytes}; trap '' XFSZ; DOTNET_EnableWriteXorExecute=0 exec dotnet \"$@\""), "bash", Program, .. arguments]);

    private static string Program => Path.Combine(AppContext.BaseDirectory, "PartsMatch.Store.CrashWriter.dll");

    /// <summary>Null at the end of the output.</summary>
    public string? ReadLine() => _process.StandardOutput.ReadLine();

    public IEnumerable<string> RemainingLines()
    {
        while (ReadLine() is { } line)
            yield return line;
    }

    /// <summary>SIGKILL: nothing in the process runs any more.</summary>
    public void Kill() => _process.Kill();

    public int Ended()
    {
        _process.StandardInput.Close();
        _process.WaitForExit();
        return _process.ExitCode;
    }

    public void Dispose()
    {
        if (!_process.HasExited)
            _process.Kill();
        _process.WaitForExit();
        _process.Dispose();
    }

    private static OtherProcess Start(string program, IEnumerable<string> arguments) => new(Process.Start(
        new ProcessStartInfo(program, arguments) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true })!);
}
