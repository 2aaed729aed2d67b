using LiteDB;

namespace PartsMatch.Store.Tests;

public sealed class UpgradeTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void An_older_file_goes_through_the_steps_it_misses_in_order_and_once()
    {
        Title().ShouldBe("1/4 hp condenser fan motor");
        Title(Append(" one")).ShouldBe("1/4 hp condenser fan motor one");
        Title(Append(" one"), Append(" two"), Append(" three")).ShouldBe("1/4 hp condenser fan motor one two three");
        Title(Append(" one"), Append(" two"), Append(" three")).ShouldBe("1/4 hp condenser fan motor one two three");
    }

    [Fact]
    public void A_step_that_fails_leaves_the_file_at_the_step_before()
    {
        Title().ShouldBe("1/4 hp condenser fan motor");
        Should.Throw<InvalidOperationException>(() => Title(Append(" one"), database =>
        {
            Append(" half of two")(database);
            throw new InvalidOperationException("A step with a fault.");
        }));
        Title(Append(" one"), Append(" two")).ShouldBe("1/4 hp condenser fan motor one two");
    }

    [Fact]
    public void A_new_file_is_made_in_the_newest_format_and_needs_no_step() =>
        Title(Append(" one")).ShouldBe("1/4 hp condenser fan motor");

    private static Action<LiteDatabase> Append(string text) => database =>
    {
        var parts = database.GetCollection("parts");
        foreach (var part in parts.FindAll().ToList())
        {
            part["title"] = part["title"].AsString + text;
            parts.Update(part);
        }
    };

    private string Title(params Action<LiteDatabase>[] steps)
    {
        using var store = PartStore.Open(new StoreOptions(_folder.Path), TimeProvider.System, () => A.Seed(parts: 1), steps);
        return store.Parts.ShouldHaveSingleItem().Title;
    }
}
