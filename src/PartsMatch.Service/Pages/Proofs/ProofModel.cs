using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Pages.Proofs;

/// <summary>Readings at an old part or a new one, and what they say.</summary>
/// <param name="Typed">The need, with the readings.</param>
/// <param name="Complaints">What is wrong with what was typed.</param>
/// <param name="PartNumber">The part that was put in; empty before the swap.</param>
public sealed record ProofModel(NeedTyped Typed, Complaints Complaints, string PartNumber = "")
{
    /// <summary>What readings at the old part say; null while there are none.</summary>
    public Diagnosed? Diagnosed { get; init; }

    /// <summary>What readings at the new part say; null while there are none.</summary>
    public SwapProved? Proved { get; init; }

    public Family Family => Typed.Family;

    public int Status => Complaints.Any ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK;

    public FieldForm Readings => new(NeedTyped.ReadingsPrefix, Family.ReadingsShape, Typed.Readings, Complaints);

    /// <summary>Fields that were read: they stand first.</summary>
    public IReadOnlySet<Field> ReadFields => Family.ReadingsShape.Fields.Where(one => Readings.TextOf(one).Length > 0).ToHashSet();

    /// <summary>Text to read, an old number, a field: anything that says which part it is.</summary>
    public bool HasNeed => !Typed.IsEmpty;

    /// <summary>Whether the text stands on the page to be typed or put right; else fields say all of it.</summary>
    public bool AsksText => !HasNeed || Typed.Text.Length > 0 || Complaints.At("text").Count > 0;

    public string List => Typed.To(Replacements.ReplacementsEndpoints.Path);

    /// <summary>Parts of other kinds that are to be replaced, with the list of what will do.</summary>
    public IEnumerable<(Family Family, string Address)> OtherParts =>
        (Diagnosed?.Diagnosis.MendFirst ?? []).Select(mend => mend.Replace).OfType<OtherPart>().DistinctBy(other => other.Family)
            .Select(other => (other.Family, NeedTyped.Of(other).To(Replacements.ReplacementsEndpoints.Path)));

    /// <summary>The input that holds what is to be read next.</summary>
    public string InputOf(NextReading next) => next.Side switch
    {
        Side.Plate => $"{NeedTyped.PlatePrefix}.{next.Field}",
        Side.Site => $"{NeedTyped.SitePrefix}.{next.Field}",
        _ => $"{NeedTyped.ReadingsPrefix}.{next.Field}",
    };

    public string LabelOf(NextReading next) => (next.Side switch
    {
        Side.Plate or Side.Part => Family.SpecShape,
        Side.Site => Family.SiteShape,
        _ => Family.ReadingsShape,
    }).Find(next.Field)?.Label ?? next.Field;
}
