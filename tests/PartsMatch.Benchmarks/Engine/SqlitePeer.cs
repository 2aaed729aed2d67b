using Microsoft.Data.Sqlite;
using PartsMatch.Ranking;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>SQLite in memory: one tree whose key is every column, the aspects that turn most rows away first; code lists as tables keyed by code.</summary>
/// <remarks>
/// Tried, median ms at 100,000 and 1,000,000 parts: as here 1.0 and 11; the key led by shaft diameter, speed and mount 1.2 and 9.8, by mount and fan load 1.0; by four aspects 4.7 and 13, since most combinations of codes do not exist;
/// what makes up a design in a table of its own, 2,500 to 4,000 rows, joined to the rest 1.8 and 8.5; every row with its gates in our order 20; an index a column, statistics, and SQLite's own plan 37.
/// Most of the time goes to adding up the survivors' contributions, and that is the same in all.
/// </remarks>
internal sealed class SqlitePeer : Contender
{
    private readonly SqliteConnection database;
    private readonly SqliteCommand[] emptying;
    private readonly SqliteCommand[] filling;
    private readonly SqliteCommand query;

    public SqlitePeer(FacetTable table, Weights weights, IReadOnlyList<int> order)
        : this(Opened(), table, weights, order)
    {
    }

    private SqlitePeer(SqliteConnection database, FacetTable table, Weights weights, IReadOnlyList<int> order)
        : base($"SQLite {database.ServerVersion}")
    {
        this.database = database;
        Run("PRAGMA temp_store = MEMORY");
        Load(table, order);
        foreach (var aspect in order) Run($"CREATE TEMP TABLE {SqlText.List(aspect)} (code INTEGER PRIMARY KEY, contribution INTEGER NOT NULL)");
        emptying = [.. order.Order().Select(aspect => Command($"DELETE FROM {SqlText.List(aspect)}"))];
        filling = [.. order.Order().Select(aspect => Command($"INSERT INTO {SqlText.List(aspect)} VALUES ($0, $1)", 2))];
        query = Command(Query(weights, order));
    }

    public override bool IsDatabase => true;

    public override void MakeReady(Asked asked)
    {
        Run("BEGIN");
        foreach (var (aspect, list) in asked.Lists.ByAspect.Index())
        {
            emptying[aspect].ExecuteNonQuery();
            foreach (var passing in list) Insert(filling[aspect], passing.Code, passing.Contribution);
        }

        Run("COMMIT");
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
        foreach (var command in (SqliteCommand[])[query, .. emptying, .. filling]) command.Dispose();
        database.Dispose();
        base.Dispose();
    }

    private static SqliteConnection Opened()
    {
        var opened = new SqliteConnection("Data Source=:memory:");
        opened.Open();
        return opened;
    }

    /// <summary>A cross join keeps the order in which it is written: SQLite's own choice took thirty times as long.</summary>
    private static string Query(Weights weights, IReadOnlyList<int> order)
    {
        var gates = order.Skip(1).Select(aspect => $"CROSS JOIN {SqlText.List(aspect)} ON {SqlText.List(aspect)}.code = {SqlText.Column(aspect)}");
        var score = string.Join(" + ", order.Select(aspect => $"{SqlText.List(aspect)}.contribution"));
        return $"""
            SELECT number FROM {SqlText.List(order[0])} CROSS JOIN parts ON {SqlText.Column(order[0])} = {SqlText.List(order[0])}.code
            {string.Join('\n', gates)}
            {SqlText.BestFirst(weights, score, larger: "max", smaller: "min")}
            """;
    }

    private void Load(FacetTable table, IReadOnlyList<int> order)
    {
        string[] columns = [.. order.Select(SqlText.Column), .. SqlText.Sorting];
        Run($"CREATE TABLE parts ({string.Join(", ", columns.Select(column => $"{column} INTEGER NOT NULL"))}, PRIMARY KEY ({string.Join(", ", columns)})) WITHOUT ROWID");
        Run("BEGIN");
        using var insert = Command($"INSERT INTO parts VALUES ({string.Join(", ", columns.Select((_, at) => Invariant($"${at}")))})", columns.Length);
        var values = new int[columns.Length];
        foreach (var row in AspectOrder.Sorted(table, order))
        {
            for (var at = 0; at < order.Count; at++) values[at] = table.Codes[order[at]][row];
            (values[^3], values[^2], values[^1]) = (table.Supply[row], table.Cents[row], row);
            Insert(insert, values);
        }

        Run("COMMIT");
    }

    private static void Insert(SqliteCommand command, params ReadOnlySpan<int> values)
    {
        for (var at = 0; at < values.Length; at++) command.Parameters[at].Value = values[at];
        command.ExecuteNonQuery();
    }

    private SqliteCommand Command(string text, int values = 0)
    {
        var command = database.CreateCommand();
        command.CommandText = text;
        for (var at = 0; at < values; at++) command.Parameters.Add(Invariant($"${at}"), SqliteType.Integer);
        command.Prepare();
        return command;
    }

    private void Run(string text)
    {
        using var command = database.CreateCommand();
        command.CommandText = text;
        command.ExecuteNonQuery();
    }
}
