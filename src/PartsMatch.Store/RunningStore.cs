using System.Globalization;

namespace PartsMatch.Store;

/// <summary>The process that has a folder, and the loopback address it answers at once it has announced one.</summary>
public sealed record RunningStore(int? Process, string? Address)
{
    /// <summary>"process 123, http://127.0.0.1:5080"</summary>
    public override string ToString() => (Process, Address) switch
    {
        ({ } process, { } address) => FormattableString.Invariant($"process {process}, {address}"),
        ({ } process, null) => FormattableString.Invariant($"process {process}, which has not said its address"),
        _ => "it has not said which process it is",
    };

    /// <summary>Two lines: process id, address. Swapped in whole, so that no reader sees half of it.</summary>
    internal void WriteTo(string lockFile)
    {
        var whole = lockFile + ".new";
        File.WriteAllText(whole, FormattableString.Invariant($"{Process}\n{Address}\n"));
        File.Move(whole, lockFile, overwrite: true);
    }

    internal static RunningStore ReadFrom(string lockFile)
    {
        try
        {
            var lines = File.ReadAllLines(lockFile);
            int? process = lines.Length > 0 && int.TryParse(lines[0], NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : null;
            return new RunningStore(process, lines.Length > 1 && lines[1].Length > 0 ? lines[1] : null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new RunningStore(null, null);
        }
    }
}
