using System.ComponentModel.DataAnnotations;
using System.Globalization;
using System.Reflection;

namespace PartsMatch.Service.Hosting;

/// <summary>A setting that the service knows.</summary>
/// <param name="Key">Where it stands: Limits:Depth.</param>
/// <param name="Right">What it takes, in words.</param>
/// <param name="Holds">Whether a text is that.</param>
internal sealed record Setting(string Key, string Right, Func<string, bool> Holds)
{
    public static Setting Words(string key) => new(key, "words", _ => true);

    /// <summary>Every property of a class of settings, with the range that stands on it.</summary>
    public static IEnumerable<Setting> AllOf(string section, Type settings) => settings.GetProperties().Where(property => property.CanWrite).Select(property => Of(section, property));

    private static Setting Of(string section, PropertyInfo property)
    {
        var key = $"{section}:{property.Name}";
        if (property.PropertyType == typeof(bool)) return new(key, "true or false", text => bool.TryParse(text, out _));
        var range = property.GetCustomAttribute<RangeAttribute>()!;
        var (least, most) = (Convert.ToDouble(range.Minimum, CultureInfo.InvariantCulture), Convert.ToDouble(range.Maximum, CultureInfo.InvariantCulture));
        var (word, style) = property.PropertyType == typeof(int) ? ("whole number", NumberStyles.AllowLeadingSign) : ("number", NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint);
        return new(
            key,
            string.Create(CultureInfo.InvariantCulture, $"a {word} from {least} to {most}"),
            text => double.TryParse(text, style, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most);
    }
}
