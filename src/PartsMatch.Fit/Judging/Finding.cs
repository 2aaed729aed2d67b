using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging;

/// <summary>How far inside (positive) or outside (negative) its limit something lies.</summary>
/// <param name="Value">The distance to the limit.</param>
/// <param name="Unit">Its unit: V, %, mm; µF.</param>
public readonly record struct Margin(double Value, string Unit)
{
    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Value:+0.##;−0.##;0} {Unit}");

    /// <summary>The same in the units that were chosen.</summary>
    /// <param name="units">The units.</param>
    public string Text(Units units)
    {
        if (!ChosenUnits.Change(Unit, units)) return ToString();
        var figure = ChosenUnits.In(Value, Unit, units);
        return FormattableString.Invariant($"{figure.Value:+0.####;−0.####;0} {figure.Unit}");
    }
}

/// <summary>A field whose value would decide an unknown.</summary>
/// <param name="Side">Whose field it is.</param>
/// <param name="Field">The field's name.</param>
public sealed record Missing(Side Side, string Field);

/// <summary>An aspect's answer about one facet: verdict, how near to the limit, what to change, why.</summary>
/// <remarks>
/// Sentences are kept unformed and formed invariantly when shown: a query judges far more than it shows.
/// The shortfall is dimensionless: 0 where nobody would give it a thought, 1 at the limit, over 1 beyond it.
/// </remarks>
public sealed record Finding
{
    /// <summary>Without a unit where there is none: a query makes hundreds of findings, and so each is smaller.</summary>
    private readonly Margin margin;

    private Finding(Verdict verdict, Reason sentence) => (Verdict, Reason) = (verdict, sentence);

    /// <summary>The answer.</summary>
    public Verdict Verdict { get; private init; }

    /// <summary>Why, in one sentence that names the limit.</summary>
    /// <exception cref="InvalidOperationException">It was judged unread (<see cref="Aspect.JudgeUnread"/>), and has none.</exception>
    public string Sentence => Reason.ToString();

    /// <summary>0 where nobody would give it a thought, 1 at the limit.</summary>
    public double Shortfall { get; init; }

    /// <summary>The distance to the limit, where it is a number.</summary>
    public Margin? Margin
    {
        get => margin.Unit is null ? null : margin;
        init => margin = value ?? default;
    }

    /// <summary>What must be changed or checked on the part; of an unknown, what most likely must.</summary>
    public IReadOnlyList<Change> Changes { get; private init; } = [];

    /// <summary>What is missing when the answer is unknown.</summary>
    public IReadOnlyList<Missing> Missing { get; private init; } = [];

    /// <summary>A caution that goes with an answer that meets; null when there is none.</summary>
    public FormattableString? CautionWords { get; init; }

    /// <summary>The caution, formed invariantly; null when there is none.</summary>
    public string? Caution => CautionWords is null ? null : FormattableString.Invariant(CautionWords);

    /// <summary>The stage of the job at which the caution matters.</summary>
    public Stage CautionAt { get; init; } = Stage.StartAndCheck;

    private Reason Reason { get; init; }

    /// <summary>The same answer where it meets, once these changes are made.</summary>
    public Finding With(IReadOnlyList<Change> changes) => this with { Verdict = changes.Count == 0 ? Verdict.Meets : Verdict.MeetsWithChanges, Changes = changes };

    /// <summary>The same answer, said of one speed, setting or the like: "On low, 1140 rpm: …".</summary>
    /// <param name="where">What it is said of; formed only when it is shown.</param>
    public Finding On(object where) => this with { Reason = $"On {where}: {new Clause(Reason)}" };

    /// <summary>The same answer with a further sentence behind it: what it rests on.</summary>
    /// <param name="further">The sentence.</param>
    public Finding Then(Reason further) => this with { Reason = $"{Reason} {further}" };

    /// <summary>The same answer, where what is missing stands in other fields.</summary>
    /// <param name="field">The field that each stands in.</param>
    public Finding Asking(Func<Missing, Missing> field) => this with { Missing = [.. Missing.Select(field)] };

    /// <summary>The less favourable of this answer and another: by verdict, and where that is the same by shortfall.</summary>
    /// <param name="other">The other one.</param>
    public Finding OrWorse(Finding other) => other.Verdict > Verdict || (other.Verdict == Verdict && other.Shortfall > Shortfall) ? other : this;

    /// <inheritdoc/>
    public override string ToString() => Reason.IsGiven ? $"{Verdict}: {Reason}" : $"{Verdict}, judged unread";

    /// <summary>The part meets the aspect as it is.</summary>
    public static Finding Meets(Reason sentence) => new(Verdict.Meets, sentence);

    /// <summary>The part meets the aspect once the changes are made; with none it simply meets it.</summary>
    public static Finding MeetsWith(IReadOnlyList<Change> changes, Reason sentence) =>
        changes.Count == 0 ? Meets(sentence) : new(Verdict.MeetsWithChanges, sentence) { Changes = changes };

    /// <summary>A field is missing, and its possible values give different answers.</summary>
    public static Finding Unknown(Side side, string field, Reason sentence) => new(Verdict.Unknown, sentence) { Missing = [new(side, field)] };

    /// <summary>The same, where what is known already tells the change or check that most likely follows: nobody shall have to ask again before hearing of it.</summary>
    public static Finding Unknown(Side side, string field, IReadOnlyList<Change> likely, Reason sentence) => Unknown(side, field, sentence) with { Changes = likely };

    /// <summary>The part does not meet the aspect.</summary>
    public static Finding Fails(Reason sentence) => new(Verdict.Fails, sentence) { Shortfall = 1 };

    /// <summary>The part does not meet the aspect, by so much.</summary>
    public static Finding Fails(Margin by, Reason sentence) => new(Verdict.Fails, sentence) { Shortfall = 1, Margin = by };

    /// <summary>A sentence inside another: it starts without its capital.</summary>
    private sealed record Clause(Reason Sentence)
    {
        public override string ToString() => InSentence.Of(Sentence.ToString());
    }
}
