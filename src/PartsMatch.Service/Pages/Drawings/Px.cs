using System.Globalization;
using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Service.Pages.Drawings;

/// <summary>A length of a picture, in the units of its view box; written as SVG reads it, on every machine alike.</summary>
public readonly record struct Px(double Value)
{
    public override string ToString() => (Math.Round(Value, 2) + 0.0).ToString("0.##", CultureInfo.InvariantCulture);
}

/// <summary>A place in a picture.</summary>
public readonly record struct Place(Px X, Px Y)
{
    public static Place At(double x, double y) => new(new(x), new(y));
}

/// <summary>A rectangle of a picture.</summary>
public readonly record struct Box(Px X, Px Y, Px Width, Px Height)
{
    public static Box Between(double left, double top, double right, double bottom) => new(new(left), new(top), new(right - left), new(bottom - top));

    public double Left => X.Value;

    public double Top => Y.Value;

    public double Right => X.Value + Width.Value;

    public double Bottom => Y.Value + Height.Value;

    public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public bool Holds(Box other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    public bool Holds(double x, double y) => x > Left && x < Right && y > Top && y < Bottom;
}

/// <summary>A line of text, at its baseline.</summary>
public readonly record struct Written(Place At, string Text);

/// <summary>How the stylesheet knows what something stands for.</summary>
internal static class RoleClass
{
    public static string Of(Role role) => $"role-{role.ToString().ToLowerInvariant()}";
}
