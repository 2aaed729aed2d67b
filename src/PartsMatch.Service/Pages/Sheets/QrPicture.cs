using System.Globalization;
using System.Text;
using QRCoder;

namespace PartsMatch.Service.Pages.Sheets;

/// <summary>A QR code as one path: a stroke for every run of dark modules.</summary>
/// <param name="Size">Modules on a side, the quiet zone included.</param>
/// <param name="Path">The strokes, one module wide.</param>
public sealed record QrPicture(int Size, string Path)
{
    /// <summary>Longer texts make modules too small to scan from a print (practice).</summary>
    public const int LongestText = 1000;

    /// <summary>The code of a text; null when it is too long.</summary>
    public static QrPicture? Of(string text)
    {
        if (text.Length > LongestText) return null;
        using var code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var path = new StringBuilder();
        foreach (var (y, row) in code.ModuleMatrix.Index())
        {
            for (var x = 0; x < row.Length; x++)
            {
                if (!row[x]) continue;
                var from = x;
                while (x < row.Length && row[x]) x++;
                path.Append(CultureInfo.InvariantCulture, $"M{from} {y}.5h{x - from}");
            }
        }

        return new(code.ModuleMatrix.Count, path.ToString());
    }
}
