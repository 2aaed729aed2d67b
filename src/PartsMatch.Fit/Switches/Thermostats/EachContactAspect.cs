using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What a question about a contact reads of each of a thermostat's contacts.</summary>
/// <typeparam name="TFacet">What it reads of one.</typeparam>
/// <param name="Main">Of its contact; with three wires of the one that ends the defrost.</param>
/// <param name="Fans">Of the fans' contacts, with three wires; null where one set of ratings stands for both.</param>
public readonly record struct EachContact<TFacet>(TFacet Main, TFacet? Fans)
    where TFacet : struct, IEquatable<TFacet>;

/// <summary>A question about a contact, asked of every contact that does the old one's work.</summary>
/// <remarks>
/// With three wires two circuits are switched, each with its own load: both are asked, and the worse answer counts. A fan delay's load comes onto the fans' contacts of a switch with three wires, any other's onto its other contact.
/// </remarks>
/// <typeparam name="TFacet">What it reads of one contact's ratings.</typeparam>
public abstract class EachContactAspect<TFacet> : Aspect<ThermostatSpec, ThermostatSite, EachContact<TFacet>>
    where TFacet : struct, IEquatable<TFacet>
{
    private readonly ContactQuestion<TFacet> question;

    private protected EachContactAspect(ContactQuestion<TFacet> question)
        : base(question.Title, isDeciding: true, question.Source, question.Weight)
    {
        this.question = question;
        Fields = question.Fields with { Besides = [.. question.Fields.Besides, "function", .. FansFields.All] };
    }

    /// <inheritdoc/>
    public override OwnMeasure Measure => question.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields { get; }

    /// <inheritdoc/>
    public override EachContact<TFacet> Read(ThermostatSpec part) =>
        new(question.Read(part), part is { Function: ThermostatFunction.FanDelayAndDefrostEnd, FansContact: { } fans } ? question.Read(fans) : null);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, EachContact<TFacet> facet)
    {
        var on = need.Once(OnEach);
        return need.Plate.Function switch
        {
            ThermostatFunction.FanDelayAndDefrostEnd => question.Answer(on.Main, facet.Main).On("the contact that ends the defrost").OrWorse(OnFans(on.Fans!, facet).Asking(on.HasOwnFansRatings ? FansFields.Asked : FansFields.AskedOfSite).On("the fans' contacts")),
            ThermostatFunction.FanDelay => OnFans(on.Main, facet),
            null when facet.Fans is not null => OnEither(on.Main, facet),
            _ => question.Answer(on.Main, facet.Main),
        };
    }

    private Finding OnFans(OnTheContact on, EachContact<TFacet> facet) => facet.Fans is { } own ? question.Answer(on, own).Asking(FansFields.AskedOfPart) : question.Answer(on, facet.Main);

    /// <summary>Of an old one whose function is not known either contact may be the one.</summary>
    private Finding OnEither(OnTheContact on, EachContact<TFacet> facet)
    {
        var (main, fans) = (question.Answer(on, facet.Main), OnFans(on, facet));
        return main.Verdict == fans.Verdict ? main.OrWorse(fans) : Finding.Unknown(Side.Plate, "function", $"What the old one was there for is not known, and so not which of this one's contacts takes its place.");
    }

    /// <summary>Resistive amps that stand once on an old one are there for what ends the defrost; what runs with the fans is said, or marked by their name.</summary>
    private static Loads OnEach(ThermostatNeed need) => new(
        OnTheContact.Of(need.Plate, need.Site),
        need.Plate.Function == ThermostatFunction.FanDelayAndDefrostEnd ? OnTheContact.Of(need.Plate.FansContact ?? need.Plate with { ResistiveAmps = null }, need.Site.FansContact) : null,
        need.Plate.FansContact is not null);

    /// <summary>What is on each contact of the old one.</summary>
    private sealed record Loads(OnTheContact Main, OnTheContact? Fans, bool HasOwnFansRatings);
}
