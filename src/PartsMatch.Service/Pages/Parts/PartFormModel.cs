using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Store;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>A part that is added or changed: what was typed, what is wrong with it, and what is in its way.</summary>
/// <param name="Typed">What was typed.</param>
/// <param name="Present">The part that is changed; null for a new one.</param>
/// <param name="Complaints">What is wrong.</param>
public sealed record PartFormModel(PartTyped Typed, StoredPart? Present, Complaints Complaints)
{
    /// <summary>The input that holds the version before the conflict, and the button that takes over what was changed there.</summary>
    public const string BeganName = "began";
    public const string Then = "then";
    public const string Theirs = "theirs";

    public static IReadOnlyList<Family> Kinds => Families.All;

    /// <summary>Someone else changed it meanwhile.</summary>
    public ConflictModel? Conflict { get; init; }

    /// <summary>The part that has the number already.</summary>
    public StoredPart? Taken { get; init; }

    /// <summary>A sentence above the form; null when there is nothing to say.</summary>
    public string? Notice { get; init; }

    public Family Family => Typed.Family;

    public string Heading => Present is null ? $"Add a {Family.Title}" : $"Change {Present.Number}";

    public string Action => Present is null ? PartAddress.New : PartAddress.Of(Present.Number, PartAddress.Change);

    /// <summary>Where one goes who saves nothing.</summary>
    public string Away => Present is null ? PartAddress.List : PartAddress.Of(Present.Number);

    public string Button => Present is null ? "Add it" : Conflict is null ? "Save" : FormattableString.Invariant($"Save mine over version {Typed.Version}");

    public FieldForm Spec => new(PartTyped.SpecPrefix, Family.SpecShape, Typed.Spec, Complaints) { Known = Conflict?.Known ?? new Dictionary<string, string>() };

    /// <summary>What replaced it, and a row for one more.</summary>
    public IEnumerable<SupersessionTyped> Supersessions => Typed.SupersededBy.Append(SupersessionTyped.Blank);

    /// <summary>Of refusals of a part: their places become the names of inputs, and are named where the sentence alone would not do.</summary>
    public static Complaints Wrong(IEnumerable<Refusal> refusals) => Complaints.Of(refusals.Select(Named), at => at.Split('.', 3) switch
    {
        [PartTyped.SpecPrefix, _, var field] => $"{PartTyped.SpecPrefix}.{field}",
        [PartTyped.SpecPrefix] or [""] => PartTyped.NumberName,
        _ => at,
    });

    private static Refusal Named(Refusal refusal) => refusal.At is PartTyped.MakerName or PartTyped.TitleName ? refusal with { Message = $"{Wording.Capital(refusal.At)}: {refusal.Message}" } : refusal;
}

/// <summary>A part that is to be retired: asked once more, and again when it was changed meanwhile.</summary>
/// <param name="Part">The part as it is.</param>
/// <param name="InTheWay">Why nothing was done; null when nobody tried.</param>
/// <param name="Since">What was changed since the question was asked.</param>
public sealed record RetireModel(StoredPart Part, string? InTheWay, IReadOnlyList<ChangedText> Since)
{
    public bool IsRetired => Part.Status == PartStatus.Retired;

    public string Address => PartAddress.Of(Part.Number);

    public string Action => PartAddress.Of(Part.Number, PartAddress.Retire);
}
