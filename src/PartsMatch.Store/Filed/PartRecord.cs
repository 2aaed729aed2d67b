using System.Buffers.Binary;
using System.Text;

namespace PartsMatch.Store.Filed;

/// <summary>A part as bytes in a block of the parts file, and back.</summary>
/// <remarks>Number's key, kind, then the rest: who looks for a number or a kind passes over the others by their length.</remarks>
internal static class PartRecord
{
    private const int DecimalBytes = 16;

    public static void Write(BinaryWriter to, KeptPart kept, TextTable texts)
    {
        var (part, stock) = kept;
        to.Write(PartNumber.Key(part.Number));
        to.Write7BitEncodedInt(texts.CodeOf(part.Kind));
        to.Write(part.Number);
        to.Write7BitEncodedInt(texts.CodeOf(part.Maker));
        to.Write(part.Title);
        to.Write((byte)part.Status);
        to.Write7BitEncodedInt(part.Version);
        to.Write7BitEncodedInt(part.Spec.Count);
        foreach (var text in part.Spec) to.Write7BitEncodedInt(texts.CodeOf(text));
        to.Write7BitEncodedInt(part.SupersededBy.Count);
        foreach (var by in part.SupersededBy)
        {
            to.Write(by.Number);
            to.Write7BitEncodedInt(texts.CodeOf(by.SaidBy));
            to.Write7BitEncodedInt(by.On.DayNumber);
        }

        to.Write(stock is not null);
        if (stock is not null) Write(to, stock, texts);
    }

    /// <summary>Reads what follows key and kind.</summary>
    public static KeptPart Read(ref RecordBytes from, string kind, TextTable texts)
    {
        var number = from.Text();
        var part = new StoredPart(
            number, kind, texts.Word(from.Number()), from.Text(), (PartStatus)from.Byte(), from.Number(), Spec(ref from, texts), SupersededBy(ref from, texts));
        return new(part, from.Byte() == 0 ? null : Stock(ref from, number, texts));
    }

    private static void Write(BinaryWriter to, StockLine stock, TextTable texts)
    {
        to.Write7BitEncodedInt(texts.CodeOf(stock.Currency));
        to.Write(stock.Price is not null);
        if (stock.Price is { } price) to.Write(price);
        to.Write(stock.OnHand is not null);
        if (stock.OnHand is { } onHand) to.Write7BitEncodedInt(onHand);
    }

    private static StockLine Stock(ref RecordBytes from, string number, TextTable texts)
    {
        var currency = texts.Word(from.Number());
        decimal? price = from.Byte() == 0 ? null : Decimal(from.Bytes(DecimalBytes));
        int? onHand = from.Byte() == 0 ? null : from.Number();
        return new(number, price, currency, onHand);
    }

    private static NamedText[] Spec(ref RecordBytes from, TextTable texts)
    {
        var spec = new NamedText[from.Number()];
        for (var at = 0; at < spec.Length; at++) spec[at] = texts.Named(from.Number());
        return spec;
    }

    private static Supersession[] SupersededBy(ref RecordBytes from, TextTable texts)
    {
        var all = new Supersession[from.Number()];
        for (var at = 0; at < all.Length; at++) all[at] = new(from.Text(), texts.Word(from.Number()), DateOnly.FromDayNumber(from.Number()));
        return all;
    }

    /// <summary>As <see cref="BinaryWriter"/> writes it: with its scale, so that 84.50 does not become 84.5.</summary>
    private static decimal Decimal(ReadOnlySpan<byte> bytes) => new([
        BinaryPrimitives.ReadInt32LittleEndian(bytes), BinaryPrimitives.ReadInt32LittleEndian(bytes[4..]),
        BinaryPrimitives.ReadInt32LittleEndian(bytes[8..]), BinaryPrimitives.ReadInt32LittleEndian(bytes[12..])]);
}

/// <summary>Bytes that <see cref="BinaryWriter"/> wrote, read one after another without copying them.</summary>
internal ref struct RecordBytes(ReadOnlySpan<byte> bytes)
{
    private ReadOnlySpan<byte> _rest = bytes;

    public readonly bool IsAtEnd => _rest.IsEmpty;

    public byte Byte() => Bytes(1)[0];

    public ReadOnlySpan<byte> Bytes(int count)
    {
        var taken = _rest[..count];
        _rest = _rest[count..];
        return taken;
    }

    /// <summary>A number in as many bytes as it needs, seven bits in each, the lowest first.</summary>
    public int Number()
    {
        var number = 0u;
        for (var shift = 0; ; shift += 7)
        {
            var next = Byte();
            number |= (uint)(next & 0x7F) << shift;
            if (next < 0x80) return (int)number;
        }
    }

    public string Text() => Encoding.UTF8.GetString(TextBytes());

    public ReadOnlySpan<byte> TextBytes() => Bytes(Number());
}
