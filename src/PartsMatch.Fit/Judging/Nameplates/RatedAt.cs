using System.Globalization;

namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Joins ratings that a plate gives at each of its volts: 1 HP AT 120 2 HP AT 240, or 120 V 16 FLA 240 V 8 FLA, is one list of volts with one of each rating beside it.</summary>
/// <remarks>
/// Beside 120/240 V the 120 of 1 HP AT 120 contradicts nothing: it is one of the list. A rating that some of the volts have and higher ones do not is left over, for a single figure would stand for all of them.
/// Volts right behind the VA of pilot duty are those of a coil in it, and are left over beside others: 16 FLA 240 V 125 VA 24 V.
/// Volts that no list holds and that no rating, read or not, stands at contradict one another, as any two figures of a field do.
/// </remarks>
internal sealed class RatedAt(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach, Field at, IReadOnlyList<Field> ratings, Choice choice)
{
    private readonly List<Placement> placements = [.. choice.Certain.OrderBy(placement => placement.From)];

    /// <summary>The choice with such ratings joined.</summary>
    public static Choice Joined(PlateText plate, Lexicon lexicon, ValueReader reader, FigureReach reach, Choice choice) =>
        lexicon.RatedAt.Aggregate(choice, (joined, rated) => new RatedAt(plate, lexicon, reader, reach, rated.Key, rated.Value, joined).Joined());

    private Choice Joined()
    {
        var given = placements.FindAll(IsVolts);
        if (given.DistinctBy(one => one.Values[0].Text).Count() < 2) return choice;
        var ofPilot = given.FindAll(one => reach.StandsBehind(one.From, lexicon.UnitsRatedAt[at]));
        if (ofPilot.Count > 0 && ofPilot.Count < given.Count) return new RatedAt(plate, lexicon, reader, reach, at, ratings, choice with { Certain = [.. placements.Except(ofPilot)] }).Joined();
        var each = given.SelectMany(one => Pieces(at, one)).Distinct().ToList();
        var list = given.Find(one => each.TrueForAll(Pieces(at, one).Contains));
        var volts = list is null ? [.. each.OrderBy(Number)] : Pieces(at, list);
        if (reader.Read(at, string.Join(" / ", volts), null) is not { } all || Told(given, volts, list is not null) is not { } told) return choice;
        var certain = from one in placements where !IsOf(one, told, left: true) select IsVolts(one) ? Saying(one, all) : IsOf(one, told, left: false) ? Saying(one, told[one.Values[0].Field]!) : one;
        return choice with { Certain = [.. certain] };
    }

    /// <summary>The ratings as the plate means them; null where its volts contradict one another.</summary>
    private Dictionary<Field, string?>? Told(List<Placement> given, List<string> volts, bool isListed)
    {
        // A plate that begins with a rating has the volts behind each; AT stands behind one, read or not.
        var isBehind = given.Exists(StandsBehind) || Beside(given[0], before: true).Any();
        var ways = ((bool[])(isBehind ? [true] : [true, false])).Select(before => Paired(given, volts, before, carriesOver: false)).ToList();
        if (ways.Find(way => way.Count > 0 && way.Values.All(texts => texts is not null)) is { } whole) return whole;
        var agree = isListed || given.TrueForAll(one => reach.StandsBefore(placements, one.From, ratings));
        if (isBehind) return agree ? Paired(given, volts, before: true, carriesOver: true) : null;
        return ways.Find(way => way.Values.Any(texts => texts is not null)) ?? (agree ? ways.SelectMany(way => way).GroupBy(pair => pair.Key).ToDictionary(pairs => pairs.Key, _ => (string?)null) : null);
    }

    /// <summary>Each rating that stands beside volts, with its figures in the order of these; null where some of the volts have none, or two.</summary>
    private Dictionary<Field, string?> Paired(List<Placement> given, List<string> volts, bool before, bool carriesOver)
    {
        var figures = new Dictionary<Field, Dictionary<string, string>?>();
        foreach (var one in given)
        {
            var own = Pieces(at, one);
            foreach (var rating in Beside(one, before))
            {
                var field = rating.Values[0].Field;
                var pieces = Pieces(field, rating);
                figures.TryAdd(field, []);
                if (pieces.Count != 1 && pieces.Count != own.Count) figures[field] = null;
                for (var row = 0; row < own.Count && figures[field] is { } known; row++)
                {
                    var piece = pieces[Math.Min(row, pieces.Count - 1)];
                    if (!known.TryAdd(own[row], piece) && known[own[row]] != piece) figures[field] = null;
                }
            }
        }

        return figures.ToDictionary(pair => pair.Key, pair => pair.Value is { } known ? Text(pair.Key, volts.ConvertAll(one => known.GetValueOrDefault(one) ?? (carriesOver && !pair.Key.Form.TakesFractions ? OfHigher(known, one) : null))) : null);
    }

    /// <summary>The amps at the next higher volts: a contact breaks as many at fewer. Horsepower, which takes more amps there, is not carried over.</summary>
    private static string? OfHigher(Dictionary<string, string> known, string volts) => known.Where(pair => Number(pair.Key) > Number(volts)).OrderBy(pair => Number(pair.Key)).Select(pair => pair.Value).FirstOrDefault();

    private static double Number(string figure) => double.Parse(figure[..figure.LastIndexOf(' ')], CultureInfo.InvariantCulture);

    private string? Text(Field field, List<string?> figures) => figures.Contains(null) ? null : figures.Distinct().Count() == 1 ? figures[0] : reader.Read(field, string.Join(" / ", figures), null);

    /// <summary>The ratings that touch volts on one side: FLA 16 LRA 96 before AT 120.</summary>
    private IEnumerable<Placement> Beside(Placement volts, bool before)
    {
        var next = volts;
        while (placements.Find(one => before ? one.To == next.From : one.From == next.To) is { Values: [{ } value] } rating && ratings.Contains(value.Field))
        {
            yield return rating;
            next = rating;
        }
    }

    /// <summary>Figures side by side, each with its unit.</summary>
    private static List<string> Pieces(Field field, Placement one)
    {
        var text = one.Values[0].Text;
        var unit = text[text.LastIndexOf(' ')..];
        return [.. text.Split(field.Form.TakesFractions ? " / " : "/").Select(figure => figure.EndsWith(unit, StringComparison.Ordinal) ? figure : $"{figure}{unit}")];
    }

    private bool StandsBehind(Placement volts) => plate.AllWords[volts.From].Exists(match => match.Node.Labels.Exists(label => label.Label.BareBehind.Count > 0));

    private bool IsVolts(Placement one) => one.Values is [{ } value] && value.Field == at;

    private static bool IsOf(Placement one, Dictionary<Field, string?> told, bool left) => one.Values is [{ } value] && told.TryGetValue(value.Field, out var text) && text is null == left;

    private static Placement Saying(Placement one, string text) => one with { Values = [one.Values[0] with { Text = text }] };
}
