using DuckDB.NET.Data;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>DuckDB in memory, on one thread: one table in the order of the aspects that turn most rows away; code lists as arrays that a code points into.</summary>
/// <remarks>
/// Tried, median ms at 20,000 parts on a busy machine, relative to each other: arrays, planned once 8; arrays, planned at every query 67; lists as tables and 29 joins, planned once with statistics left out 150.
/// At 100,000 parts, all planned at every query: arrays 26; 29 joins 75, in our order 109; codes written into the query with IN, survivors joined 105 to 148; semi joins, survivors joined 129; maps 141.
/// Joins planned once with statistics answer wrongly as soon as the lists change.
/// </remarks>
internal sealed class DuckDbPeer : Contender
{
    private readonly DuckDBConnection database;
    private readonly DuckDBCommand filling;
    private readonly DuckDBCommand query;
    private readonly FacetTable table;

    public DuckDbPeer(FacetTable table, Weights weights, IReadOnlyList<int> order, Asked any)
        : this(Opened(), table, weights, order, any)
    {
    }

    private DuckDbPeer(DuckDBConnection database, FacetTable table, Weights weights, IReadOnlyList<int> order, Asked any)
        : base($"DuckDB {database.ServerVersion}")
    {
        (this.database, this.table) = (database, table);
        Run("SET threads = 1");
        Load(order);
        var aspects = order.Order().ToList();
        Run($"CREATE TEMP TABLE lists ({string.Join(", ", aspects.Select(aspect => $"{SqlText.List(aspect)} INTEGER[]"))})");
        filling = Command($"INSERT INTO lists VALUES ({string.Join(", ", aspects.Select(_ => "?"))})");
        foreach (var _ in aspects) filling.Parameters.Add(new DuckDBParameter());
        MakeReady(any);
        Run($"""
            PREPARE best AS SELECT number FROM parts, lists WHERE {string.Join(" AND ", order.Select(aspect => $"{Contribution(aspect)} IS NOT NULL"))}
            {SqlText.BestFirst(weights, string.Join(" + ", order.Select(Contribution)), larger: "greatest", smaller: "least")}
            """);
        query = Command("EXECUTE best");
    }

    public override bool IsDatabase => true;

    public override void MakeReady(Asked asked)
    {
        Run("DELETE FROM lists");
        foreach (var (aspect, list) in asked.Lists.ByAspect.Index())
        {
            var contributions = new int?[table.Facets[aspect].Count];
            foreach (var passing in list) contributions[passing.Code] = passing.Contribution;
            filling.Parameters[aspect].Value = contributions.ToList();
        }

        filling.ExecuteNonQuery();
    }

    public override IReadOnlyList<int> Best(Asked asked)
    {
        var rows = new List<int>(First);
        using var reader = query.ExecuteReader();
        while (reader.Read()) rows.Add(reader.GetInt32(0));
        return rows;
    }

    public override void Dispose()
    {
        filling.Dispose();
        query.Dispose();
        database.Dispose();
        base.Dispose();
    }

    private static DuckDBConnection Opened()
    {
        var opened = new DuckDBConnection("Data Source=:memory:");
        opened.Open();
        return opened;
    }

    /// <summary>Arrays are counted from 1.</summary>
    private static string Contribution(int aspect) => $"{SqlText.List(aspect)}[{SqlText.Column(aspect)} + 1]";

    private void Load(IReadOnlyList<int> order)
    {
        string[] columns = [.. order.Select(SqlText.Column), .. SqlText.Sorting];
        Run($"CREATE TABLE parts ({string.Join(", ", columns.Select(column => $"{column} INTEGER NOT NULL"))})");
        using var appender = database.CreateAppender("parts");
        foreach (var row in AspectOrder.Sorted(table, order))
        {
            var line = appender.CreateRow();
            foreach (var aspect in order) line.AppendValue(table.Codes[aspect][row]);
            line.AppendValue((int)table.Supply[row]).AppendValue(table.Cents[row]).AppendValue(row).EndRow();
        }
    }

    private DuckDBCommand Command(string text)
    {
        var command = database.CreateCommand();
        command.CommandText = text;
        return command;
    }

    private void Run(string text)
    {
        using var command = Command(text);
        command.ExecuteNonQuery();
    }
}
