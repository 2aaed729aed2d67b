namespace PartsMatch.Store;

public enum RefusalReason
{
    /// <summary>Another process has the folder or the file.</summary>
    InUse,

    /// <summary>The file is cut short, damaged, or not a PartsMatch store.</summary>
    Corrupt,

    /// <summary>A later PartsMatch made or upgraded the file.</summary>
    NewerFormat,

    /// <summary>The folder or a file in it cannot be made, read or written.</summary>
    NotWritable,
}

/// <summary>The store will not open, and has left the data file as it found it. The message is for a person: what is wrong, where, what would be right.</summary>
public sealed class StoreRefusedException(RefusalReason reason, string message, Exception? cause = null, RunningStore? holder = null)
    : Exception(message, cause)
{
    public RefusalReason Reason { get; } = reason;

    /// <summary>Who has it, when <see cref="Reason"/> is <see cref="RefusalReason.InUse"/> and it is known.</summary>
    public RunningStore? Holder { get; } = holder;
}

/// <summary>The disk failed under a write. Whether that write was kept is known only when the store is opened again; every acknowledged one was.</summary>
public sealed class StoreFailedException(string message, Exception cause) : Exception(message, cause);
