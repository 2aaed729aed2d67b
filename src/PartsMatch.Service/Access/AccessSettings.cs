namespace PartsMatch.Service.Access;

/// <summary>Who may read without a key. Writing always needs one.</summary>
public sealed class AccessSettings
{
    public const string Section = "Access";

    /// <summary>Anyone who can reach the service may read.</summary>
    public bool OpenReads { get; set; }

    /// <summary>Reads from this machine need a key too: behind a reverse proxy on the same machine everyone looks like this machine.</summary>
    public bool KeysForAllReads { get; set; }

    /// <summary>A sentence for a person, or null when the settings agree.</summary>
    public string? Contradiction => OpenReads && KeysForAllReads
        ? "Access:OpenReads and Access:KeysForAllReads are both set, and they contradict each other. Set one of them."
        : null;
}
