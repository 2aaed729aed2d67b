namespace PartsMatch.Fit.Judging;

/// <summary>What a part of a family is: every field may be unknown. The same record holds a plate and a catalogue part.</summary>
public abstract record Spec
{
    private NeedMemory? memory;

    /// <summary>One of which nothing is known yet.</summary>
    protected Spec()
    {
    }

    /// <summary>A copy, which may be changed: nothing of what was worked out of the other one is remembered of it.</summary>
    protected Spec(Spec other)
    {
    }

    /// <inheritdoc/>
    public virtual bool Equals(Spec? other) => other is not null && EqualityContract == other.EqualityContract;

    /// <inheritdoc/>
    public override int GetHashCode() => EqualityContract.GetHashCode();

    /// <summary>What follows from it alone: worked out when it is first asked for, and remembered as long as it is.</summary>
    /// <param name="spec">The spec; nobody may change it any more.</param>
    /// <param name="work">Works it out of the spec and nothing else; a static lambda or method, by which it is found again.</param>
    internal static T Once<TSpec, T>(TSpec spec, Func<TSpec, T> work)
        where TSpec : Spec => (spec.memory ??= new()).Recall(work, spec);
}

/// <summary>What a part of a family will meet where it is put in.</summary>
public abstract record Site;

/// <summary>What a meter, a gauge or an eye found at a part of a family: at the old one before it is condemned, at the new one after the swap.</summary>
public abstract record Readings;

/// <summary>What is to be replaced, and where: plate and site of one family.</summary>
/// <param name="Plate">What the old part was, with what could be deduced.</param>
/// <param name="Site">What the new one will meet, with what could be deduced from the plate.</param>
/// <remarks>Needs are equal when plate, site and what is doubted of the plate are; a changed copy remembers nothing of what follows from another need.</remarks>
public sealed record Need(Spec Plate, Site Site)
{
    private Need(Need other) => (Plate, Site, PlateAsRead, Doubted, Memory) = (other.Plate, other.Site, other.PlateAsRead, other.Doubted, new());

    /// <summary>What the old part was, with what could be deduced.</summary>
    public Spec Plate
    {
        get;
        init => (field, PlateAsRead) = (value, null);
    }
    = Plate;

    /// <summary>Names of fields of which the plate's text says something that was not taken: nothing is taken of them for its being silent. A field that is known all the same may be among them.</summary>
    public IReadOnlyList<string> Doubted { get; init; } = [];

    /// <summary>What was worked out of it.</summary>
    internal NeedMemory Memory { get; } = new();

    /// <summary>The plate before anything was deduced from it; null where it was not read, and of a copy with another plate.</summary>
    internal Spec? PlateAsRead { get; init; }

    /// <inheritdoc/>
    public bool Equals(Need? other) => other is not null && Plate.Equals(other.Plate) && Site.Equals(other.Site) && Doubted.SequenceEqual(other.Doubted);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Plate, Site);
}

/// <summary>The same, typed for a family's aspects.</summary>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public readonly struct Need<TSpec, TSite>
    where TSpec : Spec
    where TSite : Site
{
    private readonly NeedMemory memory;

    private readonly IReadOnlyList<string> doubted;

    /// <summary>A need that was not read from texts.</summary>
    /// <param name="plate">What the old part was.</param>
    /// <param name="site">What the new one will meet.</param>
    public Need(TSpec plate, TSite site)
    {
        (Plate, Site, PlateAsRead, memory, doubted) = (plate, site, plate, new(), []);
    }

    internal Need(Need need) => (Plate, Site, PlateAsRead, memory, doubted) = ((TSpec)need.Plate, (TSite)need.Site, (TSpec)(need.PlateAsRead ?? need.Plate), need.Memory, need.Doubted);

    /// <summary>What the old part was.</summary>
    public TSpec Plate { get; }

    /// <summary>What the new one will meet.</summary>
    public TSite Site { get; }

    /// <summary>The old part before anything was deduced, for what a deduction takes for granted; with it where that is not known.</summary>
    public TSpec PlateAsRead { get; }

    /// <summary>Whether the plate's text says something of a field that was not taken, so that it is not silent on it.</summary>
    /// <param name="field">The field's name.</param>
    public bool Doubts(string field) => doubted.Contains(field);

    /// <summary>What follows from the need alone, whatever the part: worked out when it is first asked for, and remembered, since a query judges hundreds of facets for one need.</summary>
    /// <param name="work">Works it out of the need and nothing else; a static lambda or method, by which it is found again.</param>
    public T Once<T>(Func<Need<TSpec, TSite>, T> work) => memory.Recall(work, this);

    /// <summary>What follows from the plate alone, remembered for all needs that have the same one: lists and trainings ask for the same catalogue entries again and again.</summary>
    /// <param name="work">Works it out of the plate and nothing else; a static lambda or method, by which it is found again.</param>
    public T OnceOfPlate<T>(Func<TSpec, T> work) => Spec.Once(Plate, work);
}
