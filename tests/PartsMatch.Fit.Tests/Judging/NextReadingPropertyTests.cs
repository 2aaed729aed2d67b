using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What is to be read next at a valve or switch, whatever is known and was read: nobody is sent round in a circle.</summary>
public sealed class NextReadingPropertyTests
{
    /// <summary>Wide and close enough to lie on either side of every setting of the pool, or none, some and more than enough of what is marked.</summary>
    private static readonly Dictionary<Type, string[]> Answers = new()
    {
        [typeof(Temperature)] = [.. Enumerable.Range(-12, 60).Select(step => $"{step * 10} °F")],
        [typeof(Measured<ElectricPotential>)] = ["0 V", "0.1 V", "10 V", "24 V", "120 V", "208 V", "240 V", "480 V"],
        [typeof(Measured<ElectricCurrent>)] = ["0 A", "10 A", "100 A"],
        [typeof(Figures<ElectricPotential>)] = ["240 V", "240/480 V"],
        [typeof(Ohms)] = ["open", "0 Ω", "20 Ω"],
        [typeof(Pressure)] = [.. Enumerable.Range(0, 62).Select(step => $"{step * 10} psi")],
    };

    [Theory]
    [InlineData("thermostat")]
    [InlineData("pressureControl")]
    [InlineData("contactor")]
    [InlineData("defrostTimer")]
    [InlineData("solenoidValve")]
    [InlineData("expansionValve")]
    [InlineData("condensingPressureValve")]
    public void What_is_to_be_read_next_leads_on(string kind)
    {
        var family = Families.Find(kind)!;
        var cases =
            from plate in TextPool.TextsOf(family.SpecShape, 6)
            from site in TextPool.TextsOf(family.SiteShape, 4)
            from readings in Gen.CollectToArray(family.ReadingsShape.Fields, field => Gen.Choose(1, 10).Zip(Gen.Elements(AnswersTo(field))).Select(pair => (IsRead: pair.Item1 <= 6, Text: new NamedText(field.Name, pair.Item2)))).Select(all => all.Where(one => one.IsRead).Select(one => one.Text))
            select new Given([.. plate], [.. site], [.. readings]);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(5000), Prop.ForAll(cases.ToArbitrary(), given =>
        {
            if (Diagnose(family, given) is not { Conclusion: Conclusion.ReadNext, Next: { } next }) return;
            var field = (next.Side switch { null => family.ReadingsShape, Side.Site => family.SiteShape, _ => family.SpecShape }).Find(next.Field).ShouldNotBeNull($"{next.Side} {next.Field}");
            AnswersTo(field).Any(text => Diagnose(family, given.With(next.Side, new(field.Name, text))).Next != next).ShouldBeTrue($"{next.Side} {next.Field} “{next.Why}” of {given}");
        }));
    }

    private static Diagnosis Diagnose(Family family, Given given) => family.BeforeCondemning(family.ReadNeed(new(null, given.Plate, given.Site)).Need, family.ReadReadings(given.Readings).Readings);

    private static IEnumerable<string> AnswersTo(Field field) => field.Form.Choices.Count > 0 ? field.Form.Choices : Answers.TryGetValue(field.Form.ValueType, out var texts) ? texts : [field.Form.Example];

    /// <summary>What is known of plate and place, and what was read.</summary>
    private sealed record Given(IReadOnlyList<NamedText> Plate, IReadOnlyList<NamedText> Site, IReadOnlyList<NamedText> Readings)
    {
        /// <summary>The same with one more, or with one in the place of what stood there.</summary>
        public Given With(Side? side, NamedText answer) => side switch
        {
            null => this with { Readings = Beside(Readings, answer) },
            Side.Site => this with { Site = Beside(Site, answer) },
            _ => this with { Plate = Beside(Plate, answer) },
        };

        public override string ToString() => $"plate [{Show(Plate)}] site [{Show(Site)}] readings [{Show(Readings)}]";

        private static List<NamedText> Beside(IReadOnlyList<NamedText> texts, NamedText answer) => [.. texts.Where(text => text.Name != answer.Name), answer];

        private static string Show(IEnumerable<NamedText> texts) => string.Join("; ", texts.Select(text => $"{text.Name}={text.Text}"));
    }
}
