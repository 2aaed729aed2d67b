using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What a frame number says of a motor's feet.</summary>
/// <param name="ShaftHeight">From the feet to the shaft's centre, mm.</param>
/// <param name="Frame">The frame's number, of one system or the other; 0 where it promises only the shaft height.</param>
/// <param name="FootLength">H, S, M or L; a space where the frame has no such letter.</param>
/// <remarks>
/// NEMA MG 1 4.2: two digits are sixteenths of an inch of shaft height, of three the first two are quarters; Y and Z promise nothing else. IEC 60072-1: the number is the height in mm.
/// Equal frames with equal letters have equal feet (NEMA MG 1 4.4.1).
/// </remarks>
public readonly record struct FootPattern(double ShaftHeight, int Frame, char FootLength)
{
    private const double InchInMillimetres = 25.4;

    /// <summary>Whether more than the shaft height is promised.</summary>
    public bool PromisesFeet => Frame != 0;

    /// <summary>The feet of a frame; null for none, and for NEMA numbers of four digits, which MG 1 4.2 reads otherwise.</summary>
    public static FootPattern? Of(FrameSize? frame)
    {
        if (frame is null || frame.Number >= 1000) return null;
        var height = frame.System == FrameSystem.Iec ? frame.Number
            : frame.Number < 100 ? frame.Number / 16.0 * InchInMillimetres
            : frame.Number / 10 / 4.0 * InchInMillimetres;
        var letters = frame.System == FrameSystem.Iec ? "SML" : "H";
        var length = frame.Suffix.FirstOrDefault(letters.Contains);
        return new(Math.Round(height, 2), frame.PromisesDimensions ? frame.Number : 0, length == default ? ' ' : length);
    }
}
