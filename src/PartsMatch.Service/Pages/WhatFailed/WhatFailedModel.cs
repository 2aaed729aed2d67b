using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Pages.WhatFailed;

/// <summary>The first page: what was typed, how it was read, and what is wrong with it.</summary>
public sealed class WhatFailedModel
{
    public WhatFailedModel(NeedTyped typed, Shelf shelf, Complaints complaints, Units units)
    {
        (Typed, Complaints) = (typed, complaints);
        OldPart = typed.OldNumber.Length > 0 && shelf.Find(typed.OldNumber) is { } old && old.Family == typed.Family ? old : null;
        Nameplate = typed.Shown.Length > 0 ? Family.ReadNameplate(typed.Shown) : null;
        Reading = typed.IsEmpty ? null : Family.ReadNeed(new(null, typed.Plate, typed.Site, OldPart?.Spec));
        Successors = OldPart is { } superseded ? SuccessorHere.Of(shelf, superseded, typed, Reading!.Need) : [];
        Plate = new(NeedTyped.PlatePrefix, Family.SpecShape, typed.Plate, complaints) { Known = Known(Side.Plate, units) };
        Site = new(NeedTyped.SitePrefix, Family.SiteShape, typed.Site, complaints) { Known = Known(Side.Site, units) };
    }

    public NeedTyped Typed { get; }

    public Complaints Complaints { get; }

    public Family Family => Typed.Family;

    public CatalogueEntry? OldPart { get; }

    /// <summary>What superseded the old part.</summary>
    public IReadOnlyList<SuccessorHere> Successors { get; }

    public NameplateReading? Nameplate { get; }

    public NeedReading? Reading { get; }

    /// <summary>Whether anything is shown back: an unknown number, a text that is not read yet or a field of the site alone say nothing of the old part.</summary>
    public bool IsRead => Reading is not null && (Marked.Count + ReadFields.Count > 0 || OldPart is not null || Reading.Contradictions.Count > 0);

    public FieldForm Plate { get; }

    public FieldForm Site { get; }

    public IReadOnlyList<Stretch> Marked => Nameplate is null ? [] : MarkedText.Of(Typed.Shown, Nameplate);

    /// <summary>Fields of the plate that are known: they stand first.</summary>
    public IReadOnlyList<Field> ReadFields => [.. Family.SpecShape.Fields.Where(one => Plate.TextOf(one).Length > 0)];

    /// <summary>Fields that say otherwise than the plate's text: what is typed is used, and the disagreement is told.</summary>
    public IEnumerable<(Field Field, string Used, string Read)> SaidOtherwise => Nameplate is null ? [] : Nameplate.Fields
        .Select(read => (read.Field, Used: Plate.TextOf(read.Field), read.Text))
        .Where(one => one.Field.Form.ReadAny(one.Used) is { IsRead: true } used && !used.Value!.Equals(one.Field.Get(Nameplate.Plate)));

    public IEnumerable<Deduction> Deductions(Side side) => Reading?.Deductions.Where(one => one.Side == side) ?? [];

    public static IReadOnlyList<Family> Kinds => Families.All;

    private Dictionary<string, string> Known(Side side, Units units)
    {
        var shape = side == Side.Plate ? Family.SpecShape : Family.SiteShape;
        var known = Deductions(side).ToDictionary(one => one.Field, one => $"Taken as {shape.Find(one.Field)?.InUnits(one.Text, units) ?? one.Text}: {one.Because}.");
        if (side != Side.Plate || OldPart is null) return known;
        foreach (var (name, text) in shape.Write(OldPart.Spec, units)) known[name] = $"{OldPart.Stored.Number} in the catalogue: {text}.";
        return known;
    }
}
