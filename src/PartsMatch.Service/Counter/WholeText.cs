using System.Text;

namespace PartsMatch.Service.Counter;

/// <summary>Writes a text beside the file it is to take the place of, and renames it: whoever reads the file, after a power cut too, finds the old one or the new one, and never half of it.</summary>
internal static class WholeText
{
    /// <exception cref="IOException">The disk does not take it; the file is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">This user may not write there; the file is as it was.</exception>
    public static void Write(string path, string text)
    {
        var making = $"{path}.new";
        using (var file = File.Create(making))
        {
            file.Write(Encoding.UTF8.GetBytes(text));
            file.Flush(flushToDisk: true);
        }

        File.Move(making, path, overwrite: true);
    }

    /// <summary>Whether it is the disk, or a right to it, that failed.</summary>
    public static bool IsOfTheDisk(Exception failed) => failed is IOException or UnauthorizedAccessException;
}
