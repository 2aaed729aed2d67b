namespace PartsMatch.Demo.Trade;

/// <summary>The parts of a line: designs are drawn until it has its share, and a maker never lists the same one twice.</summary>
internal static class LineParts
{
    /// <summary>Draws them.</summary>
    /// <param name="share">How many; fewer than there are different designs and makers.</param>
    /// <param name="what">Who makes it.</param>
    /// <param name="draw">Chance.</param>
    /// <param name="design">Draws a design.</param>
    /// <param name="offer">A design as a maker offers it.</param>
    public static IEnumerable<DemoPart> Of<TSpec>(int share, Programme what, Draw draw, Func<Draw, TSpec> design, Func<TSpec, Maker, DemoPart> offer)
    {
        var makers = Maker.WhoMake(what);
        var listed = new HashSet<(Maker, TSpec)>();
        for (var parts = 0; parts < share;)
        {
            var spec = design(draw);
            var maker = draw.Pick(makers);
            if (!listed.Add((maker, spec))) continue;
            parts++;
            yield return offer(spec, maker);
        }
    }
}
