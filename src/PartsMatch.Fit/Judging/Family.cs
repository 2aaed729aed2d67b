using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Judging.Nameplates;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Judging;

/// <summary>A kind of part with its own spec and site, as edges see it. <see cref="Families.All"/> lists them.</summary>
public abstract class Family
{
    private protected Family(string kind, string title, string plateExample, Shape spec, Shape site, Shape readings, IReadOnlyList<Aspect> aspects, IReadOnlyList<AspectPair> pairs) =>
        (Kind, Title, PlateExample, SpecShape, SiteShape, ReadingsShape, Aspects, Pairs) = (kind, title, plateExample, spec, site, readings, aspects, pairs);

    /// <summary>Its name at every edge, in camel case: motor.</summary>
    public string Kind { get; }

    /// <summary>What a person calls one: "fan motor".</summary>
    public string Title { get; }

    /// <summary>A plate of it as somebody types it.</summary>
    public string PlateExample { get; }

    /// <summary>The fields of a plate or part.</summary>
    public Shape SpecShape { get; }

    /// <summary>The fields of a site.</summary>
    public Shape SiteShape { get; }

    /// <summary>The fields of what is read at a part, before it is condemned and after the swap.</summary>
    public Shape ReadingsShape { get; }

    /// <summary>The questions, in the order in which they are asked.</summary>
    public IReadOnlyList<Aspect> Aspects { get; }

    /// <summary>Those of them that may be worse together than each by itself.</summary>
    public IReadOnlyList<AspectPair> Pairs { get; }

    /// <summary>Aspects that are asked no longer, by name, with the name of the one that asks it now, or null where none does.</summary>
    public abstract IReadOnlyDictionary<string, string?> FormerAspects { get; }

    /// <summary>Reads a spec from named texts, with all complaints at once.</summary>
    public abstract (Spec Spec, IReadOnlyList<Complaint> Complaints) ReadSpec(IEnumerable<NamedText> texts);

    /// <summary>Reads a site from named texts, with all complaints at once.</summary>
    public abstract (Site Site, IReadOnlyList<Complaint> Complaints) ReadSite(IEnumerable<NamedText> texts);

    /// <summary>Reads readings from named texts, with all complaints at once.</summary>
    public abstract (Readings Readings, IReadOnlyList<Complaint> Complaints) ReadReadings(IEnumerable<NamedText> texts);

    /// <summary>Reads a plate's text; never throws.</summary>
    public abstract NameplateReading ReadNameplate(string text);

    /// <summary>A need made of all that was given.</summary>
    public abstract NeedReading ReadNeed(NeedTexts texts);

    /// <summary>A spec with what follows from its readings: what is judged of a catalogue part.</summary>
    public abstract (Spec Spec, IReadOnlyList<Deduction> Deductions) Deduce(Spec spec);

    /// <summary>Readings of a spec that cannot all be true.</summary>
    public abstract IReadOnlyList<Contradiction> Contradictions(Spec spec);

    /// <summary>
    /// A need as it would be if the old part were a known one: what the need knows stays, the rest of the plate is filled in from the known part's spec, with what was deduced of it,
    /// and what follows for the site follows from the whole.
    /// </summary>
    public abstract Need Complete(Need need, Spec machine);

    /// <summary>What will be different once a part runs in the old one's place: estimates with their bands; none when too little is known.</summary>
    public abstract IReadOnlyList<Difference> WillDiffer(Need need, Spec part);

    /// <summary>What people would rather see than read about a part in the old one's place; none of what is not known well enough to be drawn.</summary>
    public abstract IReadOnlyList<Drawing> Drawings(Need need, Spec part);

    /// <summary>How to put a part in, made from all that was found about it, and from what is to be mended first.</summary>
    public abstract InstallNotes NotesFor(Need need, Spec part, FitSheet sheet, IReadOnlyList<MendFirst> mend);

    /// <summary>Whether it is the part: a conclusion, or the reading to take next. Nothing is condemned on an unknown.</summary>
    public abstract Diagnosis BeforeCondemning(Need need, Readings readings);

    /// <summary>Whether a new part runs as it should, and what is likely wrong if it does not.</summary>
    public abstract AfterSwapReport AfterSwap(Need need, Spec part, Readings readings);

    /// <summary>All findings about one part, deductions included.</summary>
    public FitSheet Judge(Need need, Spec part)
    {
        var deduced = Deduce(part).Spec;
        return new([.. Aspects.Select(aspect => new AspectFinding(aspect, aspect.Judge(need, aspect.FacetOf(deduced))))]);
    }
}

/// <summary>A family closed over its types.</summary>
/// <typeparam name="TSpec">Its spec.</typeparam>
/// <typeparam name="TSite">Its site.</typeparam>
/// <typeparam name="TReadings">Its readings.</typeparam>
public sealed class Family<TSpec, TSite, TReadings> : Family
    where TSpec : Spec, new()
    where TSite : Site, new()
    where TReadings : Readings, new()
{
    private readonly FamilyRules<TSpec, TSite, TReadings> rules;
    private readonly NameplateReader reader;
    private readonly (Field Field, PlateLimit Limit)[] limits;

    /// <summary>Names the family and takes its rules.</summary>
    public Family(string kind, string title, FamilyRules<TSpec, TSite, TReadings> rules)
        : base(kind, title, rules.Vocabulary.Example, Shape<TSpec>.Of, Shape<TSite>.Of, Shape<TReadings>.Of, rules.Aspects, rules.Pairs)
    {
        this.rules = rules;
        reader = new(SpecShape, rules.Vocabulary);
        limits = [.. rules.Vocabulary.Limits.Select(limit => (SpecShape.Find(limit.Field)!, limit))];
    }

    /// <inheritdoc/>
    public override IReadOnlyDictionary<string, string?> FormerAspects => rules.FormerAspects;

    /// <inheritdoc/>
    public override (Spec Spec, IReadOnlyList<Complaint> Complaints) ReadSpec(IEnumerable<NamedText> texts) => ReadWithinLimits(texts);

    /// <inheritdoc/>
    public override (Site Site, IReadOnlyList<Complaint> Complaints) ReadSite(IEnumerable<NamedText> texts) => Shape<TSite>.Of.Read(texts);

    /// <inheritdoc/>
    public override (Readings Readings, IReadOnlyList<Complaint> Complaints) ReadReadings(IEnumerable<NamedText> texts) => Shape<TReadings>.Of.Read(texts);

    /// <inheritdoc/>
    public override NameplateReading ReadNameplate(string text)
    {
        var found = reader.Read(text);
        var (plate, complaints) = Shape<TSpec>.Of.Read(found.Fields.Select(field => new NamedText(field.Field.Name, field.Text)));
        return new(plate, found.Fields, found.Leftovers, found.Contradictions, [.. found.Complaints, .. complaints]) { Names = found.Names, Doubted = [.. found.Doubted.Select(field => field.Name)] };
    }

    /// <inheritdoc/>
    public override NeedReading ReadNeed(NeedTexts texts)
    {
        var nameplate = string.IsNullOrWhiteSpace(texts.PlateText) ? null : ReadNameplate(texts.PlateText);
        var (typed, plateComplaints) = ReadWithinLimits(texts.Plate);
        var (typedSite, siteComplaints) = Shape<TSite>.Of.Read(texts.Site);
        var isEntry = nameplate is null && texts is { Plate.Count: 0, OldPart: TSpec };
        var (read, disagreements) = isEntry ? ((TSpec)texts.OldPart!, []) : PlateMerge.Merge(SpecShape, typed, (TSpec?)nameplate?.Plate, (TSpec?)texts.OldPart);
        var (plate, deductions) = Spec.Once(read, rules.Deduce);
        var (site, siteDeductions) = rules.DeduceSite(plate, typedSite);
        return new(new(plate, site) { PlateAsRead = read, Doubted = nameplate?.Doubted ?? [] }, () => [.. nameplate?.Contradictions ?? [], .. disagreements, .. rules.Contradictions(plate), .. rules.SiteContradictions(plate, site)])
        {
            Nameplate = nameplate,
            Deductions = [.. deductions, .. siteDeductions],
            PlateComplaints = plateComplaints,
            SiteComplaints = siteComplaints,
        };
    }

    /// <inheritdoc/>
    public override (Spec Spec, IReadOnlyList<Deduction> Deductions) Deduce(Spec spec) => rules.Deduce((TSpec)spec);

    /// <inheritdoc/>
    public override IReadOnlyList<Contradiction> Contradictions(Spec spec) => rules.Contradictions((TSpec)spec);

    /// <inheritdoc/>
    public override Need Complete(Need need, Spec machine)
    {
        var plate = (TSpec)(need.Plate with { });
        foreach (var field in Typed(need).Once(static known => SpecGaps(known.Plate)))
        {
            if (field.Get(machine) is { } value) field.Set(plate, value);
        }

        return new(plate, rules.DeduceSite(plate, (TSite)need.Site).Site) { Doubted = need.Doubted };
    }

    /// <inheritdoc/>
    public override IReadOnlyList<Difference> WillDiffer(Need need, Spec part) =>
        rules.WillDiffer(Typed(need), rules.Deduce((TSpec)part).Spec);

    /// <inheritdoc/>
    public override IReadOnlyList<Drawing> Drawings(Need need, Spec part) => rules.Drawings(Typed(need), rules.Deduce((TSpec)part).Spec);

    /// <inheritdoc/>
    public override InstallNotes NotesFor(Need need, Spec part, FitSheet sheet, IReadOnlyList<MendFirst> mend) =>
        InstallNotes.Of(sheet, rules.Steps(Typed(need), rules.Deduce((TSpec)part).Spec), mend, SpecShape, SiteShape);

    /// <inheritdoc/>
    public override Diagnosis BeforeCondemning(Need need, Readings readings) => rules.BeforeCondemning(Typed(need), (TReadings)readings);

    /// <inheritdoc/>
    public override AfterSwapReport AfterSwap(Need need, Spec part, Readings readings) => rules.AfterSwap(Typed(need), rules.Deduce((TSpec)part).Spec, (TReadings)readings);

    private static Need<TSpec, TSite> Typed(Need need) => new(need);

    private static Field[] SpecGaps(TSpec spec) => [.. Shape<TSpec>.Of.Fields.Where(field => field.Get(spec) is null)];

    /// <summary>What plates of the family can say holds for what is typed, too: 3 poles and 9999 V are refused, not ranked by.</summary>
    private (TSpec Spec, IReadOnlyList<Complaint> Complaints) ReadWithinLimits(IEnumerable<NamedText> texts)
    {
        var given = texts as IReadOnlyList<NamedText> ?? [.. texts];
        if (given.Count == 0) return (new(), []);
        var (spec, unreadable) = Shape<TSpec>.Of.Read(given);
        List<Complaint> complaints = [.. unreadable];
        foreach (var (field, limit) in limits)
        {
            if (field.Get(spec) is not { } value || limit.Holds(value)) continue;
            var text = given.First(text => !string.IsNullOrWhiteSpace(text.Text) && SpecShape.Find(text.Name) == field).Text.Trim();
            complaints.Add(new(ComplaintCode.Unreadable, field.Name, text, $"{field.Label}: “{text}” is not {limit.Words}."));
            field.Set(spec, null);
        }

        return (spec, complaints);
    }
}
