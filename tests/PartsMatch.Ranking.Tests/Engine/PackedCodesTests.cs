using FsCheck;
using FsCheck.Xunit;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Tests.Engine;

/// <summary>Codes lie packed in as few bytes as their question's facets need.</summary>
public sealed class PackedCodesTests
{
    [Theory]
    [InlineData(0, 1)]
    [InlineData(256, 1)]
    [InlineData(257, 2)]
    [InlineData(65_536, 2)]
    [InlineData(65_537, 3)]
    [InlineData(16_777_216, 3)]
    [InlineData(16_777_217, 4)]
    [InlineData(int.MaxValue, 4)]
    public void A_code_takes_as_few_bytes_as_its_facets_need(int facets, int bytes) => CodeSlot.BytesFor(facets).ShouldBe(bytes);

    [Property]
    public bool What_was_packed_is_read_again_to_the_last_row(PositiveInt rows, NonEmptyArray<PositiveInt> widths, int seed)
    {
        var (count, bytes) = (rows.Get, widths.Get.Select(width => 1 + (width.Get % 4)).ToArray());
        var random = new Random(seed);
        var codes = bytes.Select(own => Enumerable.Range(1, count).Select(row => row == count ? Most(own) : random.Next(Most(own))).ToArray()).ToArray();
        var slots = RowSorting.Slots(bytes);
        var packed = RowSorting.Packed([.. Enumerable.Range(0, count)], [.. Enumerable.Range(0, bytes.Length)], slots, (question, told) => codes[question].CopyTo(told, 0));
        var stride = RowSorting.Stride(slots);
        return Enumerable.Range(0, count).All(row => slots.Index().All(one => one.Item.Read(packed.AsSpan((row * stride) + one.Item.At)) == codes[one.Index][row]));
    }

    [Fact]
    public void Rows_share_the_facets_whose_bytes_are_all_alike()
    {
        int[][] codes = [[7, 7, 7, 8], [300, 300, 300 + 256, 300 + 256], [1, 2, 2, 2]];
        var slots = RowSorting.Slots([1, 2, 1]);
        var packed = RowSorting.Packed([0, 1, 2, 3], [0, 1, 2], slots, (question, told) => codes[question].CopyTo(told, 0));
        RowSorting.Sharing(packed, slots, rows: 4).ShouldBe([0, 2, 1, 0]);
    }

    /// <summary>The greatest code of so many bytes.</summary>
    private static int Most(int bytes) => bytes == 4 ? int.MaxValue : (1 << (8 * bytes)) - 1;
}
