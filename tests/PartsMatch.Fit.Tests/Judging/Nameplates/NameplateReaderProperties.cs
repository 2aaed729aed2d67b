using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging.Nameplates;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

public sealed class NameplateReaderProperties
{
    private static readonly string[] Figures = ["1", "1/4", "1/0", "3/4-1/3", "230", "208-230", "115/230", "60", "1075", "5/370", "2.1", "2,6", "-5", "1e9", "½", "45+5", "+8", "-30/+15", "20 ±5", "1,075", "1075/3", "230Δ", "400Y", "1 / 4", "3\u20444", "１", "370/440", "0", "56C", "48Y", "1/1/1/1/1/1/1/1/1/1/1/1/1/1"];
    private static readonly string[] Signs = [" ", " ", " ", "", "\n", ", ", "; ", " | ", ":", "=", "-", "/", " / ", "\u2215", ".", "(", ")", "°", "\"", "🙂", "\u0301", "×", " x ", " to ", "[", "]", "?", " ... ", "[burnt]", ",", "±", " +/- "];

    private static readonly string[] Words =
        [.. MotorVocabulary.All.Labels.SelectMany(label => label.Labels), .. MotorVocabulary.All.Strangers, .. MotorVocabulary.All.Fillers, .. MotorVocabulary.All.Steps, .. MotorFamily.Motor.SpecShape.Fields.SelectMany(field => field.Form.Words.Take(8).Concat(field.Form.UnitSpellings))];

    private static readonly Arbitrary<string> Mixtures = Gen.Elements(Words).SelectMany(word => Gen.Elements(Figures).SelectMany(figure => Gen.Elements(Signs).Select(sign => (word, figure, sign))))
        .SelectMany(piece => Gen.Elements(piece.word, piece.figure, piece.sign, piece.sign)).ListOf().Select(pieces => string.Concat(pieces)).ToArbitrary();

    [Property(MaxTest = 400)]
    public void Any_text_is_read_without_an_exception_and_accounted_for(string? text) => Check(text ?? string.Empty);

    [Property(MaxTest = 800)]
    public Property Any_mixture_of_words_figures_and_signs_is_read_and_accounted_for() => Prop.ForAll(Mixtures, Check);

    private static void Check(string text)
    {
        if (text.Length > NameplateReader.LongestText) return;
        foreach (var family in Families.All)
        {
            var reading = family.ReadNameplate(text);
            var covered = new bool[text.Length];
            foreach (var span in reading.Fields.SelectMany(field => field.Spans).Concat(reading.Leftovers).Concat(reading.Names))
            {
                text.Substring(span.From, span.Length).ShouldBe(span.Text);
                covered.AsSpan(span.From, span.Length).Fill(true);
            }

            for (var at = 0; at < text.Length; at++) (covered[at] || !char.IsLetterOrDigit(text[at]) || string.IsNullOrWhiteSpace(text)).ShouldBeTrue($"“{text[at]}” at {at} of {Escaped(text)}");
            foreach (var field in reading.Fields)
            {
                var again = field.Field.Form.ReadAny(field.Text);
                again.IsRead.ShouldBeTrue(field.Text);
                field.Field.Form.WriteAny(again.Value!, Units.AsGiven).ShouldBe(field.Text);
                field.Field.Get(reading.Plate).ShouldBe(again.Value);
            }

            reading.Fields.Select(field => field.Field.Name).ShouldBeUnique();
        }
    }

    private static string Escaped(string text) => string.Concat(text.EnumerateRunes().Select(rune => rune.Value is > 31 and < 127 ? rune.ToString() : FormattableString.Invariant($"\\u{rune.Value:x4}")));
}
