using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Switches;

/// <summary>What is to be read next at a thermostat or a pressure control, whatever is known and was read: nobody is sent round in a circle.</summary>
public sealed class NextReadingPropertyTests
{
    /// <summary>Wide and close enough to lie on either side of every setting of the pool.</summary>
    private static readonly Dictionary<Type, string[]> Answers = new()
    {
        [typeof(Temperature)] = [.. Enumerable.Range(-12, 60).Select(step => $"{step * 10} °F")],
        [typeof(Pressure)] = [.. Enumerable.Range(0, 62).Select(step => $"{step * 10} psi")],
    };

    [Theory]
    [InlineData("thermostat")]
    [InlineData("pressureControl")]
    public void What_is_to_be_read_next_leads_on(string kind)
    {
        var family = Families.Find(kind)!;
        var cases =
            from plate in TextPool.TextsOf(family.SpecShape, 6)
            from site in TextPool.TextsOf(family.SiteShape, 4)
            from readings in TextPool.TextsOf(family.ReadingsShape, 6)
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
