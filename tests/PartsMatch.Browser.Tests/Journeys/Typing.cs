namespace PartsMatch.Browser.Tests.Journeys;

internal static class Typing
{
    /// <summary>Fills in the fields of the job as they come on the page, unfolding the group that holds one.</summary>
    public static async Task TypeJobAsync(this Visitor visitor)
    {
        foreach (var (field, text) in Job.Typed) await visitor.FillAsync(field, text);
    }

    public static async Task FillAsync(this Visitor visitor, string field, string text)
    {
        var input = visitor.Field(field);
        var group = visitor.Page.Locator("details", new() { Has = input });
        if (await group.CountAsync() > 0 && await group.GetAttributeAsync("open") is null) await group.Locator("summary").ClickAsync();
        switch (await input.EvaluateAsync<string>("one => one.tagName"))
        {
            case "SELECT": await input.SelectOptionAsync(text); break;
            case "FIELDSET": await input.GetByLabel(text, new() { Exact = true }).CheckAsync(); break;
            default: await input.FillAsync(text); break;
        }
    }
}
