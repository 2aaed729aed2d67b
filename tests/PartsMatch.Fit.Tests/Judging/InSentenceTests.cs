using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>Labels as they stand on the fields; how they are written inside a sentence is plain English.</summary>
public sealed class InSentenceTests
{
    [Theory]
    [InlineData("Transformer's VA", "transformer's VA")]
    [InlineData("Coils' inrush VA", "coils' inrush VA")]
    [InlineData("DC volts", "DC volts")]
    [InlineData("AC-1 amps", "AC-1 amps")]
    [InlineData("NEMA size", "NEMA size")]
    [InlineData("R-290 is there.", "R-290 is there.")]
    [InlineData("A pole carries 9 A.", "a pole carries 9 A.")]
    [InlineData("", "")]
    public void Units_and_abbreviations_keep_their_case(string words, string inside) => InSentence.Of(words).ShouldBe(inside);
}
