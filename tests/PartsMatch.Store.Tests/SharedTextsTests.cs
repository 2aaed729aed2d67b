namespace PartsMatch.Store.Tests;

public sealed class SharedTextsTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task What_many_parts_say_alike_is_kept_once_when_a_store_is_opened()
    {
        using (var store = _folder.Open())
        {
            await store.AddAsync(A.Motor("QX-1"), "the counter");
            await store.AddAsync(A.Motor("QX-2") with { Spec = [new("power", "1/3 hp"), new("speed", "1075 rpm")] }, "the counter");
        }

        using var again = _folder.Open();
        var (one, other) = (again.Find("QX-1")!, again.Find("QX-2")!);
        other.Spec[1].ShouldBeSameAs(one.Spec[1]);
        other.Spec[0].ShouldBe(new("power", "1/3 hp"));
        other.Spec[0].Name.ShouldBeSameAs(one.Spec[0].Name);
        other.Maker.ShouldBeSameAs(one.Maker);
    }
}
