namespace PartsMatch.Service.Commands;

/// <summary>Whether two paths lead to one file, however each is written: what is read must not be written over.</summary>
internal static class SameFile
{
    // As the file systems usual there compare names; common practice.
    private static readonly StringComparison Names = OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;

    public static bool Is(string one, string other) => string.Equals(Followed(Path.GetFullPath(one)), Followed(Path.GetFullPath(other)), Names);

    /// <summary>The path with every link on the way followed; as it stands where one cannot be.</summary>
    private static string Followed(string path)
    {
        if (Path.GetDirectoryName(path) is not { } folder) return path;
        var here = Path.Combine(Followed(folder), Path.GetFileName(path));
        try
        {
            return File.ResolveLinkTarget(here, returnFinalTarget: true) is { } target ? Followed(target.FullName) : here;
        }
        catch (Exception failed) when (TableOptions.IsOfTheDisk(failed))
        {
            return here;
        }
    }
}
