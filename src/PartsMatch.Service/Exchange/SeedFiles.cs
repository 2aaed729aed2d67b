namespace PartsMatch.Service.Exchange;

/// <summary>Where seed tables come from: a folder of the user's, or the invented catalogue that is part of the program.</summary>
internal abstract class SeedFiles
{
    public abstract string Source { get; }

    /// <summary>Whether every spec is read before it is kept. The program's own were read by a test, and reading them again takes seconds of a first start.</summary>
    public abstract bool AreChecked { get; }

    public static SeedFiles Of(string? folder) => folder is null ? new EmbeddedFiles() : new FolderFiles(folder);

    /// <summary>The table of a name, or null when there is none.</summary>
    public abstract ReadOnlyMemory<byte>? Read(string name);

    private sealed class EmbeddedFiles : SeedFiles
    {
        public override string Source => "the invented demo catalogue";

        public override bool AreChecked => false;

        public override ReadOnlyMemory<byte>? Read(string name)
        {
            using var stream = typeof(SeedFiles).Assembly.GetManifestResourceStream($"seed-data/{name}");
            if (stream is null) return null;
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            return bytes;
        }
    }

    private sealed class FolderFiles(string folder) : SeedFiles
    {
        public override string Source => folder;

        public override bool AreChecked => true;

        public override ReadOnlyMemory<byte>? Read(string name)
        {
            var path = Path.Combine(folder, name);
            return File.Exists(path) ? File.ReadAllBytes(path) : null;
        }
    }
}
