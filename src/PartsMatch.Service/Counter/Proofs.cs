using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter;

/// <summary>What readings at an old part say.</summary>
public sealed record Diagnosed(NeedRead Need, Diagnosis Diagnosis);

/// <summary>What readings at a new part say.</summary>
public sealed record SwapProved(NeedRead Need, CatalogueEntry Part, AfterSwapReport Report);

/// <summary>What is asked with a meter in hand: is it the part, and is the new one right?</summary>
internal sealed class Proofs(Catalogues catalogues)
{
    public Answer<Diagnosed> BeforeCondemning(NeedGiven given, ReadingsGiven readings)
    {
        var need = Needs.Read(catalogues.Shelf, given);
        var (read, wrong) = Read(given.Family, readings);
        return need.IsGiven && read is not null
            ? new Diagnosed(need.Value, given.Family.BeforeCondemning(need.Value.Reading.Need, read))
            : Answer<Diagnosed>.Refused([.. need.Refusals, .. wrong]);
    }

    public Answer<SwapProved> AfterSwap(NeedGiven given, string partNumber, ReadingsGiven readings)
    {
        var shelf = catalogues.Shelf;
        var need = Needs.Read(shelf, given);
        var part = Needs.Find(shelf, given.Family, partNumber, "partNumber");
        var (read, wrong) = Read(given.Family, readings);
        return need.IsGiven && part.IsGiven && read is not null
            ? new SwapProved(need.Value, part.Value, given.Family.AfterSwap(need.Value.Reading.Need, part.Value.Spec, read))
            : Answer<SwapProved>.Refused([.. need.Refusals, .. part.Refusals, .. wrong]);
    }

    /// <summary>The readings, when they are of the need's kind and all of them could be read.</summary>
    public static (Readings? Readings, IReadOnlyList<Refusal> Wrong) Read(Family family, ReadingsGiven given)
    {
        var (readings, complaints) = given.Family.ReadReadings(given.Texts);
        List<Refusal> wrong = [.. Needs.Refusals(complaints, $"readings.{given.Family.Kind}")];
        if (given.Family != family) wrong.Insert(0, new(Codes.KindMismatch, $"readings.{given.Family.Kind}", $"The need is for a {family.Title}; these are readings at a {given.Family.Title}."));
        return (wrong.Count == 0 ? readings : null, wrong);
    }
}
