namespace PartsMatch.Service.Tests.Support;

/// <summary>A folder of a test's own, gone afterwards.</summary>
internal sealed class TestFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("partsmatch-").FullName;

    public string Write(string name, string text)
    {
        var file = System.IO.Path.Combine(Path, name);
        File.WriteAllText(file, text);
        return file;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
