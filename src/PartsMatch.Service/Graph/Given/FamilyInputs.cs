using GraphQL.Types;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Given;

/// <summary>The input types of every family, made from its shapes, once for the whole schema.</summary>
internal sealed class FamilyInputs
{
    public FamilyInputs()
    {
        var specs = Families.All.ToDictionary(family => family, family => new TextsInput(
            family.TypeName("SpecInput"), $"What is known of a {family.Title}, as text. What is left out is unknown.", family.SpecShape));
        var sites = Families.All.ToDictionary(family => family, family => new TextsInput(
            family.TypeName("SiteInput"), $"What a {family.Title} will meet where it is put in, as text. What is left out is unknown.", family.SiteShape));
        var readings = Families.All.ToDictionary(family => family, family => new TextsInput(
            family.TypeName("ReadingsInput"), $"What was read at a {family.Title}, as text: at the old one before it is condemned, at the new one after the swap. What is left out was not read.", family.ReadingsShape));
        Need = new("NeedInput", "What is to be replaced, and where.", family => new FamilyNeedInput(family, specs[family], sites[family]), (_, given) => (NeedGiven)given);
        Site = new("SiteInput", "What the new part will meet.", family => sites[family], (family, given) => new(family, (IReadOnlyList<NamedText>)given));
        Readings = new("ReadingsInput", "What was read at a part.", family => readings[family], (family, given) => new(family, (IReadOnlyList<NamedText>)given));
        Spec = new("SpecInput", "What a part is.", family => specs[family], (family, given) => new(family, (IReadOnlyList<NamedText>)given));
    }

    public OneOfFamilies<NeedGiven> Need { get; }

    public OneOfFamilies<SiteGiven> Site { get; }

    public OneOfFamilies<ReadingsGiven> Readings { get; }

    public OneOfFamilies<SpecGiven> Spec { get; }
}

/// <summary>A one-of: exactly one key, the kind of part.</summary>
/// <typeparam name="T">What each key's value is read into.</typeparam>
internal sealed class OneOfFamilies<T> : InputObjectGraphType
    where T : class
{
    private readonly Func<Family, object, T> _read;

    public OneOfFamilies(string name, string description, Func<Family, IGraphType> typeOf, Func<Family, object, T> read)
    {
        (Name, Description, IsOneOf, _read) = (name, $"{description} Exactly one key: the kind of part.", true, read);
        foreach (var family in Families.All)
        {
            AddField(new() { Name = family.Kind, Description = $"For a {family.Title}.", ResolvedType = typeOf(family) });
        }
    }

    public override object ParseDictionary(IDictionary<string, object?> value)
    {
        var (kind, given) = value.Single();
        return _read(Families.Find(kind)!, given!);
    }
}

/// <summary>One family's need.</summary>
internal sealed class FamilyNeedInput : InputObjectGraphType
{
    private const string Plate = "plate";
    private const string PlateText = "plateText";
    private const string OldPartNumber = "oldPartNumber";
    private const string SiteName = "site";

    private readonly Family _family;

    public FamilyNeedInput(Family family, TextsInput spec, TextsInput site)
    {
        _family = family;
        Name = family.TypeName("NeedInput");
        Description = $"A {family.Title} to be replaced, and where. Fields of the plate outrank its text, and that outranks the old part's catalogue entry; what disagrees is reported.";
        AddField(new() { Name = Plate, Description = "What the old part's plate says, field by field.", ResolvedType = spec });
        Field<StringGraphType>(PlateText).Description("The plate's text as it stands there, in any order.");
        Field<IdGraphType>(OldPartNumber).Description("The old part's number, when the catalogue knows it.");
        AddField(new() { Name = SiteName, Description = "What the new part will meet.", ResolvedType = site });
    }

    public override object ParseDictionary(IDictionary<string, object?> value) => new NeedGiven(
        _family,
        TextsInput.Of(value, Plate),
        value.TryGetValue(PlateText, out var text) ? (string?)text : null,
        value.TryGetValue(OldPartNumber, out var number) ? number?.ToString() : null,
        TextsInput.Of(value, SiteName));
}
