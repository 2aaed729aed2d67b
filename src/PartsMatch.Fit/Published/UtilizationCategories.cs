using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>What a contact of a category is for.</summary>
/// <param name="Category">AC-1, AC-3, AC-8a.</param>
/// <param name="Use">The loads, in the standard's words as pages quote them.</param>
/// <param name="Source">The standard.</param>
public sealed record UtilizationCategory(string Category, string Use, Source Source);

/// <summary>Utilization categories of contactors and control switches: IEC 60947-4-1 table 1, IEC 60947-5-1.</summary>
public static class UtilizationCategories
{
    /// <summary>All rows.</summary>
    public static IReadOnlyList<UtilizationCategory> All { get; } = [.. PublishedTable.Read("utilization-categories").Select(row => new UtilizationCategory(row.Text("category"), row.Text("use"), row.Source))];

    /// <summary>What a category is for.</summary>
    /// <param name="category">The category, as the table writes it.</param>
    /// <exception cref="InvalidOperationException">The table has no such category: a mistake of ours.</exception>
    public static string UseOf(string category) => All.First(row => row.Category == category).Use;
}
