using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "motor-faces.csv")]
public sealed class MotorFacesTests
{
    [Theory]

    // Retyped from an engineering table that prints NEMA's fractions (public page): AJ, AK, U, in inches.
    [InlineData("48C", 3.75, 3, 1 / 2.0)]
    [InlineData("56C", 5.875, 4.5, 5 / 8.0)]
    [InlineData("145TC", 5.875, 4.5, 7 / 8.0)]
    [InlineData("182TC", 7.25, 8.5, 1.125)]
    [InlineData("184TCH", 5.875, 4.5, 1.125)]
    [InlineData("213TC", 7.25, 8.5, 1.375)]
    public void C_faces_are_those_of_a_second_table(string frame, double circle, double pilot, double shaft)
    {
        var face = Find(frame)!;
        face.BoltCircle.Inches.ShouldBe(circle, 1e-9);
        face.Pilot.Inches.ShouldBe(pilot, 1e-9);
        face.ShaftDiameter!.Value.Inches.ShouldBe(shaft, 1e-9);
    }

    [Theory]
    [InlineData("56")]
    [InlineData("56CZ")]
    [InlineData("66C")]
    [InlineData("IEC 71")]
    public void Without_a_c_or_with_a_z_there_is_no_promise(string frame) => Find(frame).ShouldBeNull();

    [Fact]
    public void Faces_know_their_frames()
    {
        MotorFaces.All.Where(face => face.Frames.Contains("143T")).Select(face => face.Name).ShouldBe(["143TC/145TC"]);
        MotorFaces.All.Where(face => face.System == FrameSystem.Iec && face.Frames.Contains("90")).Select(face => (face.Name, face.HasClearanceHoles)).ShouldBe([("FF165", true), ("FT115", false)]);
    }

    private static MotorFace? Find(string frame) => MotorFaces.Find(FrameSize.Form.Read(frame).Value!);
}
