using System.Text;

namespace PartsMatch.Service.Counter;

/// <summary>Writes a text beside the file it is to take the place of, and renames it: whoever reads the file, after a power cut too, finds the old one or the new one, and never half of it.</summary>
internal static class WholeText
{
    /// <exception cref="IOException">The disk does not take it; the file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not write there; the file is as it was.</exception>
    public static void Write(string path, string text)
    {
        Prepare(path, text);
        Place(path);
    }

    /// <summary>Writes it beside the file alone, so that several files can take their places together once the disk has taken them all.</summary>
    /// <exception cref="IOException">The disk does not take it; the file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not write there; the file is as it was.</exception>
    public static void Prepare(string path, string text)
    {
        using var file = File.Create(Making(path));
        file.Write(Encoding.UTF8.GetBytes(text));
        file.Flush(flushToDisk: true);
    }

    /// <summary>Puts what was prepared in the file's place.</summary>
    /// <exception cref="IOException">It cannot be renamed; the file is as it was.</exception>
    public static void Place(string path) => File.Move(Making(path), path, overwrite: true);

    private static string Making(string path) => $"{path}.new";

    /// <summary>Whether it is the disk, or a right to it, that failed.</summary>
    public static bool IsOfTheDisk(Exception failed) => failed is IOException or UnauthorizedAccessException;
}
