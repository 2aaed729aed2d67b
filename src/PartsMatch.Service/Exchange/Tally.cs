namespace PartsMatch.Service.Exchange;

/// <summary>Counts what rows say, keeps those that are told, and says how far it has come.</summary>
internal sealed class Tally(int rows, int mostTold, IProgress<ImportProgress>? progress)
{
    /// <summary>Rows between two words about how far it has come.</summary>
    private const int Step = 1_000;

    private readonly int[] _counts = new int[Enum.GetValues<RowState>().Length];
    private readonly List<RowTold> _told = [];
    private readonly RefusedRows _refused = new();
    private int _read;

    public int Written { get; private set; }

    public void Read(Judged judged)
    {
        var before = _read;
        _read += judged.Rows.Count;
        if (_read / Step > before / Step || _read == rows) Report();
    }

    public void Add(Judged judged)
    {
        foreach (var row in judged.Rows)
        {
            var count = ++_counts[(int)row.State];
            if (row.State is RowState.Bad or RowState.Conflict) _refused.Add(row);
            if (row.State != RowState.Same && count <= mostTold) _told.Add(row);
        }
    }

    public void AddWritten(IReadOnlyCollection<Judged> all)
    {
        foreach (var judged in all)
        {
            Add(judged);
            if (judged.Write is not null) Written += judged.Rows.Count;
        }

        Report();
    }

    public ImportReport Report(string kind, bool isTaken, long seen, IReadOnlyList<string> notes) => new(
        kind, isTaken, seen, rows, Count(RowState.New), Count(RowState.Changed), Count(RowState.Same), Count(RowState.Bad), Count(RowState.Conflict), notes, [.. _told.OrderBy(row => row.Row)])
    {
        Refused = _refused,
    };

    private int Count(RowState state) => _counts[(int)state];

    private void Report() => progress?.Report(new(rows, _read, Written));
}
