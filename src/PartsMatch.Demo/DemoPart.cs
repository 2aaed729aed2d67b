using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Demo;

/// <summary>A part of the invented catalogue, with what a counter has of it.</summary>
/// <param name="Number">Its part number.</param>
/// <param name="Maker">Who makes it.</param>
/// <param name="Title">A few words that a counter would say.</param>
/// <param name="IsDiscontinued">Whether it is made no more.</param>
/// <param name="Spec">What it is.</param>
/// <param name="Niche">What it is bought for: a part is superseded by one of the same niche.</param>
/// <param name="Price">Its price in USD.</param>
/// <param name="OnHand">How many the counter has.</param>
public sealed record DemoPart(string Number, Maker Maker, string Title, bool IsDiscontinued, Spec Spec, string Niche, decimal Price, int OnHand)
{
    /// <summary>About one part in eight is made no more.</summary>
    public const double DiscontinuedShare = 0.12;
}

/// <summary>A family's invented parts.</summary>
public abstract class FamilyCatalogue
{
    /// <summary>The family's kind: its file is named after it.</summary>
    public abstract string Kind { get; }

    /// <summary>The fields of its spec.</summary>
    public abstract Shape Shape { get; }

    /// <summary>What is added to the catalogue's seed for this family: its own, so that one more family leaves the others as they are.</summary>
    public abstract int SeedOffset { get; }

    /// <summary>How its parts are drawn, in a paragraph of the page beside the files.</summary>
    public abstract string HowDrawn { get; }

    /// <summary>How many outcomes are invented for it.</summary>
    public virtual int Outcomes => 2_000;

    /// <summary>What really decides, in this invented world, whether one of its parts does the job.</summary>
    public virtual HiddenTruth Truth(Draw draw) => FieldTruth.Draw(this, draw);

    /// <summary>By which fields people see that a part is like another: each counts 1 where nothing is said.</summary>
    public virtual IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look>();

    /// <summary>What somebody reads at a place where one of its parts failed; nothing where nobody reads anything.</summary>
    public virtual IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw) => [];

    /// <summary>What some of its parts lack on purpose, in a line of the same page; null where the page says it of several families.</summary>
    public virtual string? WhatLacks => null;

    /// <summary>Makes the parts, the same every time.</summary>
    public abstract IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed);
}
