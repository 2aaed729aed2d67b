using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>A capacitor's marking: 5 µF 370 V, 5/370, 45+5 MFD 370/440 VAC, 40/5 mfd 440, MFD 10 VAC 370.</summary>
internal sealed class CapacitorRatingForm : TextForm<CapacitorRating>
{
    public override string Expected => "a capacitor's µF and volts, such as 5 µF 370 V, 45+5 µF 440 V, or none";

    public override string Example => "5 µF 370 V";

    public override IReadOnlyList<string> Words => ["none"];

    public override IReadOnlyList<string> UnitSpellings => QuantityForms.Capacitance.UnitSpellings;

    public override TextReading<CapacitorRating> Read(string text)
    {
        var given = text.Trim();
        if (given.Equals("none", StringComparison.OrdinalIgnoreCase)) return TextReading<CapacitorRating>.Of(CapacitorRating.None);
        return MarkedFigure.TryRead(QuantityForms.Capacitance.Plain(given), out var figures) && Rating(figures) is { } rating
            ? TextReading<CapacitorRating>.Of(rating)
            : TextReading<CapacitorRating>.Refused(given.Length == 0 ? "nothing is written" : $"“{given}” is not {Expected}");
    }

    public override string Write(CapacitorRating value, Units units = Units.AsGiven)
    {
        if (value.Capacitance is not { } capacitance) return "none";
        var microfarads = QuantityForms.Capacitance.Write(capacitance, units);
        if (value.SecondSection is { } second)
        {
            microfarads = $"{microfarads[..microfarads.IndexOf(' ', StringComparison.Ordinal)]}+{QuantityForms.Capacitance.Write(second, units)}";
        }

        return value.Volts is { } volts ? $"{microfarads} {QuantityForms.Volts.Write(volts, units)}" : microfarads;
    }

    public override IReadOnlyList<double> StepsOf(object value)
    {
        var rating = (CapacitorRating)value;
        IEnumerable<ElectricCapacitance?> sections = [rating.Capacitance, rating.SecondSection];
        return [.. sections.OfType<ElectricCapacitance>().SelectMany(section => QuantityForms.Capacitance.StepsOf(section)), .. rating.Volts is { } volts ? QuantityForms.Volts.StepsOf(volts) : []];
    }

    /// <summary>The sections come first, then the volts; of 370/440 V the greater is the rating, the lesser is served as well.</summary>
    private static CapacitorRating? Rating(IReadOnlyList<MarkedFigure> figures)
    {
        var sections = figures.TakeWhile((figure, at) => at <= LastSection(figures)).ToList();
        var volts = figures.Skip(sections.Count).ToList();
        if (sections.Count > 2 || volts.Count > 2 || sections.Exists(figure => figure.IsVolts) || volts.Exists(figure => figure.IsCapacitance)) return null;

        // 40/5 is two sections as 40+5 is: the fan's stands second and is the smaller. 88-108 and 88/108 are a start capacitor's span.
        if (sections is [_, { Joiner: not '+' } fans] && (fans.Joiner == '-' || fans.Number.Double >= sections[0].Number.Double)) return null;
        if (volts is [_, { Joiner: not '/' }]) return null;

        // 10-370 has neither unit nor slash; 370/440 V are as likely two voltages.
        if (sections is [{ Unit.Length: 0 } only] && volts is [var first, ..] && (first.Joiner == '-' || CapacitorVolts.Usual.Contains(only.Number.Double) && CapacitorVolts.Usual.Contains(first.Number.Double))) return null;
        var microfarads = sections.ConvertAll(figure => QuantityForms.Capacitance.Make(figure.Number, QuantityForms.Capacitance.Us, string.Empty));
        var marked = volts.ConvertAll(figure => QuantityForms.Volts.Make(figure.Number, QuantityForms.Volts.Us, string.Empty));
        if (microfarads.Exists(reading => !reading.IsRead) || marked.Exists(reading => !reading.IsRead)) return null;
        return new(microfarads[0].Value, marked.Count == 0 ? null : marked.Max(reading => reading.Value), microfarads.Count == 2 ? microfarads[1].Value : null);
    }

    /// <summary>The last figure that is a capacitance: by its unit, or for want of one by its size.</summary>
    private static int LastSection(IReadOnlyList<MarkedFigure> figures)
    {
        for (var at = figures.Count - 1; at > 0; at--)
        {
            if (figures[at].IsCapacitance) return at;
        }

        if (figures[0].IsCapacitance) return 0;
        var last = 0;
        while (last + 1 < figures.Count && !figures[last + 1].IsVolts && (figures[last + 1].Joiner == '+' || figures[last + 1].Number.Double < CapacitorVolts.Least)) last++;
        return last;
    }
}
