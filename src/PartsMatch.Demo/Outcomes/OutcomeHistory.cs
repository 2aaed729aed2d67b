using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo.Outcomes;

/// <summary>
/// What happened in the made-up district: people mostly put in what looks most like the old part, know some of what no record tells and so keep weak parts out of harsh places, and times get harder late.
/// </summary>
public static class OutcomeHistory
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

    /// <summary>A family's outcomes, the oldest first, the same every time.</summary>
    public static IReadOnlyList<DemoOutcome> Of(FamilyParts family, int seed)
    {
        var draw = new Draw(seed);
        var places = Place.Draw(draw);
        var truth = family.Family.Truth(draw);
        List<PartFigures> parts = [.. family.Parts.Select(part => new PartFigures(family.Family, part))];
        List<double> quality = [.. parts.Select(_ => draw.Chance(0.05) ? draw.Between(0.2, 0.9) : draw.Between(0, 0.02))];
        var looks = family.Family.Shape.Fields.Select(field => family.Family.Looks.GetValueOrDefault(field.Name, Look.Usual)).ToArray();
        var alike = parts.AsParallel().AsOrdered().Select(old => MostAlike(old, parts, looks)).ToList();
        DateOnly[] days = [.. Enumerable.Range(0, family.Family.Outcomes).Select(_ => draw.Day(First, Last)).Order()];
        return [.. days.Select((day, index) => One(family.Family, index, day, draw, places, parts, quality, alike, truth))];
    }

    private static DemoOutcome One(FamilyCatalogue family, int index, DateOnly day, Draw draw, IReadOnlyList<Place> places, List<PartFigures> parts, List<double> quality, List<int[]> alike, HiddenTruth truth)
    {
        var place = draw.Pick(places);
        var failed = draw.Whole(0, parts.Count - 1);
        var site = family.SiteOf(parts[failed], place, draw);
        var drift = day < Drifts ? 1 : 1.25;

        // The rank in likeness is what people go by; the better they are, the less they miss, and the more they have heard of a part.
        var chosen = draw.Some(alike[failed], Math.Min(AtHand, alike[failed].Length))
            .MinBy(part => (Array.IndexOf(alike[failed], part) * 0.3 * (0.5 + place.Skill)) + (place.Skill * place.Harshness * 3 * quality[part]) + (draw.Between(0, 1) * 2));
        var chances = truth.Of(parts[failed], parts[chosen], place, quality[chosen], drift);
        var fell = draw.Between(0, 1);
        var (result, reason) = fell < chances.Right ? ("right first time", string.Empty)
            : fell < chances.Right + chances.CameBack ? ("came back", draw.Of(("failed again", 6), ("did not do the job", 4)))
            : ("reworked", draw.Of(("more to change than foreseen", 7), ("something was missing", 3)));
        return new(FormattableString.Invariant($"{family.Kind}-{index + 1:00000}"), day, place.Name, parts[failed].Part.Number, parts[chosen].Part.Number, site, result, reason, chances.Right);
    }

    private static int[] MostAlike(PartFigures old, List<PartFigures> parts, Look[] looks)
    {
        return [.. parts.Index().Where(one => one.Item != old && !one.Item.Part.IsDiscontinued)
            .Select(one => (one.Index, Off: OffOf(one.Item)))
            .OrderBy(one => one.Off).ThenBy(one => one.Index).Take(Alike).Select(one => one.Index)];

        double OffOf(PartFigures part)
        {
            var off = 0.0;
            for (var field = 0; field < looks.Length; field++)
            {
                // What a catalogue does not say nobody trusts to be alike.
                var isNotSaid = old.TextAt(field) is not null && part.TextAt(field) is null;
                off += looks[field].Weight * (isNotSaid ? NotSaid : FieldTruth.Off(old, part, field) * (part.NumberAt(field) < old.NumberAt(field) ? looks[field].Less : 1));
            }

            return off;
        }
    }
}
