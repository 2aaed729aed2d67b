using PartsMatch.Service.Access;

namespace PartsMatch.Service.Tests.Access;

public sealed class KeyHashTests
{
    private static readonly DateTimeOffset Noon = new(2026, 1, 2, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void A_key_matches_its_own_hash_and_no_other()
    {
        var (key, kept) = KeyHash.Make("first", Noon);
        var (other, _) = KeyHash.Make("first", Noon);
        KeyHash.Matches(key, kept).ShouldBeTrue();
        KeyHash.Matches(other, kept).ShouldBeFalse();
        KeyHash.Matches(string.Empty, kept).ShouldBeFalse();
        KeyHash.Matches(key + "x", kept).ShouldBeFalse();
    }

    [Fact]
    public void What_is_kept_does_not_hold_the_key_and_is_salted()
    {
        var (key, kept) = KeyHash.Make("first", Noon);
        kept.ToString().ShouldNotContain(key["partsmatch_".Length..]);
        kept.Salt.ShouldNotBeNullOrEmpty();
        kept.MadeAt.ShouldBe(Noon);
        // 256 random bits as Base64Url are 43 characters (worked by hand: 256 / 6, rounded up).
        key.Length.ShouldBe("partsmatch_".Length + 43);
    }
}
