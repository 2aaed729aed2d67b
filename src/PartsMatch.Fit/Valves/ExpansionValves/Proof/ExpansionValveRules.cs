using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves.Proof;

/// <summary>Is its bulb in place?</summary>
public sealed class BulbPlace() : ReadingRule<ExpansionValveCase>("Bulb", ExpansionValveReadingSources.StarvedCoil)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ExpansionValveCase one) => one.Readings.BulbInPlace switch
    {
        true => Ruling.Good($"Its bulb is tight and wrapped."),
        false => Ruling.Bad($"Its bulb is not in place: strap it to clean, level suction pipe, wrap it, and judge the valve after that.").NotThePart(),
        null => Ruling.Read("bulbInPlace", "See whether the bulb is tight on clean, level suction pipe and wrapped: a loose one floods or starves the coil."),
    };
}

/// <summary>Is the liquid before it clear?</summary>
public sealed class LiquidBefore() : ReadingRule<ExpansionValveCase>("Liquid before it", ExpansionValveReadingSources.StarvedCoil)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ExpansionValveCase one) => one.Readings.ClearLiquid switch
    {
        true => Ruling.Good($"The liquid before it is clear."),
        false => Ruling.Bad($"There are bubbles before it: a low charge, a plugged drier or too little subcooling starves the coil, not the valve.").NotThePart(),
        null => Ruling.Read("clearLiquid", "Look into the sight glass before it, or measure subcooling there: bubbles starve any valve."),
    };
}

/// <summary>Has the coil its air?</summary>
public sealed class AirOverCoil() : ReadingRule<ExpansionValveCase>("Air over the coil", ExpansionValveReadingSources.StarvedCoil)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ExpansionValveCase one) => one.Readings.CoilHasAir switch
    {
        true => Ruling.Good($"The coil has its air."),
        false => Ruling.Bad($"The coil has no air: fans, ice or dirt are mended first; superheat says nothing until then.").NotThePart(),
        null => Ruling.Read("coilHasAir", "See that the evaporator's fans run and its coil is free of ice and dirt."),
    };
}

/// <summary>Is superheat at the bulb as it should be?</summary>
/// <remarks>5 to 15 °F (2.8 to 8.3 K), edges included (practice).</remarks>
public sealed class BulbSuperheat() : ReadingRule<ExpansionValveCase>("Superheat at the bulb", ExpansionValveReadingSources.BulbSuperheat)
{
    internal const double Least = 5 / 1.8;
    internal const double Most = 15 / 1.8;

    /// <inheritdoc/>
    public override Ruling? Judge(ExpansionValveCase one)
    {
        FormattableString limit = $"5 to 15 °F (2.8 to 8.3 K)";
        if (one.LacksRefrigerant) return Ruling.CantTell($"Superheat follows from pressure, temperature and refrigerant; {(one.Need.Site.Refrigerant is { } named ? $"{named.Name}'s saturation is not known here" : "the refrigerant is not known")}.").ThenRead("refrigerant", "Read the refrigerant on the unit's plate, or give the superheat as your gauge shows it.", Side.Site);
        if (one is { Superheat: null, Readings: { SuctionPressure: { } off, BulbTemperature: not null } }) return Ruling.CantTell($"{new ShownPressure(off.Kilopascals)} at the gauge lie off the saturation curve of {one.Need.Site.Refrigerant!.Name}: no superheat follows from them.").ThenRead("suctionPressure", "Read the suction pressure at the evaporator's outlet again, and see that the refrigerant is the one on the unit's plate.");
        if (one.Superheat is not { } superheat) return Ruling.Read(one.Readings.SuctionPressure is null ? "suctionPressure" : "bulbTemperature", "Measure superheat at the bulb: suction pressure at the evaporator's outlet and the pipe's temperature beside the bulb.");
        if (Within.Span(superheat, Least, Most)) return Ruling.Good($"Superheat is {one.Words(superheat)}.", limit);
        return superheat > Most
            ? Ruling.Bad($"Superheat is {one.Words(superheat)}: the coil is starved.", limit)
            : Ruling.Bad($"Superheat is {one.Words(superheat)}: the coil is flooded; liquid may reach the compressor.", limit);
    }
}

/// <summary>Does it follow its bulb?</summary>
/// <remarks>It is condemned once bulb, liquid and air are known to be good: bubbles or a coil without air keep suction pressure from moving too.</remarks>
public sealed class FollowsBulb() : ReadingRule<ExpansionValveCase>("Bulb warmed and chilled", ExpansionValveReadingSources.BulbTest)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ExpansionValveCase one)
    {
        if (one.Readings.OpensWhenWarmed == false) return Failed(one, Ruling.Bad($"It does not open when its bulb is warmed: its charge is lost, or it is stuck shut."));
        if (one.Readings.ClosesWhenChilled == false) return Failed(one, Ruling.Bad($"It does not close when its bulb is chilled: it is stuck open, or dirt holds it."));
        if (one.Readings.OpensWhenWarmed == true || one.Readings.ClosesWhenChilled == true) return Ruling.Good($"It follows its bulb: set its superheat before it is condemned.");
        if (one.Superheat is not { } superheat || Within.Span(superheat, BulbSuperheat.Least, BulbSuperheat.Most)) return null;
        return superheat > BulbSuperheat.Most
            ? Ruling.Read("opensWhenWarmed", "Take the bulb off and hold it in a warm hand: suction pressure rises if the valve opens.")
            : Ruling.Read("closesWhenChilled", $"Hold the bulb in {Chills(one.Readings.BulbTemperature)}, with the compressor watched: suction pressure falls if the valve closes.");
    }

    /// <summary>What a bulb is chilled with: ice water, at 32 °F, closes no valve whose bulb was hardly warmer, and opens that of a freezer (practice).</summary>
    private static string Chills(Temperature? bulb) => bulb switch
    {
        null => "ice water (where its pipe is colder than 45 °F, 7.2 °C, in dry ice or cold spray, with gloves on)",
        { } pipe when pipe.DegreesFahrenheit >= 45 - 1e-9 => "ice water",
        _ => "dry ice or cold spray, with gloves on, for ice water is no colder than its pipe",
    };

    private static Ruling Failed(ExpansionValveCase one, Ruling bad) => one.New is null && one.HasWhatItNeeds ? bad.ThePartHasFailed() : bad;
}
