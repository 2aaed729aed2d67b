using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Nothing else runs while times are taken.</summary>
[CollectionDefinition(nameof(NameplateReaderTimeTests), DisableParallelization = true)]
public sealed class Undisturbed;

/// <summary>Time and memory grow with a text's length and no faster. Times are the processor's, compared within one run, the least of several each, so that a slow or busy machine does not matter.</summary>
[Collection(nameof(NameplateReaderTimeTests))]
public sealed class NameplateReaderTimeTests
{
    private const int Characters = 4000;

    /// <summary>Lists double when they are full: just past a power of two they hold up to half of their room empty.</summary>
    private const double SlackOfGrowingLists = 1.5;

    /// <summary>What a reading needs whatever its length.</summary>
    private const int OnceAReading = 200_000;

    /// <summary>The whole may take this many times as long as its tenths: caches and collections are felt; anything quadratic takes ten times as long.</summary>
    private const double SlackOfTime = 3;

    private const int Turns = 15;

    /// <summary>What a reading needs whatever its length, and what the clock cannot tell.</summary>
    private static readonly TimeSpan OnceATime = TimeSpan.FromMilliseconds(1);

    public static TheoryData<string> Repeated =>
    [
        "1", "1/", "1 ", "1 - ", "1,1", "1 1/2 ", "1 to ", "A ", "A1", "A 1 ", "V/", "V/PH/HZ 1/1/1 ", "HP RPM V\n1 1 1\n", "SHAFT 1 X 1 X ", "5 MFD 370 VAC ", "CW/CCW ", "CCW OPP ", "😀", "x", ".", "\n", "V 1 V - ", "40 - 40 C AMB ",
        "SER 1", "NOT FOR ", "6O HZ ", "6O", "1l", "xO1", "HI 1 LO 1 A ", "115/1/60 ", "1,_", "1..", "T1 W1 ", "HP 1/4 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 FR 48Y ROT CCW LE INS B AMB 60C CAP 5/370 TEAO ",
    ];

    [Theory]
    [MemberData(nameof(Repeated))]
    public void Four_thousand_characters_take_about_as_long_as_ten_times_four_hundred_however_they_are_made(string piece)
    {
        var (shorter, whole) = (Text(piece, Characters / 10), Text(piece, Characters));
        var (leastShorter, leastWhole) = (TimeSpan.MaxValue, TimeSpan.MaxValue);
        for (var turn = 0; turn < Turns; turn++)
        {
            leastShorter = Lesser(leastShorter, Time(shorter, 10));
            leastWhole = Lesser(leastWhole, Time(whole, 1));
        }

        leastWhole.ShouldBeLessThan(OnceATime + (SlackOfTime * leastShorter));
    }

    [Theory]
    [MemberData(nameof(Repeated))]
    public void Twice_the_text_asks_for_no_more_than_twice_the_memory(string piece)
    {
        Bytes(Text(piece, 200));
        double whole = Bytes(Text(piece, Characters));
        whole.ShouldBeLessThan((SlackOfGrowingLists * 2 * Bytes(Text(piece, Characters / 2))) + OnceAReading);
    }

    private static TimeSpan Lesser(TimeSpan one, TimeSpan other) => one < other ? one : other;

    private static TimeSpan Time(string text, int readings)
    {
        var before = Environment.CpuUsage.TotalTime;
        for (var reading = 0; reading < readings; reading++) MotorFamily.Motor.ReadNameplate(text).Plate.ShouldNotBeNull();
        return Environment.CpuUsage.TotalTime - before;
    }

    private static long Bytes(string text)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        MotorFamily.Motor.ReadNameplate(text).Plate.ShouldNotBeNull();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static string Text(string piece, int length) => string.Concat(Enumerable.Repeat(piece, length / piece.Length));
}
