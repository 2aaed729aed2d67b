using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Where the limits of readings come from of all contacts.</summary>
public static class ContactReadingSources
{
    /// <summary>Drop across a pole.</summary>
    public static Source ContactDrop { get; } = new("A closed pole loses at most 0.5 V under load; over 1 V it is bad", SourceStatus.Practice);
}
