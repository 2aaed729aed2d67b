using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Access;

namespace PartsMatch.Service.Pages;

/// <summary>Who looks at a page, and how they wish to see it.</summary>
/// <param name="Units">The units they chose; as given where they did not choose.</param>
/// <param name="KeyLabel">The label of the key they signed in with; null when they did not.</param>
/// <param name="Path">Path of the page.</param>
/// <param name="Address">Path and query of the page, to come back to.</param>
/// <param name="Origin">Scheme and host by which they reached it, for links that are sent.</param>
public sealed record Visit(Units Units, string? KeyLabel, string Path, string Address, string Origin)
{
    /// <summary>Units of figures that nobody wrote, such as margins, estimates and drawings: those chosen, or where none were, those that most of what is beside them is written in.</summary>
    public Units Figures { get; init; } = Units;

    public static Visit Of(HttpContext context)
    {
        var request = context.Request;
        return new(UnitChoice.Of(context), Caller.Of(context).KeyLabel, request.Path, $"{request.Path}{request.QueryString}", $"{(AccessSetup.IsBehindTls(request) ? Uri.UriSchemeHttps : Uri.UriSchemeHttp)}://{request.Host}");
    }
}
