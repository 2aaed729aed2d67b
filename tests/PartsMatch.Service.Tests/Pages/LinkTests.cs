using FsCheck.Xunit;
using Microsoft.AspNetCore.WebUtilities;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Pages;
using PartsMatch.Service.Pages.Needs;

namespace PartsMatch.Service.Tests.Pages;

public sealed class LinkTests
{
    [Property]
    public void Whatever_is_typed_comes_back_from_its_link(string?[] texts)
    {
        // Half of a surrogate pair is no text and cannot stand in an address.
        NamedText[] holds = [.. texts.Select((text, at) => new NamedText($"plate.f{at}", text ?? string.Empty)).Where(text => !string.IsNullOrWhiteSpace(text.Text) && IsText(text.Text))];
        var link = Link.To("/here", holds);
        var back = QueryHelpers.ParseQuery(new Uri($"http://there{link}").Query);
        foreach (var (name, text) in holds) back[name].ToString().ShouldBe(text);
    }

    [Fact]
    public void A_link_that_would_be_too_long_leaves_out_the_plates_text()
    {
        NeedTyped need = new(Families.All[0], string.Empty, new('x', 2000), string.Empty, [new("power", "1/4 hp")], [], []);
        need.To("/replacements").ShouldBe("/replacements?kind=motor&plate.power=1/4+hp");
        (need with { Shown = "HP 1/4" }).To("/replacements").ShouldBe("/replacements?kind=motor&plate.power=1/4+hp&shown=HP+1/4");
    }

    private static bool IsText(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (char.IsHighSurrogate(text[at]) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1])) at++;
            else if (char.IsSurrogate(text[at])) return false;
        }

        return true;
    }
}
