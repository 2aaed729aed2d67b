using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>One of the two settings of an old switch, where it opens or where it closes.</summary>
/// <param name="Field">Its field on the plate; at the site it is said to be needed.</param>
/// <param name="Marked">As its plate has it; null when not known.</param>
/// <param name="Because">Of what it would follow: "the old one's cut-out".</param>
/// <param name="IsChanged">Whether another one is needed than is marked.</param>
internal readonly record struct OldSetting(string Field, string? Marked, string Because, bool IsChanged)
{
    /// <summary>What two settings that belong together tell of the place. Where one of them is to be another, the other is not needed as it was: who wants it to open elsewhere mostly wants it to close elsewhere, too, and the two may even be the wrong way round.</summary>
    /// <param name="opens">Where it opens.</param>
    /// <param name="closes">Where it closes.</param>
    public static IEnumerable<Deduction> AsNeeded(OldSetting opens, OldSetting closes) =>
        [.. closes.IsChanged ? [] : opens.Needed, .. opens.IsChanged ? [] : closes.Needed];

    private IEnumerable<Deduction> Needed => Marked is { } known ? [new(Side.Site, $"{Field}Needed", known, Because, [Field], ContactSources.AsTheOldOne)] : [];
}
