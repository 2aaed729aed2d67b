namespace PartsMatch.Ranking.Columns;

/// <summary>What reading a catalogue's columns came to.</summary>
public abstract record ColumnsReading
{
    private ColumnsReading()
    {
    }

    /// <summary>They are those that were written.</summary>
    /// <param name="Catalogue">The catalogue.</param>
    /// <param name="AsOf">What was said when they were written.</param>
    public sealed record Read(Catalogue Catalogue, long AsOf) : ColumnsReading;

    /// <summary>They are not to be used: the catalogue is made anew from its parts.</summary>
    /// <param name="Why">Why not.</param>
    public sealed record Refused(ColumnsRefusal Why) : ColumnsReading;
}

/// <summary>Why columns are not to be used.</summary>
public enum ColumnsRefusal
{
    /// <summary>They are none.</summary>
    NotColumns,

    /// <summary>They are written in another way than this program reads.</summary>
    OtherVersion,

    /// <summary>They are another family's.</summary>
    OtherKind,

    /// <summary>They were written by other code, or for other aspects: what it read of a part may not be what this code reads.</summary>
    OtherCode,

    /// <summary>They are cut short, or not all of them is as it was written.</summary>
    Damaged,
}
