namespace PartsMatch.Store;

/// <summary>One of many writes that are to reach the disk together.</summary>
public abstract record AskedWrite
{
    private AskedWrite()
    {
    }

    internal abstract WriteResult Into(WriteGroup group, string by);

    /// <summary>As <see cref="PartStore.AddAsync"/> does.</summary>
    public sealed record Add(PartDraft Draft) : AskedWrite
    {
        internal override WriteResult Into(WriteGroup group, string by) => group.Add(Draft, by);
    }

    /// <summary>As <see cref="PartStore.ChangeAsync"/> does, of the part of the draft's number.</summary>
    public sealed record Change(int VersionRead, PartDraft Draft) : AskedWrite
    {
        internal override WriteResult Into(WriteGroup group, string by) => group.Change(Draft.Number, VersionRead, Draft, by);
    }

    /// <summary>As <see cref="PartStore.SetStockAsync"/> does.</summary>
    public sealed record SetStock(StockLine Line) : AskedWrite
    {
        internal override WriteResult Into(WriteGroup group, string by) => group.SetStock(Line);
    }

    /// <summary>As <see cref="StoredOutcomes.RecordAsync"/> does.</summary>
    public sealed record Record(OutcomeDraft Draft) : AskedWrite
    {
        internal override WriteResult Into(WriteGroup group, string by) => group.Outcomes.Record(Draft, by);
    }
}
