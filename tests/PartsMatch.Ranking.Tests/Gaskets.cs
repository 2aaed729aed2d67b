using System.Collections.Concurrent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Ranking.Tests;

/// <summary>A part of an invented kind whose rules are so plain that a test can be worked out by hand. Null is unknown.</summary>
public sealed record GasketSpec(
    [property: Field("Bore", "Invented.")] int? Bore,
    [property: Field("Thickness", "Invented.")] int? Thickness,
    [property: Field("Hardness", "Invented.")] int? Hardness,
    [property: Field("Colour", "Invented.")] int? Colour) : Spec
{
    public GasketSpec()
        : this(null, null, null, null)
    {
    }
}

/// <summary>A place of the invented kind.</summary>
public sealed record GasketSite : Site;

public sealed record GasketReadings : Readings;

/// <summary>What an aspect of a gasket reads: one number, or nothing.</summary>
public readonly record struct Mark(int? Number);

/// <summary>
/// The one rule: alike meets; every step apart is a fifth of the way to the limit; an odd number of steps asks for a change;
/// over five steps fails; a missing number is unknown.
/// </summary>
public abstract class GasketAspect(string title, bool isDeciding, AspectWeight weight, Func<GasketSpec, int?> read)
    : Aspect<GasketSpec, GasketSite, Mark>(title, isDeciding, Practice, weight)
{
    public const int MostSteps = 5;

    private static readonly Source Practice = new("invented for a test", SourceStatus.Practice);
    private static readonly ChangeKind File = new("fileGasket", 0.5) { Stage = Stage.Bench, HowTo = "File it." };

    /// <summary>How often each need and facet was judged.</summary>
    public ConcurrentDictionary<(Spec Plate, Mark Facet), int> Judged { get; } = [];

    public override LookedAt Fields => new([Name], []);

    public override Mark Read(GasketSpec part) => new(read(part));

    public override Finding Judge(Need<GasketSpec, GasketSite> need, Mark facet)
    {
        Judged.AddOrUpdate((need.Plate, facet), 1, (_, times) => times + 1);
        if (facet.Number is not { } number) return Finding.Unknown(Side.Part, "part", $"The part's number is not given.");
        if (read(need.Plate) is not { } wanted) return Finding.Unknown(Side.Plate, "plate", $"The plate's number is not given.");
        var steps = Math.Abs(number - wanted);
        if (steps > MostSteps) return Finding.Fails($"{steps} steps apart; {MostSteps} are the most.");
        IReadOnlyList<Change> changes = steps % 2 == 1 ? [new(File, $"file {steps} steps off")] : [];
        return Finding.MeetsWith(changes, $"{steps} steps apart; {MostSteps} are the most.") with { Shortfall = steps / (double)MostSteps };
    }
}

public sealed class Bore() : GasketAspect("Bore", isDeciding: true, new(1, 0.5, 1.5), gasket => gasket.Bore);

public sealed class Thickness() : GasketAspect("Thickness", isDeciding: true, new(0.6, 0.3, 0.4), gasket => gasket.Thickness);

public sealed class Hardness() : GasketAspect("Hardness", isDeciding: false, new(2, 0.1, 0.7), gasket => gasket.Hardness);

/// <summary>Colour only costs, and never turns a part away: 0 to 10, of which over 2 limits counts as 2.</summary>
public sealed class Colour() : Aspect<GasketSpec, GasketSite, Mark>("Colour", isDeciding: false, new("invented for a test", SourceStatus.Practice), new(0.4, 0, 0))
{
    public override LookedAt Fields => new([Name], []);

    public override Mark Read(GasketSpec part) => new(part.Colour);

    public override Finding Judge(Need<GasketSpec, GasketSite> need, Mark facet) => Finding.Meets($"Colour {facet.Number}.") with { Shortfall = (facet.Number ?? 0) / 4.0 };
}

/// <summary>What the rim reads.</summary>
public readonly record struct RimMark(int? Thickness, int? Hardness);

/// <summary>A rim has a gist: only where the plate's bore is not known does it ask about more than the thickness, and then a hardness that differs costs as well, or fails from over five steps on.</summary>
public sealed class Rim() : Aspect<GasketSpec, GasketSite, RimMark>("Rim", isDeciding: true, new("invented for a test", SourceStatus.Practice), new(0.5, 0.5, 0.5))
{
    public override LookedAt Fields => new([Name], []);

    public override bool HasGist => true;

    public override RimMark Read(GasketSpec part) => new(part.Thickness, part.Hardness);

    public override RimMark GistOf(RimMark facet) => facet with { Hardness = null };

    public override bool AsksBeyondGist(Need<GasketSpec, GasketSite> need) => need.Plate.Bore is null;

    public override Finding Judge(Need<GasketSpec, GasketSite> need, RimMark facet)
    {
        if (facet.Thickness is null) return Finding.Unknown(Side.Part, "part", $"The part's rim is not given.");
        var steps = Steps(facet.Thickness, need.Plate.Thickness) + (AsksBeyondGist(need) ? Steps(facet.Hardness, need.Plate.Hardness) : 0);
        return steps > GasketAspect.MostSteps ? Finding.Fails($"{steps} steps apart.") : Finding.Meets($"{steps} steps apart.") with { Shortfall = steps / 5.0 };
    }

    private static int Steps(int? one, int? other) => one is { } number && other is { } wanted ? Math.Abs(number - wanted) : 0;
}

/// <summary>The invented family, with fresh aspects every time so that what one test counts no other sees.</summary>
internal static class Gaskets
{
    public static Family<GasketSpec, GasketSite, GasketReadings> Family(params IReadOnlyList<Aspect> aspects) => new("gasket", "gasket", new FamilyRules<GasketSpec, GasketSite, GasketReadings>
    {
        Aspects = aspects.Count > 0 ? aspects : [new Bore(), new Thickness(), new Hardness(), new Colour()],
        Pairs = [.. PairsOf([.. (aspects.Count > 0 ? aspects : [new Bore(), new Thickness(), new Hardness(), new Colour()]).Select(aspect => aspect.Name)])],
        FormerAspects = new Dictionary<string, string?> { ["toughness"] = "hardness", ["firmness"] = "hardness", ["smell"] = null },
        Vocabulary = new([], []) { Example = "GASKET" },

        // As frame 48 implies a shaft: a thickness that is not given follows from a hardness of 9.
        Deduce = spec => (spec.Thickness is null && spec.Hardness == 9 ? spec with { Thickness = 9 } : spec, []),
        DeduceSite = (_, site) => (site, []),
        Contradictions = _ => [],
        SiteContradictions = (_, _) => [],
        WillDiffer = (_, _) => [],
        Drawings = (_, _) => [],
        Steps = (_, _) => new([], []),
        BeforeCondemning = (_, _) => new(Conclusion.NothingWrongFound, "A gasket is looked at.", null, [], []),
        AfterSwap = (_, _, _) => new([], [], []),
    });

    /// <summary>A deciding one with a checking one, two that only cost, and one with a gist.</summary>
    private static IEnumerable<AspectPair> PairsOf(string[] names) =>
        new AspectPair[] { new("bore", "hardness", "invented for a test"), new("thickness", "colour", "invented for a test"), new("rim", "bore", "invented for a test") }
            .Where(pair => names.Contains(pair.One) && names.Contains(pair.Other));

    public static Need Need(int? bore = 5, int? thickness = 5, int? hardness = 5) => new(new GasketSpec(bore, thickness, hardness, null), new GasketSite());

    public static CataloguePart Part(string number, int? bore = 5, int? thickness = 5, int? hardness = 5, int? colour = null, bool isOffered = true, bool isMade = true) =>
        new(number, new GasketSpec(bore, thickness, hardness, colour), isOffered, isMade);
}
