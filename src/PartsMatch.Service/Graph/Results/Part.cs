using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Graph.Results;

[Description("A catalogue entry.")]
internal sealed class Part(CatalogueEntry entry)
{
    [Id]
    [Description("Its part number. Dashes, spaces and case do not tell numbers apart.")]
    public string Number => entry.Stored.Number;

    [Description("What kind of part it is.")]
    public Family Kind => entry.Family;

    [Description("Who makes it.")]
    public string Maker => entry.Stored.Maker;

    [Description("A few words for it.")]
    public string Title => entry.Stored.Title;

    [Description("Whether it may still be bought.")]
    public PartStatus Status => entry.Stored.Status;

    [Description("Grows by 1 with every change; changePart and retirePart take the one that was read.")]
    public int Version => entry.Stored.Version;

    [Description("What it is, for programs that know its family.")]
    [OutputType(typeof(PartSpecUnion))]
    public SpecOut Spec => new(entry.Family, entry.Spec);

    [Description("What it is, for programs that do not know its family: each known field, in the family's order.")]
    public IReadOnlyList<PartField> Fields([Description("The units to write the values in.")] Units units = Units.AsGiven) => PartField.AllOf(entry.Family, entry.Spec, units);

    [Description("Parts that replaced it, and who says so.")]
    public IEnumerable<SupersededBy> SupersededBy => entry.Stored.SupersededBy.Select(by => new SupersededBy(by));

    [Description("How many are at hand, as last told; null when nobody told.")]
    public int? OnHand => entry.Stock?.OnHand;

    [Description("What it costs, as last told; null when nobody told.")]
    public Price? Price => Price.Of(entry.Stock);
}

[Name("Supersession")]
[Description("That a part was replaced by another. Evidence beside the fit; it never outvotes a failed aspect.")]
internal sealed class SupersededBy(Supersession by)
{
    [Id]
    [Description("The number of the part that replaced it.")]
    public string Number => by.Number;

    [Description("Who says so.")]
    public string SaidBy => by.SaidBy;

    [Description("Since when.")]
    public DateOnly On => by.On;
}

[Description("A price.")]
internal sealed class Price(decimal amount, string currency)
{
    [Description("The amount, in the currency given beside it.")]
    public decimal Amount => amount;

    [Description("The currency's code of three letters (ISO 4217).")]
    public string Currency => currency;

    internal static Price? Of(StockLine? line) => line?.Price is { } amount ? new(amount, line.Currency) : null;
}
