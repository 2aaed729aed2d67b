namespace PartsMatch.Fit.Judging;

/// <summary>What a part of a family is: every field may be unknown. The same record holds a plate and a catalogue part.</summary>
public abstract record Spec;

/// <summary>What a part of a family will meet where it is put in.</summary>
public abstract record Site;

/// <summary>What a meter, a gauge or an eye found at a part of a family: at the old one before it is condemned, at the new one after the swap.</summary>
public abstract record Readings;

/// <summary>What is to be replaced, and where: plate and site of one family.</summary>
/// <param name="Plate">What the old part was, with what could be deduced.</param>
/// <param name="Site">What the new one will meet, with what could be deduced from the plate.</param>
public sealed record Need(Spec Plate, Site Site);

/// <summary>The same, typed for a family's aspects.</summary>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
/// <param name="Plate">What the old part was.</param>
/// <param name="Site">What the new one will meet.</param>
public readonly record struct Need<TSpec, TSite>(TSpec Plate, TSite Site)
    where TSpec : Spec
    where TSite : Site;
