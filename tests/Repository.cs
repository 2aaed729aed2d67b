namespace PartsMatch.Tests;

/// <summary>Where the repository lies, so that tests can read its pages and files. Every test project has this file as its own.</summary>
internal static class Repository
{
    /// <summary>The folder that holds PartsMatch.sln.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        for (var folder = Directory.GetParent(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "PartsMatch.sln"))) return folder.FullName;
        }

        throw new InvalidOperationException($"No PartsMatch.sln above {AppContext.BaseDirectory}: the tests run from inside the repository.");
    }
}
