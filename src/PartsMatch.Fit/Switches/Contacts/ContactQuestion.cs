using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>A question about one contact. Families of one contact ask it once, a switch with several asks it of each.</summary>
/// <typeparam name="TFacet">What it reads of the contact's ratings.</typeparam>
/// <param name="Title">A few words for it.</param>
/// <param name="Source">Where its rule comes from.</param>
/// <param name="Weight">Its hand-set weight.</param>
/// <param name="Fields">The fields that it looks at.</param>
/// <param name="Read">Reads the ratings.</param>
/// <param name="Judge">Holds them against what is on the contact.</param>
internal sealed record ContactQuestion<TFacet>(string Title, Source Source, AspectWeight Weight, LookedAt Fields, Func<ContactSpec, TFacet> Read, Func<OnTheContact, TFacet, Finding> Judge)
    where TFacet : struct, IEquatable<TFacet>
{
    /// <summary>What its shortfall is in its own unit.</summary>
    public required OwnMeasure Measure { get; init; }

    /// <summary>Whether it is about alternating current, as all ratings are that do not say otherwise.</summary>
    public bool IsOfAlternating { get; init; } = true;

    /// <summary>The answer. Beside direct current a rating for alternating current says nothing, but that what it does not bear of the one it bears still less of the other, whose arc no zero of the current puts out.</summary>
    /// <param name="on">What is on the contact.</param>
    /// <param name="facet">Its ratings.</param>
    public Finding Answer(OnTheContact on, TFacet facet) => IsOfAlternating && on.IsDirect ? DirectCurrentQuestion.Beside(Judge(on, facet)) : Judge(on, facet);
}

/// <summary>A question about the one contact of a family's switches.</summary>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
/// <typeparam name="TFacet">What it reads of the contact's ratings.</typeparam>
public abstract class ContactAspect<TSpec, TSite, TFacet> : Aspect<TSpec, TSite, TFacet>
    where TSpec : ContactSpec
    where TSite : ContactSite
    where TFacet : struct, IEquatable<TFacet>
{
    private readonly ContactQuestion<TFacet> question;

    private protected ContactAspect(ContactQuestion<TFacet> question)
        : base(question.Title, isDeciding: true, question.Source, question.Weight) => this.question = question;

    /// <inheritdoc/>
    public override OwnMeasure Measure => question.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields => question.Fields;

    /// <inheritdoc/>
    public override TFacet Read(TSpec part) => question.Read(part);

    /// <inheritdoc/>
    public override Finding Judge(Need<TSpec, TSite> need, TFacet facet) => question.Answer(OnTheContact.Of(need), facet);
}
