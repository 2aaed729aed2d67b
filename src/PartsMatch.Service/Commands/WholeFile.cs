namespace PartsMatch.Service.Commands;

/// <summary>Writes a file under another name until it is whole: half a table must not look like one.</summary>
internal static class WholeFile
{
    /// <summary>Writes it; false when the disk does not let it be written, and then whatever was there before still is.</summary>
    public static async Task<bool> TryWriteAsync(string path, Func<FileStream, Task> write)
    {
        var making = $"{path}.new";
        try
        {
            await using (var file = File.Create(making)) await write(file);
            File.Move(making, path, overwrite: true);
            return true;
        }
        catch (Exception failed) when (TableOptions.IsOfTheDisk(failed) && failed is not HttpIOException)
        {
            return false;
        }
        finally
        {
            if (File.Exists(making)) File.Delete(making);
        }
    }

    public static string CannotBeWritten(string path, string option) => $"{path} cannot be written. Give the user the right to, make room, or name another file with {option}.";
}
