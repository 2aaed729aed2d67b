using System.Globalization;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Nameplates;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

public sealed class KnownReadingsTests
{
    /// <summary>More than are ever kept at once.</summary>
    private const int Flood = 10_001;

    private static readonly Field Frequency = MotorFamily.Motor.SpecShape.Find("frequency")!;
    private static readonly Field Speed = MotorFamily.Motor.SpecShape.Find("speed")!;

    private readonly KnownReadings known = new();

    [Fact]
    public void What_a_text_reads_as_is_known_of_its_field_and_its_unit_only()
    {
        Keep(Frequency, "Hz", "60", "60 Hz");
        Of(Frequency, "Hz", "60").ShouldBe((true, "60 Hz"));
        Of(Frequency, null, "60").ShouldBe((false, null));
        Of(Speed, "Hz", "60").ShouldBe((false, null));
    }

    [Fact]
    public void That_a_text_is_no_value_is_known_as_well()
    {
        Keep(Frequency, null, "x", null);
        Of(Frequency, null, "x").ShouldBe((true, null));
    }

    [Fact]
    public void A_flood_of_texts_is_forgotten_and_what_comes_next_is_kept()
    {
        for (var at = 0; at < Flood; at++) Keep(Speed, null, at.ToString(CultureInfo.InvariantCulture), null);
        Of(Speed, null, "0").ShouldBe((false, null));
        Keep(Speed, null, "1075", "1075 rpm");
        Of(Speed, null, "1075").ShouldBe((true, "1075 rpm"));
    }

    [Fact]
    public void Plates_read_on_many_threads_at_once_read_as_one_by_one()
    {
        var atOnce = new string[PlatePage.All.Count];
        Parallel.For(0, atOnce.Length, at => atOnce[at] = Said(PlatePage.All[at]));
        atOnce.ShouldBe(PlatePage.All.Select(Said));
    }

    private static string Said(PagePlate plate) => string.Join("; ", plate.Read(plate.AsWritten).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    private void Keep(Field field, string? unit, string text, string? reading) => known.Keep(known.Of(field, unit), text, reading).ShouldBe(reading);

    private (bool IsKnown, string? Reading) Of(Field field, string? unit, string text) => (known.Of(field, unit).TryGetValue(text, out var reading), reading);
}
