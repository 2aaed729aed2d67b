namespace PartsMatch.Fit.Judging;

/// <summary>A field's name and its text: how specs, plates, sites and readings pass every edge.</summary>
/// <param name="Name">The field's name, such as shaftDiameter.</param>
/// <param name="Text">Its value as text, such as 1/2 in.</param>
public sealed record NamedText(string Name, string Text);
