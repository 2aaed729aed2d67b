namespace PartsMatch.Service.Pages.Layout;

/// <summary>The form that a page is for. The buttons of the page's frame (units, signing in and out) are sent with it, so that none of them loses what is typed.</summary>
/// <param name="Action">Where it is sent.</param>
/// <param name="IsSearch">Whether it is sent by GET, as a search is.</param>
public sealed record PageForm(string Action, bool IsSearch = false)
{
    /// <summary>The form's id: there is one on a page.</summary>
    public const string Id = "typed";
}
