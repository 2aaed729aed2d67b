using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "motor-frames.csv")]
public sealed class MotorFramesTests
{
    /// <summary>Retyped from engineering tables that print NEMA's fractions (public pages): shaft height D, feet 2E and 2F, shaft U, in inches.</summary>
    public static TheoryData<string, double, double, double, double> Nema => new()
    {
        { "42", 2 + (5 / 8.0), 3.5, 1 + (11 / 16.0), 3 / 8.0 },
        { "48", 3, 4.25, 2.75, 1 / 2.0 },
        { "56", 3.5, 4 + (7 / 8.0), 3, 5 / 8.0 },
        { "66", 4 + (1 / 8.0), 5 + (7 / 8.0), 5, 3 / 4.0 },
        { "145T", 3.5, 5.5, 5, 7 / 8.0 },
        { "184T", 4.5, 7.5, 5.5, 1 + (1 / 8.0) },
        { "215T", 5.25, 8.5, 7, 1 + (3 / 8.0) },
    };

    [Theory]
    [MemberData(nameof(Nema))]
    public void Nema_frames_are_those_of_a_second_table(string frame, double height, double across, double along, double shaft)
    {
        // MG 1 prints the fractions rounded to 0.01 in.
        var row = Find(frame)!;
        row.ShaftHeight.Inches.ShouldBe(height, 0.006);
        row.FootWidth.Inches.ShouldBe(across, 0.006);
        row.FootLength.Inches.ShouldBe(along, 0.006);
        row.ShaftDiameter.Inches.ShouldBe(shaft, 1e-9);
        row.Source.Status.ShouldBe(SourceStatus.Published);
    }

    [Fact]
    public void Shaft_height_follows_from_the_number()
    {
        // Published: NEMA MG 1 4.2: two digits are sixteenths of an inch, the first two of three are quarters; IEC numbers are millimetres.
        foreach (var row in MotorFrames.All)
        {
            var digits = string.Concat(row.Name.TakeWhile(char.IsAsciiDigit));
            var number = int.Parse(digits, System.Globalization.CultureInfo.InvariantCulture);
            if (row.System == FrameSystem.Iec) row.ShaftHeight.Millimeters.ShouldBe(number, 1e-9);
            else row.ShaftHeight.Inches.ShouldBe(digits.Length == 2 ? number / 16.0 : number / 10 / 4.0, 0.006, row.Name);
        }
    }

    [Theory]
    [InlineData("48Y")]
    [InlineData("56CZ")]
    [InlineData("56J")]
    [InlineData("449T")]
    [InlineData("IEC 250M")]
    public void A_frame_that_promises_nothing_or_is_not_in_the_table_has_no_row(string frame) => Find(frame).ShouldBeNull();

    [Theory]
    [InlineData("56C", "56")]
    [InlineData("143TC", "143T")]
    [InlineData("56HC", "56H")]
    [InlineData("IEC 90", "90S")]
    [InlineData("IEC 71M", "71")]
    public void A_face_or_a_foot_length_changes_no_shaft(string frame, string row) => Find(frame)!.Name.ShouldBe(row);

    [Fact]
    public void Small_frames_have_a_flat_and_larger_ones_a_key()
    {
        Find("42")!.ShaftForm.ShouldBe(ShaftForm.Flat);
        Find("48H")!.ShaftForm.ShouldBe(ShaftForm.Flat);
        Find("56")!.ShaftForm.ShouldBe(ShaftForm.Keyway);
    }

    [Fact]
    public void Iec_rows_are_from_memory() => MotorFrames.All.Where(row => row.System == FrameSystem.Iec).ShouldAllBe(row => row.Source.Status == SourceStatus.Memory);

    private static MotorFrame? Find(string frame) => MotorFrames.Find(FrameSize.Form.Read(frame).Value!);
}
