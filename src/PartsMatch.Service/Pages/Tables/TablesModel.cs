using PartsMatch.Service.Exchange;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Tables;

/// <summary>The tables that there are, and what is wrong with a file that was sent.</summary>
/// <param name="Complaints">What is wrong.</param>
/// <param name="Chosen">The table that was chosen; empty where none was.</param>
public sealed record TablesModel(Complaints Complaints, string Chosen = "")
{
    /// <summary>Kind and file name of every table.</summary>
    public static IReadOnlyList<(string Kind, string FileName)> Tables { get; } = [.. CatalogueTable.All.Select(table => (table.Kind, table.FileName))];
}

/// <summary>A file that was sent: how far it has come, or what it says beside the catalogue.</summary>
public sealed class ImportModel
{
    internal ImportModel(string name, ImportJob job, ImportReport? report, IReadOnlyList<Counter.Refusal> refusals) =>
        (Address, FileName, Come, IsTaking, Report, Refusals) = ($"{TableEndpoints.Path}/{name}", job.Table.FileName, job.Come, job.IsTaking, report, refusals);

    /// <summary>In a link: the page is not to look again by itself.</summary>
    public const string Still = "still";

    public string Address { get; }

    /// <summary>Whether it looks again only when asked.</summary>
    public bool IsStill { get; init; }

    /// <summary>Where all rows that cannot be taken are, as a table.</summary>
    public string RefusedAddress => $"{Address}/{TableEndpoints.Refused}";

    public string FileName { get; }

    /// <summary>How far it has come; null once it is done.</summary>
    public ImportProgress? Come { get; }

    /// <summary>Whether it is being taken, or was; else it is a preview.</summary>
    public bool IsTaking { get; }

    public ImportReport? Report { get; }

    /// <summary>What is wrong with the file as a whole.</summary>
    public IReadOnlyList<Counter.Refusal> Refusals { get; }

    public string Title => Come is not null ? IsTaking ? "Taking the file" : "Reading the file" : Report is null ? "This file cannot be read" : IsTaking ? "The file was taken" : "What the file says";

    /// <summary>Whether there is something to take.</summary>
    public bool CanTake => !IsTaking && Report is { } report && report.New + report.Changed > 0;

    public IEnumerable<RowTold> Told(RowState state) => Report?.Told.Where(row => row.State == state) ?? [];

    /// <summary>Rows that are counted and not shown.</summary>
    public int NotTold(RowState state, int count) => count - Told(state).Count();
}
