using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>A need that can be judged, and the old part's entry when its number was given.</summary>
/// <param name="Family">The family.</param>
/// <param name="Reading">What was read of what was given.</param>
/// <param name="OldPart">The old part's entry.</param>
/// <param name="Shelf">The catalogue that it is asked of.</param>
public sealed record NeedRead(Family Family, NeedReading Reading, CatalogueEntry? OldPart, Shelf Shelf)
{
    private readonly Lazy<Completions> _completions = new(() => Shelf.MachinesOf(Family).Complete(Reading.Need));

    /// <summary>What the need may be, where its plate leaves something open.</summary>
    public Completions Completions => _completions.Value;

    /// <summary>The key of the old part's number, where it is discontinued and none is known to be at hand: it replaces nothing, itself least. Null otherwise: the very part, still at hand, is the best there is.</summary>
    public string? OldPartHadNoMore => OldPart is { Stored.Status: PartStatus.Discontinued, Stock: not { OnHand: > 0 } } ? Shelf.NumberInRanking(OldPart.Stored.Number) : null;
}

/// <summary>Makes a need of what was given, or says all that is wrong with it, at places such as need.motor.plate.power.</summary>
internal static class Needs
{
    private const string Plate = "plate";
    private const string PlateText = "plateText";
    private const string OldPartNumber = "oldPartNumber";
    private const string Site = "site";

    public static Answer<NeedRead> Read(Shelf shelf, NeedGiven given)
    {
        var family = given.Family;
        var oldPart = given.OldPart is { } known ? OfKind(family, known, OldPartNumber)
            : string.IsNullOrWhiteSpace(given.OldPartNumber) ? null : Find(shelf, family, given.OldPartNumber, OldPartNumber);
        var reading = family.ReadNeed(new(given.PlateText, given.Plate, given.Site, oldPart?.Value?.Spec));
        var saysNothing = reading.Nameplate is { Fields.Count: 0, Contradictions.Count: 0 } && given.Plate.Count + given.Site.Count == 0 && oldPart is null;
        List<Refusal> refusals =
        [
            .. Refusals(reading.PlateComplaints, Plate),
            .. (reading.Nameplate?.Complaints ?? []).Where(complaint => saysNothing || IsOfTheWhole(complaint)).Select(complaint => new Refusal(complaint.Code, PlateText, complaint.Message)),
            .. oldPart?.Refusals ?? [],
            .. Refusals(reading.SiteComplaints, Site),
        ];
        return refusals.Count == 0 ? new NeedRead(family, reading, oldPart?.Value, shelf) : Answer<NeedRead>.Refused([.. refusals.Select(refusal => refusal.Under($"need.{family.Kind}"))]);
    }

    /// <summary>The part of a number, retired ones too, when it is of the right kind.</summary>
    public static Answer<CatalogueEntry> Find(Shelf shelf, Family family, string number, string at) =>
        shelf.Find(number) is { } entry ? OfKind(family, entry, at) : NotFound(number, at);

    public static Refusal NotFound(string number, string at) => new(Codes.PartNotFound, at, $"The catalogue has no part “{number}”.");

    public static IEnumerable<Refusal> Refusals(IEnumerable<Complaint> complaints, string place) =>
        complaints.Select(complaint => new Refusal(complaint.Code, complaint.Field, complaint.Message).Under(place));

    private static Answer<CatalogueEntry> OfKind(Family family, CatalogueEntry entry, string at) => entry.Family == family
        ? entry
        : new Refusal(Codes.KindMismatch, at, $"{entry.Stored.Number} is a {entry.Family.Title}; what is asked for is a {family.Title}.");

    /// <summary>A single field that could not be read is shown with the reading, and the need stands without it; a text that was not read at all is refused, and so is one without a single reading when nothing else is given.</summary>
    public static bool IsOfTheWhole(Complaint complaint) => complaint.Code is ComplaintCode.TooLong or ComplaintCode.Empty;
}
