using System.Globalization;
using System.Text;

namespace PartsMatch.Demo.Trade;

/// <summary>Gives out part numbers: every maker's own pattern filled with its running number.</summary>
public sealed class PartNumbers
{
    /// <summary>All patterns hold four digits. A step without a common factor with 10 000 visits every number once, out of order.</summary>
    private const int Numbers = 10_000;
    private const int Step = 2_713;

    /// <summary>Letters that are not mistaken for digits or for one another in handwriting.</summary>
    private const string Letters = "ACDEFHKLMNPRTVWX";

    private readonly Dictionary<string, int> given = [];

    /// <summary>The maker's next part number.</summary>
    public string Next(Maker maker)
    {
        var count = given.GetValueOrDefault(maker.Name);
        given[maker.Name] = count + 1;
        var running = ((count + maker.Name.Length) * Step) % Numbers;
        var digits = running.ToString("0000", CultureInfo.InvariantCulture);
        var (text, at) = (new StringBuilder(), 0);
        foreach (var sign in maker.NumberPattern)
        {
            text.Append(sign switch
            {
                '#' => digits[at++],
                '@' => Letters[running % Letters.Length],
                _ => sign,
            });
        }

        return text.ToString();
    }
}
