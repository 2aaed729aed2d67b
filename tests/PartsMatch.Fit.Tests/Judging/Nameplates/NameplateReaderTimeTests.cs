using System.Diagnostics;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>A few milliseconds for 4,000 characters are promised; the guard here is far wider, so that a busy machine does not fail it, and far narrower than anything quadratic takes.</summary>
public sealed class NameplateReaderTimeTests
{
    private const int Characters = 4000;
    private static readonly TimeSpan Guard = TimeSpan.FromMilliseconds(200);

    public static TheoryData<string> Repeated =>
    [
        "1", "1/", "1 ", "1 - ", "1,1", "1 1/2 ", "1 to ", "A ", "A1", "A 1 ", "V/", "V/PH/HZ 1/1/1 ", "HP RPM V\n1 1 1\n", "SHAFT 1 X 1 X ", "5 MFD 370 VAC ", "CW/CCW ", "CCW OPP ", "😀", "x", ".", "\n", "V 1 V - ", "40 - 40 C AMB ",
        "SER 1", "NOT FOR ", "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 FR 48Y ROT CCW LE INS B AMB 60C CAP 5/370 TEAO ",
    ];

    [Theory]
    [MemberData(nameof(Repeated))]
    public void Four_thousand_characters_take_less_than_the_guard_however_they_are_made(string piece)
    {
        var text = string.Concat(Enumerable.Repeat(piece, Characters / piece.Length));
        var times = new List<TimeSpan>();
        for (var turn = 0; turn < 12; turn++)
        {
            var watch = Stopwatch.StartNew();
            MotorFamily.Motor.ReadNameplate(text).Plate.ShouldNotBeNull();
            times.Add(watch.Elapsed);
        }

        times.Order().ElementAt(times.Count / 2).ShouldBeLessThan(Guard);
    }
}
