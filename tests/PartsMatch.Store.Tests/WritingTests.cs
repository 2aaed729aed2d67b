namespace PartsMatch.Store.Tests;

public sealed class WritingTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_part_reads_back_as_it_was_given_from_memory_and_from_the_file()
    {
        using (var store = _folder.Open())
            ShouldBeTheMotor(A.Written(await store.AddAsync(A.Motor(), "the counter")));
        using var again = _folder.Open();
        ShouldBeTheMotor(again.Find("qx 1048"));
        again.Parts.ShouldHaveSingleItem().Number.ShouldBe("QX-1048");

        static void ShouldBeTheMotor(StoredPart? part)
        {
            var given = A.Motor();
            part.ShouldNotBeNull().Version.ShouldBe(1);
            part.Number.ShouldBe("QX-1048");
            part.Maker.ShouldBe(given.Maker);
            part.Status.ShouldBe(PartStatus.Current);
            part.Spec.ShouldBe(given.Spec);
            part.SupersededBy.ShouldBe(given.SupersededBy);
        }
    }

    [Fact]
    public async Task A_number_that_differs_by_a_dash_a_blank_or_case_is_already_there()
    {
        using var store = _folder.Open();
        await store.AddAsync(A.Motor("QX-1048"), "the counter");
        (await store.AddAsync(A.Motor("qx 10 48", "another"), "the shop")).ShouldBeOfType<WriteResult.AlreadyThere>().Present.Title.ShouldBe(A.Motor().Title);
        store.Parts.Count().ShouldBe(1);
        store.Revision.ShouldBe(2); // making the store was the first group, the part the second
    }

    [Theory]
    [InlineData("- / -", "A part number needs at least one letter or digit; \"- / -\" has none.")]
    [InlineData("11111111112222222222333333333344444444445555555555666666666677777777778888888888999999999900000000001", "A part number has at most 100 characters; this one has 101.")]
    public async Task A_number_that_cannot_be_kept_is_answered_with_why(string number, string why)
    {
        using var store = _folder.Open();
        (await store.AddAsync(A.Motor(number), "the counter")).ShouldBe(new WriteResult.BadNumber(why));
        store.Parts.ShouldBeEmpty();
    }

    [Fact]
    public async Task A_number_of_100_characters_of_three_bytes_each_is_kept()
    {
        // The longest key there is: no letter that is one char takes more than three bytes in UTF-8.
        var number = new string('字', PartNumber.MostCharacters);
        using (var store = _folder.Open())
            A.Written(await store.AddAsync(A.Motor(number), "the counter"));
        using var again = _folder.Open();
        again.Find(number).ShouldNotBeNull();
    }

    [Fact]
    public async Task A_change_replaces_the_whole_spec_at_the_version_that_was_read()
    {
        using var store = _folder.Open();
        await store.AddAsync(A.Motor(), "the counter");
        var changed = A.Written(await store.ChangeAsync("qx1048", 1, A.Motor() with { Spec = [new("power", "1/3 hp")] }, "the shop"));
        changed.Version.ShouldBe(2);
        changed.Spec.ShouldBe([new NamedText("power", "1/3 hp")]);
        store.Find("QX-1048").ShouldBe(changed);
    }

    [Fact]
    public async Task A_change_at_another_version_is_answered_with_what_is_there_and_changes_nothing()
    {
        using var store = _folder.Open();
        await store.AddAsync(A.Motor(), "the counter");
        await store.ChangeAsync("QX-1048", 1, A.Motor(title: "first"), "the shop");
        var conflict = (await store.ChangeAsync("QX-1048", 1, A.Motor(title: "second"), "the van")).ShouldBeOfType<WriteResult.Conflict>();
        conflict.Present.Title.ShouldBe("first");
        store.Find("QX-1048").ShouldBe(conflict.Present);
        (await store.HistoryAsync("QX-1048")).Count.ShouldBe(2);
    }

    [Fact]
    public async Task A_part_cannot_change_into_one_of_another_number_but_may_be_written_another_way()
    {
        using var store = _folder.Open();
        await store.AddAsync(A.Motor("QX-1048"), "the counter");
        (await store.ChangeAsync("QX-1048", 1, A.Motor("QX-2048"), "the shop")).ShouldBeOfType<WriteResult.BadNumber>();
        A.Written(await store.ChangeAsync("QX-1048", 1, A.Motor("QX 1048"), "the shop")).Number.ShouldBe("QX 1048");
    }

    [Fact]
    public async Task A_retired_part_resolves_and_can_be_retired_only_once()
    {
        using var store = _folder.Open();
        await store.AddAsync(A.Motor(), "the counter");
        (await store.RetireAsync("QX-1048", 7, "the counter")).ShouldBeOfType<WriteResult.Conflict>();
        A.Written(await store.RetireAsync("QX-1048", 1, "the counter")).Status.ShouldBe(PartStatus.Retired);
        (await store.RetireAsync("QX-1048", 2, "the counter")).ShouldBeOfType<WriteResult.AlreadyRetired>();
        store.Find("QX-1048")!.Version.ShouldBe(2);
    }

    [Fact]
    public async Task What_is_not_there_can_be_neither_changed_nor_retired_nor_stocked()
    {
        using var store = _folder.Open();
        var notThere = new WriteResult.NotThere("QX-1048");
        (await store.ChangeAsync("QX-1048", 1, A.Motor(), "the shop")).ShouldBe(notThere);
        (await store.RetireAsync("QX-1048", 1, "the shop")).ShouldBe(notThere);
        (await store.SetStockAsync(A.Line())).ShouldBe(notThere);
        store.Find("QX-1048").ShouldBeNull();
        store.Stock("QX-1048").ShouldBeNull();
        (await store.HistoryAsync("QX-1048")).ShouldBeEmpty();
    }

    [Fact]
    public async Task Stock_is_a_record_of_its_own_and_the_last_line_stands()
    {
        using (var store = _folder.Open())
        {
            await store.AddAsync(A.Motor(), "the counter");
            await store.SetStockAsync(A.Line(price: 84.50m, onHand: 3));
            A.Written(await store.SetStockAsync(A.Line("qx1048", price: 79.999m, onHand: null))).Version.ShouldBe(1);
        }

        using var again = _folder.Open();
        again.Stock("QX-1048").ShouldBe(new StockLine("QX-1048", 79.999m, "USD", null));
        again.AllStock.ShouldHaveSingleItem();
        (await again.HistoryAsync("QX-1048")).Count.ShouldBe(1);
    }

    [Fact]
    public async Task A_key_is_kept_under_its_label_which_is_given_once()
    {
        var key = new AccessKey("counter", "9f2c", null, A.Noon);
        using (var store = _folder.Open())
        {
            (await store.AddKeyAsync(key)).ShouldBeTrue();
            (await store.AddKeyAsync(key with { Hash = "other", Salt = "salt" })).ShouldBeFalse();
            (await store.AddKeyAsync(new AccessKey("shop", "77aa", "b0", A.Noon.AddTicks(1)))).ShouldBeTrue();
        }

        using var again = _folder.Open();
        again.Keys.ShouldBe([key, new AccessKey("shop", "77aa", "b0", A.Noon.AddTicks(1))]);
    }

    [Fact]
    public async Task What_the_writer_does_to_its_own_list_afterwards_reaches_no_snapshot()
    {
        using var store = _folder.Open();
        var spec = new List<NamedText> { new("power", "1/4 hp") };
        await store.AddAsync(A.Motor() with { Spec = spec }, "the counter");
        spec.Clear();
        store.Find("QX-1048")!.Spec.Count.ShouldBe(1);
    }

    [Fact]
    public async Task A_closed_store_takes_no_more_writes()
    {
        var store = _folder.Open();
        store.Dispose();
        await Should.ThrowAsync<ObjectDisposedException>(() => store.AddAsync(A.Motor(), "the counter"));
    }
}
