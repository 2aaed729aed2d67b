using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo.Outcomes;

/// <summary>
/// The made-up district in which a family's parts are put in: its places, what its parts are really worth, and what really decides. People mostly put in what looks most like the old part, know some of what
/// no record tells and so keep weak parts out of harsh places, and times get harder late.
/// </summary>
public sealed class District
{
    /// <summary>Of every old part, so many that look most like it are thought of.</summary>
    private const int Alike = 16;

    /// <summary>Of those, so many are at hand when it fails.</summary>
    private const int AtHand = 8;

    /// <summary>As far off as what is not said is taken to be.</summary>
    private const double NotSaid = 0.3;

    private static readonly DateOnly First = new(2022, 1, 10);
    private static readonly DateOnly Last = new(2026, 10, 30);

    /// <summary>From this day on everything is a little harder: cheaper parts, hotter summers.</summary>
    private static readonly DateOnly Drifts = new(2025, 9, 1);

    private readonly FamilyCatalogue family;
    private readonly int seed;
    private readonly IReadOnlyList<Place> places;
    private readonly HiddenTruth truth;
    private readonly List<PartFigures> parts;
    private readonly List<double> quality;
    private readonly List<int[]> alike;
    private readonly List<int> replaced;
    private readonly Dictionary<string, int> byNumber;
    private readonly Dictionary<string, Place> byName;

    private District(FamilyParts made, int seed)
    {
        (family, this.seed) = (made.Family, seed);
        var draw = new Draw(seed);
        places = Place.Draw(draw);
        truth = family.Truth(draw);
        parts = [.. made.Parts.Select(part => new PartFigures(family, part))];
        quality = [.. parts.Select(_ => draw.Chance(0.05) ? draw.Between(0.2, 0.9) : draw.Between(0, 0.02))];
        var looks = family.Shape.Fields.Select((field, at) => (Field: at, Look: family.Looks.GetValueOrDefault(field.Name, Look.Usual))).OrderByDescending(one => one.Look.Weight).ToArray();
        var likest = parts.AsParallel().AsOrdered().Select(old => MostAlike(old, looks)).ToList();
        var nearEnough = likest.Select(some => some[Math.Min(5, some.Length) - 1].Off).Order().ElementAt(likest.Count / 3);
        alike = [.. likest.Select(some => some.Where(one => one.Off <= nearEnough).Select(one => one.Part).ToArray())];
        replaced = [.. Enumerable.Range(0, parts.Count).Where(part => alike[part].Length > 2)];
        byNumber = parts.Index().ToDictionary(one => one.Item.Part.Number, one => one.Index, StringComparer.Ordinal);
        byName = places.ToDictionary(place => place.Name, StringComparer.Ordinal);
    }

    /// <summary>The district of a family's parts, the same every time.</summary>
    public static District Of(FamilyParts made, int seed) => new(made, seed);

    /// <summary>So many outcomes, the oldest first, the same every time.</summary>
    public IReadOnlyList<DemoOutcome> Outcomes(int count)
    {
        var draw = new Draw(seed + 1);
        DateOnly[] days = [.. Enumerable.Range(0, count).Select(_ => draw.Day(First, Last)).Order()];
        return [.. days.Select((day, index) => One(index, day, draw))];
    }

    /// <summary>How likely a part does an old one's job right the first time, 0 to 1, by what no file holds.</summary>
    /// <param name="old">The old part's number.</param>
    /// <param name="part">The new part's number.</param>
    /// <param name="place">The place's name.</param>
    /// <param name="day">The day.</param>
    /// <exception cref="KeyNotFoundException">A number or a place that is none of the district's.</exception>
    public double Right(string old, string part, string place, DateOnly day) => ChancesOf(byNumber[old], byNumber[part], byName[place], day).Right;

    /// <summary>What a part's own quality adds to its hazard.</summary>
    /// <param name="part">Its number.</param>
    /// <exception cref="KeyNotFoundException">A number that is none of the district's.</exception>
    public double QualityOf(string part) => quality[byNumber[part]];

    private Chances ChancesOf(int old, int part, Place place, DateOnly day) => truth.Of(parts[old], parts[part], place, quality[part], day < Drifts ? 1 : 1.25);

    private DemoOutcome One(int index, DateOnly day, Draw draw)
    {
        var place = draw.Pick(places);
        var failed = draw.Pick(replaced);
        var site = family.SiteOf(parts[failed], place, draw);

        // The rank in likeness is what people go by; the better they are, the less they miss, and the more they have heard of a part.
        var chosen = draw.Some(alike[failed], Math.Min(AtHand, alike[failed].Length))
            .MinBy(part => (Array.IndexOf(alike[failed], part) * 0.3 * (0.5 + place.Skill)) + (place.Skill * place.Harshness * 3 * quality[part]) + (draw.Between(0, 1) * 2));
        var chances = ChancesOf(failed, chosen, place, day);
        var fell = draw.Between(0, 1);
        var (result, reason) = fell < chances.Right ? ("right first time", string.Empty)
            : fell < chances.Right + chances.CameBack ? ("came back", draw.Of(("failed again", 6), ("did not do the job", 4)))
            : ("reworked", draw.Of(("more to change than foreseen", 7), ("something was missing", 3)));
        return new(FormattableString.Invariant($"{family.Kind}-{index + 1:00000}"), day, place.Name, parts[failed].Part.Number, parts[chosen].Part.Number, site, result, reason, chances.Right);
    }

    /// <summary>The parts that look most like one, the likest first, with how far off each is.</summary>
    private (int Part, double Off)[] MostAlike(PartFigures old, (int Field, Look Look)[] looks)
    {
        // The farthest off of those kept is taken out first; ties go to the part that stands later.
        var kept = new PriorityQueue<int, (double Off, int Part)>(Comparer<(double Off, int Part)>.Create((one, other) => other.CompareTo(one)));
        for (var part = 0; part < parts.Count; part++)
        {
            if (parts[part] == old || parts[part].Part.IsDiscontinued) continue;
            var most = kept.Count < Alike || !kept.TryPeek(out _, out var farthest) ? double.PositiveInfinity : farthest.Off;
            var off = OffOf(old, parts[part], looks, most);
            if (off >= most) continue;
            kept.Enqueue(part, (off, part));
            if (kept.Count > Alike) kept.Dequeue();
        }

        return [.. kept.UnorderedItems.Select(one => (Part: one.Element, one.Priority.Off)).OrderBy(one => one.Off).ThenBy(one => one.Part)];
    }

    /// <summary>How far off one part is from another, or as much of it as is more than it may be.</summary>
    private static double OffOf(PartFigures old, PartFigures part, (int Field, Look Look)[] looks, double most)
    {
        var off = 0.0;
        foreach (var (field, look) in looks)
        {
            if (off >= most) break;
            if (old.SaysAs(part, field)) continue;

            // What a catalogue does not say nobody trusts to be alike.
            var isNotSaid = old.TextAt(field) is not null && part.TextAt(field) is null;
            off += look.Weight * (isNotSaid ? NotSaid : FieldTruth.Off(old, part, field) * (part.NumberAt(field) < old.NumberAt(field) ? look.Less : 1));
        }

        return off;
    }
}
