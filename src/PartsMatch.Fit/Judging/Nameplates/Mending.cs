namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Mends slips where the plate then says more, and nothing that it said before is lost.</summary>
/// <remarks>Only what was left over is mended: a figure or word that can be read as it stands is never touched. What a mended figure must be is settled by its label or unit and the field's limits, as for any figure.</remarks>
internal sealed class Mending(string text, Lexicon lexicon, Func<IReadOnlyList<Slip>, PlateFindings> read)
{
    /// <summary>Slips are tried one by one up to so many; a plate with more is not typed but noise.</summary>
    private const int MostSlips = 12;

    /// <summary>What the plate says with all slips mended that make it say more.</summary>
    public PlateFindings Best()
    {
        var asTyped = read([]);
        if (asTyped.Leftovers.Count == 0) return asTyped;
        var left = new bool[text.Length];
        foreach (var span in asTyped.Leftovers) left.AsSpan(span.From, span.Length).Fill(true);
        var slips = Slip.In(Quantities.PlainSigns.In(text), lexicon).Where(slip => left[slip.From] && left[slip.To - 1]).Take(MostSlips + 1).ToList();
        if (slips.Count is 0 or > MostSlips) return asTyped;
        if (read(slips) is var all && IsBetter(all, asTyped) && slips.TrueForAll(slip => Uses(all, slip))) return all;

        // Two slips in one row of figures need each other; any other is tried by itself, so that a code among them spoils nothing.
        var (best, mended) = (asTyped, new List<Slip>());
        foreach (var slip in slips)
        {
            mended.Add(slip);
            var tried = read(mended);
            if (IsBetter(tried, best) && Uses(tried, slip)) best = tried;
            else mended.RemoveAt(mended.Count - 1);
        }

        return best;
    }

    private bool IsBetter(PlateFindings mended, PlateFindings before) =>
        mended.Fields.All(MayBeMended) && before.Fields.All(field => mended.Fields.Any(other => other.Field == field.Field && other.Text == field.Text)) && mended.Contradictions.Count <= before.Contradictions.Count;

    /// <summary>Whether a figure stays likely with what was mended in it: no letter before a frame's number, no slash where fractions are not printed, and nothing beyond what is usual.</summary>
    private bool MayBeMended(ReadField read)
    {
        if (read.Mended.Count == 0) return true;
        if (read.Field.Form.MayBeginWithLetter && read.Mended.Any(mended => char.IsLetter(mended.Typed[0]))) return false;
        if (!read.Field.Form.TakesFractions && read.Mended.Any(mended => mended.ReadAs.Contains('/') && !mended.Typed.Contains('/'))) return false;
        return lexicon.UsualOf(read.Field) is not { } usual || (read.Field.Form.ReadAny(read.Text).Value is { } value && usual.Holds(value));
    }

    private static bool Uses(PlateFindings findings, Slip slip) => findings.Fields.Any(field => field.Spans.Any(span => span.From <= slip.From && slip.From < span.From + span.Length));
}
