using System.CommandLine;
using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Commands;

/// <summary>What import and export share: which table, and how it is told where a terminal is.</summary>
internal static class TableOptions
{
    public static Option<string> Kind()
    {
        var names = string.Join(", ", CatalogueTable.All.Select(table => table.Kind));
        var kind = new Option<string>("--kind") { Description = $"Which table: {names}.", DefaultValueFactory = _ => CatalogueTable.All[0].Kind };
        kind.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: { } name }, ..] && CatalogueTable.Find(name) is null) given.AddError($"There is no table “{name}”. The tables are: {names}.");
        });
        return kind;
    }

    /// <summary>A file that cannot be opened is told as such.</summary>
    public static bool IsOfTheDisk(Exception failed) => failed is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;
}
