using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>Named texts for tests: "shaftDiameter=1/2 in; rotation=CW shaft end".</summary>
internal static class Named
{
    public static IReadOnlyList<NamedText> Texts(string texts) =>
        [.. texts.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(text => text.Split('=', 2)).Select(pair => new NamedText(pair[0].Trim(), pair[1].Trim()))];

    /// <summary>A record of named texts, every one of which must read.</summary>
    public static T Record<T>(string texts)
        where T : class, new()
    {
        var (record, complaints) = Shape<T>.Of.Read(Texts(texts));
        complaints.ShouldBeEmpty();
        return record;
    }
}
