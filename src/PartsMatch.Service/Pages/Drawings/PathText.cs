namespace PartsMatch.Service.Pages.Drawings;

/// <summary>Paths as SVG reads them.</summary>
internal static class PathText
{
    public static string Through(IEnumerable<Place> places) => string.Concat(places.Select((place, index) => $"{(index == 0 ? 'M' : 'L')}{place.X} {place.Y}"));

    public static string Closed(IEnumerable<Place> places) => $"{Through(places)}Z";
}
