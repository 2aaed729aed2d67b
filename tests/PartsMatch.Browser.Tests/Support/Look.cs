namespace PartsMatch.Browser.Tests.Support;

/// <summary>How a visitor sees the pages.</summary>
/// <param name="Width">Of the window, in CSS pixels.</param>
/// <param name="Height">Of the window, in CSS pixels.</param>
/// <param name="Scheme">What the system wishes: light or dark.</param>
/// <param name="HasScript">Whether JavaScript runs.</param>
public sealed record Look(int Width, int Height, ColorScheme Scheme = ColorScheme.Light, bool HasScript = true)
{
    /// <summary>The narrowest phones in use.</summary>
    public const int Narrowest = 320;

    public static Look Phone { get; } = new(360, 740);

    public static Look Desk { get; } = new(1280, 900);

    /// <summary>Phone and desk, by light and in the dark.</summary>
    public static IReadOnlyList<Look> All { get; } = [Phone, Phone.InTheDark, Desk, Desk.InTheDark];

    public Look InTheDark => this with { Scheme = ColorScheme.Dark };

    public Look WithoutScript => this with { HasScript = false };

    /// <summary>As in a file's name: 360-dark.</summary>
    public string Name => FormattableString.Invariant($"{Width}-{(Scheme == ColorScheme.Dark ? "dark" : "light")}{(HasScript ? string.Empty : "-no-script")}");

    public static Look Named(string name) => All.Single(look => look.Name == name);
}
