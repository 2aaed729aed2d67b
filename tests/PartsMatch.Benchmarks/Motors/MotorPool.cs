using PartsMatch.Demo.Motors;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>Some thousands of motors as the invented catalogue draws them: what belongs together (type, poles, frame, shaft, mount, enclosure, taps) is drawn together.</summary>
/// <remarks>A million parts are variants of these: drawing each from the beginning would take longer than all that is to be measured.</remarks>
internal sealed class MotorPool
{
    /// <summary>Of every line as many: a catalogue of a million parts serves more than fans.</summary>
    private const int DesignsOfLine = 60;
    private const int BuildsOfDesign = 12;

    private readonly MotorSpec[] motors;

    public MotorPool(int seed)
    {
        var draw = new Draw(seed);
        motors = [.. MotorCatalogue.Lines.SelectMany(line => OfLine(line, draw))];
    }

    public int Count => motors.Length;

    /// <summary>One of them, each as likely.</summary>
    public MotorSpec Pick(Random random) => motors[random.Next(motors.Length)];

    private static IEnumerable<MotorSpec> OfLine(MotorLine line, Draw draw)
    {
        for (var i = 0; i < DesignsOfLine; i++)
        {
            var design = line.Design(draw);
            for (var build = 0; build < BuildsOfDesign; build++) yield return MotorAltitudes.Print(Electrics.Fill(line.Build(design, draw), design.Goodness, draw), draw);
        }
    }
}
