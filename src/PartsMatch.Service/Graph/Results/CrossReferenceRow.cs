using System.ComponentModel;
using GraphQL;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Lists;
using PartsMatch.Service.Graph.Transport;

namespace PartsMatch.Service.Graph.Results;

[Description("What one old part number of a list came to.")]
internal sealed class CrossReferenceRow(string partNumber, Replaced replaced)
{
    [Id]
    [Description("The number, as it was given.")]
    public string PartNumber => partNumber;

    [Description("The old part's catalogue entry: also who says what replaced it. Null when there is none of that number.")]
    public Part? OldPart => replaced.Old is { } entry ? new(entry) : null;

    [Description("The best parts on offer that may do the job, best first: the first ones that replacements answers to this number alone.")]
    public IEnumerable<Replacement> Replacements([Description("How many at most, 1 to 5.")] int first = 1) => first is >= 1 and <= CrossReference.MostParts
        ? replaced.Parts.Take(first).Select(one => new Replacement(one.Part, one.Ranked))
        : throw new RefusedError(new Refusal(Codes.FirstOutOfRange, "first", FormattableString.Invariant($"first is 1 to {CrossReference.MostParts} here.")));

    [Description("Why there is none, or what is not known yet; null when there is nothing to say.")]
    public string? Why => replaced.Why is { Length: > 0 } why ? why : null;

    [Description("A code that programs can rely on, when nothing could be asked about this number: PART_NOT_FOUND, KIND_MISMATCH. Null otherwise, also when nothing fits.")]
    public string? Code => replaced.Code;

    /// <summary>The rows of a list, worked out on all cores.</summary>
    internal static async Task<IEnumerable<CrossReferenceRow>> AllOfAsync(CounterNow now, IReadOnlyList<string> partNumbers, SiteGiven? site, CancellationToken stop)
    {
        if (site is not null && Needs.Refusals(site.Family.ReadSite(site.Texts).Complaints, $"site.{site.Family.Kind}").ToList() is { Count: > 0 } wrong) throw new RefusedError(wrong);
        var all = partNumbers.Select(number => (Given: number, Old: new OldPart(site?.Family, number.Trim(), string.Empty, site?.Texts ?? [])));
        var rows = new List<CrossReferenceRow>(partNumbers.Count);
        await foreach (var (entry, answer) in InOrder.AnswerAsync(all, one => CrossReference.KeyOf(one.Old), one => CrossReference.Replace(now, one.Old, CrossReference.MostParts), stop))
        {
            rows.Add(new(entry.Given, answer));
        }

        return rows;
    }
}
