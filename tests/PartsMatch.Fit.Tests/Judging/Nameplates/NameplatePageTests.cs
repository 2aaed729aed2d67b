using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>docs/nameplates.md is true: expected readings are worked by hand from the plates.</summary>
public sealed class NameplatePageTests
{
    public static TheoryData<string> Titles => PlatePage.Titles;

    [Fact]
    public void The_page_holds_at_least_120_plates_of_which_30_are_damaged_and_each_has_its_own_title()
    {
        PlatePage.All.Count.ShouldBeGreaterThanOrEqualTo(120);
        PlatePage.All.Count(plate => plate.Section == "Damaged plates").ShouldBeGreaterThanOrEqualTo(30);
        Families.All.ShouldAllBe(family => PlatePage.All.Count(plate => plate.Kind == family.Kind) >= 12);
        PlatePage.All.Select(plate => plate.Title).ShouldBeUnique();
    }

    /// <summary>It stands beside the box that it is typed into, and in what is answered to a text that says nothing.</summary>
    [Fact]
    public void The_example_of_every_family_reads_whole() =>
        Families.All.ShouldAllBe(family => family.ReadNameplate(family.PlateExample).Fields.Count >= 3 && family.ReadNameplate(family.PlateExample).Leftovers.Count == 0 && family.ReadNameplate(family.PlateExample).Contradictions.Count == 0);

    [Theory]
    [MemberData(nameof(Titles))]
    public void A_plate_reads_as_the_page_says(string title)
    {
        var plate = PlatePage.Titled(title);
        var reading = plate.Read(plate.AsWritten);
        Fields(reading).ShouldBe(Expected(plate.Fields), ignoreOrder: true);
        reading.Leftovers.Select(leftover => leftover.Text).ShouldBe(plate.Of("leftover").Select(line => line.Value));
        Contradicted(reading).ShouldBe(plate.Of("contradiction").Select(line => line.Value), ignoreOrder: true);
        Mended(reading).ShouldBe(plate.Of("mended").Select(line => line.Value), ignoreOrder: true);
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void A_plate_reads_the_same_with_its_phrases_in_any_order_and_any_divider_between(string title)
    {
        var plate = PlatePage.Titled(title);
        for (var seed = 0; seed < 24; seed++)
        {
            var text = plate.Shuffled(seed);
            var reading = plate.Read(text);
            Fields(reading).ShouldBe(Expected(plate.Fields), ignoreOrder: true, text);
            Contradicted(reading).ShouldBe(plate.Of("contradiction").Select(line => line.Value), ignoreOrder: true, text);
            Mended(reading).ShouldBe(plate.Of("mended").Select(line => line.Value), ignoreOrder: true, text);
            Words(reading.Leftovers.Select(leftover => leftover.Text)).ShouldBe(Words(plate.Of("leftover").Select(line => line.Value)), ignoreOrder: true, text);
        }
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void A_plate_reads_the_same_in_small_letters(string title)
    {
        var plate = PlatePage.Titled(title);
        var reading = plate.Read(plate.AsWritten.ToLowerInvariant());
        Fields(reading).ShouldBe(Expected(plate.Fields), ignoreOrder: true);
        reading.Leftovers.Select(leftover => leftover.Text).ShouldBe(plate.Of("leftover").Select(line => line.Value.ToLowerInvariant()));
        Contradicted(reading).ShouldBe(plate.Of("contradiction").Select(line => line.Value), ignoreOrder: true);
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void Without_a_phrase_only_the_fields_of_that_phrase_change(string title)
    {
        var plate = PlatePage.Titled(title);
        for (var phrase = 1; phrase <= plate.Phrases.Count; phrase++)
        {
            var touched = plate.Lines.Where(line => line.Phrases.Contains(phrase)).Select(line => line.Name == "contradiction" ? line.Value : line.Name).ToHashSet();
            var reading = plate.Read(plate.Without(phrase));
            Fields(reading).Where(field => !touched.Contains(field.Name))
                .ShouldBe(Expected(plate.Fields).Where(field => !touched.Contains(field.Name)), ignoreOrder: true, $"without phrase {phrase}: {plate.Without(phrase)}");
            Contradicted(reading).Where(field => !touched.Contains(field)).ShouldBe(plate.Of("contradiction").Select(line => line.Value).Where(field => !touched.Contains(field)), ignoreOrder: true);
        }
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void Without_a_phrase_the_fields_that_only_it_says_are_not_read_and_known_only_if_deduced(string title)
    {
        var plate = PlatePage.Titled(title);
        for (var phrase = 1; phrase <= plate.Phrases.Count; phrase++)
        {
            var text = plate.Without(phrase);
            var need = plate.Family.ReadNeed(new(text, [], []));
            foreach (var name in plate.Fields.Where(line => line.Phrases is [var only] && only == phrase).Select(line => line.Name))
            {
                plate.Read(text).Fields.ShouldNotContain(field => field.Field.Name == name, $"{name} without phrase {phrase}: {text}");
                var known = plate.Family.SpecShape.Find(name)!.Get(need.Need.Plate) is not null;
                known.ShouldBe(need.Deductions.Any(deduction => deduction.Side == Side.Plate && deduction.Field == name), $"{name} without phrase {phrase}: {text}");
            }
        }
    }

    private static List<NamedText> Fields(NameplateReading reading) => [.. reading.Fields.Select(field => new NamedText(field.Field.Name, field.Text))];

    private static IEnumerable<NamedText> Expected(IEnumerable<PageLine> lines) => lines.Select(line => new NamedText(line.Name, line.Value));

    private static IEnumerable<string> Contradicted(NameplateReading reading) => reading.Contradictions.SelectMany(contradiction => contradiction.Fields);

    private static IEnumerable<string> Mended(NameplateReading reading) =>
        reading.Fields.SelectMany(field => field.Mended.Select(mended => $"{field.Field.Name} {mended.Typed} read as {mended.ReadAs}"));

    private static IEnumerable<string> Words(IEnumerable<string> texts) => texts.SelectMany(text => text.Split(' ', '\n'));
}
