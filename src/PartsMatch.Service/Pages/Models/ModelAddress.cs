using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Pages.Models;

/// <summary>Where the pages about what parts are ranked by are.</summary>
internal static class ModelAddress
{
    public const string Path = "/model";
    public const string Train = $"{Path}/train";
    public const string Stop = $"{Path}/stop";
    public const string Back = $"{Path}/back";
    public const string Kind = "kind";

    public static string Of(Family family) => Link.To(Path, [new(Kind, family.Kind)]);
}
