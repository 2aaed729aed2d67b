using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Tests.Engine;

/// <summary>What takes less room in a column is what it was.</summary>
public sealed class CompactValuesTests
{
    /// <summary>Any UTF-16 units, halves of pairs among them.</summary>
    private static Gen<string> Text { get; } = Gen.OneOf(Gen.Choose(32, 126), Gen.Choose(0, 0xFFFF), Gen.Elements(0x7F, 0x80, 0x7FF, 0x800, 0xD800, 0xDC00, 0xE000, 0xFFFF))
        .ListOf().Resize(8).Select(units => new string([.. units.Select(unit => (char)unit)]));

    private static Gen<decimal?> Price { get; } =
        from low in Gen.Choose(int.MinValue, int.MaxValue)
        from middle in Gen.Elements(0, 1, -1)
        from high in Gen.Elements(0, 0, -1)
        from isNegative in Gen.Elements(false, true)
        from scale in Gen.Choose(0, 28)
        from isKnown in Gen.Choose(0, 5)
        select isKnown > 0 ? new decimal(low, middle, high, isNegative, (byte)scale) : (decimal?)null;

    [Property(MaxTest = 1000)]
    public Property Any_number_comes_back_and_sorts_as_texts_do() => Prop.ForAll(Text.Two().ToArbitrary(), pair =>
    {
        var (one, other) = (NumberText.Of(pair.Item1), NumberText.Of(pair.Item2));
        one.ToString().ShouldBe(pair.Item1);
        Math.Sign(NumberText.Compare(one, other)).ShouldBe(Math.Sign(string.CompareOrdinal(pair.Item1, pair.Item2)));
    });

    [Property(MaxTest = 1000)]
    public Property Stock_keeps_every_digit_of_its_price_and_what_is_not_known() => Prop.ForAll(
        Price.Zip(Gen.Elements<int?>(null, 0, 1, -1, int.MaxValue, int.MinValue)).ToArbitrary(),
        given =>
        {
            var (price, onHand) = given;
            StockCell cell = new(onHand, price);
            cell.OnHand.ShouldBe(onHand);
            cell.Price.HasValue.ShouldBe(price.HasValue);
            if (price is { } known) decimal.GetBits(cell.Price!.Value).ShouldBe(decimal.GetBits(known));
        });

    [Fact]
    public void Of_nothing_said_nothing_is_known()
    {
        (default(StockCell).OnHand, default(StockCell).Price).ShouldBe((null, null));
        (default(PartState).Standing, default(PartState).IsOffered).ShouldBe((Standing.Absent, false));
    }

    [Property]
    public Property A_state_is_what_was_said() => Prop.ForAll(
        Gen.Elements(Standing.Retired, Standing.Discontinued, Standing.Made).Zip(Gen.Elements(-1, 0, 1, 999_999, (1 << 29) - 1)).ToArbitrary(),
        given => (new PartState(given.Item1, given.Item2).Standing, new PartState(given.Item1, given.Item2).Place, new PartState(Standing.Made, 4).In(given.Item2).Place).ShouldBe((given.Item1, given.Item2, given.Item2)));

    [Fact]
    public async Task What_was_numbered_stays_while_more_is_added()
    {
        // Three readers look at whatever is there, while a writer makes it a thousand times as large.
        const int All = 100_000;
        var numbered = new Numbered([], []);
        using var done = new CancellationTokenSource();
        var readers = Enumerable.Range(0, 3).Select(seed => Task.Run(() =>
        {
            var (random, wrong) = (new Random(seed), 0);
            while (!done.IsCancellationRequested)
            {
                if (numbered.Count == 0) continue;
                var number = random.Next(numbered.Count);
                if (!numbered[number].Span.SequenceEqual(Bytes(number))) wrong++;
            }

            return wrong;
        })).ToList();

        for (var number = 0; number < All; number++) numbered.Add(Bytes(number)).ShouldBe(number);
        await done.CancelAsync();

        (await Task.WhenAll(readers)).ShouldAllBe(wrong => wrong == 0);
        for (var number = 0; number < All; number += 7) (numbered.Add(Bytes(number)), numbered.Find(Bytes(number))).ShouldBe((number, number));
        numbered.Find(Bytes(All)).ShouldBeNull();
        numbered.Count.ShouldBe(All);

        // Of different lengths: the first is empty.
        static byte[] Bytes(int number) => number == 0 ? [] : System.Text.Encoding.ASCII.GetBytes(FormattableString.Invariant($"{number:x}"));
    }
}
