using System.Security.Cryptography;
using PartsMatch.Fit;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Tests.Columns;

/// <summary>Columns that are not all as they were written, or as this code would write them, are refused: never misread, and never with an exception.</summary>
public sealed class ColumnsRefusedTests
{
    private const int VersionAt = 19;
    private const int HeadLengthAt = VersionAt + 4;
    private const int HeadAt = HeadLengthAt + 4;

    private static readonly byte[] Written = Deeds.Written(
        Catalogue.Of(Gaskets.Family(), Enumerable.Range(0, 40).Select(index => Gaskets.Part($"G{index}", bore: index % 7)))
            .With([Gaskets.Part("NEW", bore: 6), Gaskets.Part("G7", isOffered: false)]).WithStock([KeyValuePair.Create("G8", new Stock(3, 12.50m))]));

    [Fact]
    public void As_it_was_written_it_is_read() => Why(Written).ShouldBeNull();

    [Fact]
    public void It_is_refused_wherever_it_is_cut()
    {
        for (var length = 0; length < Written.Length; length++) Why(Written[..length]).ShouldNotBeNull($"cut at {length}");
    }

    [Fact]
    public void It_is_refused_whichever_byte_is_not_as_it_was()
    {
        var random = new Random(20261129);
        for (var at = 0; at < Written.Length; at++)
        {
            var damaged = Written.ToArray();
            damaged[at] ^= (byte)(1 << random.Next(8));
            Why(damaged).ShouldNotBeNull($"at {at}");
        }
    }

    [Fact]
    public void It_is_refused_when_anything_follows() => Why([.. Written, 0]).ShouldBe(ColumnsRefusal.Damaged);

    [Fact]
    public void A_length_that_is_damaged_is_not_believed()
    {
        // The head's own length claims all the memory that there is; then a column's does.
        Why(With(HeadLengthAt, BitConverter.GetBytes(int.MaxValue))).ShouldBe(ColumnsRefusal.Damaged);
        Why(With(HeadLengthAt, BitConverter.GetBytes(-1))).ShouldBe(ColumnsRefusal.Damaged);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Why(With(HeadAt + HeadLength - 8, BitConverter.GetBytes(1L << 40))).ShouldBe(ColumnsRefusal.Damaged);
        (GC.GetAllocatedBytesForCurrentThread() - before).ShouldBeLessThan(10 * Written.Length);
    }

    [Fact]
    public void What_is_no_catalogue_is_refused()
    {
        Why([]).ShouldBe(ColumnsRefusal.NotColumns);
        Why("number,bore\nG1,5\n"u8.ToArray()).ShouldBe(ColumnsRefusal.NotColumns);
        Why(new byte[100_000]).ShouldBe(ColumnsRefusal.NotColumns);
    }

    [Fact]
    public void Another_version_is_refused() => Why(With(VersionAt, BitConverter.GetBytes(2))).ShouldBe(ColumnsRefusal.OtherVersion);

    [Fact]
    public void Another_kind_is_refused()
    {
        using var from = new MemoryStream(Written);
        Catalogue.ReadFrom(from, Families.Find("motor")!).ShouldBe(new ColumnsReading.Refused(ColumnsRefusal.OtherKind));
    }

    [Fact]
    public void Other_aspects_or_the_same_in_another_order_are_refused()
    {
        using var from = new MemoryStream(Written);
        Catalogue.ReadFrom(from, Gaskets.Family(new Bore(), new Thickness())).ShouldBe(new ColumnsReading.Refused(ColumnsRefusal.OtherCode));
        from.Position = 0;
        Catalogue.ReadFrom(from, Gaskets.Family(new Thickness(), new Bore(), new Hardness(), new Colour())).ShouldBe(new ColumnsReading.Refused(ColumnsRefusal.OtherCode));
    }

    [Theory]
    [InlineData(typeof(Bore))]
    [InlineData(typeof(Catalogue))]
    [InlineData(typeof(Families))]
    [InlineData(typeof(int))]
    public void Columns_that_were_written_by_other_code_are_refused(Type reader)
    {
        // Another compilation's module has another id; otherwise everything is whole.
        var head = Written[..(HeadAt + HeadLength)];
        var id = System.Text.Encoding.UTF8.GetBytes(reader.Module.ModuleVersionId.ToString());
        var at = head.AsSpan().IndexOf(id);
        at.ShouldBeGreaterThan(0);
        head[at] = (byte)(head[at] == '0' ? '1' : '0');
        byte[] other = [.. head, .. SHA256.HashData(head), .. Written[(head.Length + SHA256.HashSizeInBytes)..^SHA256.HashSizeInBytes]];
        Why([.. other, .. SHA256.HashData([.. head, .. other[(head.Length + SHA256.HashSizeInBytes)..]])]).ShouldBe(ColumnsRefusal.OtherCode);
    }

    private static int HeadLength => BitConverter.ToInt32(Written, HeadLengthAt);

    private static byte[] With(int at, byte[] bytes) => [.. Written[..at], .. bytes, .. Written[(at + bytes.Length)..]];

    private static ColumnsRefusal? Why(byte[] bytes)
    {
        using var from = new MemoryStream(bytes);
        return (Catalogue.ReadFrom(from, Gaskets.Family()) as ColumnsReading.Refused)?.Why;
    }
}
