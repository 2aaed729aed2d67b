using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>What contacts that move by themselves say at a temperature.</summary>
internal sealed record AtTemperature
{
    private AtTemperature()
    {
    }

    /// <summary>What they are called in a sentence: "Its contacts".</summary>
    internal required string Whose { get; init; }

    /// <summary>Where they are to move.</summary>
    internal required Points Points { get; init; }

    /// <summary>Whether they open on rise.</summary>
    internal required bool OpensOnRise { get; init; }

    /// <summary>Whether they are closed.</summary>
    internal required bool IsClosed { get; init; }

    /// <summary>The temperature at the bulb, °C.</summary>
    internal required double There { get; init; }

    /// <summary>The field that is asked for where they are to open.</summary>
    internal required (string Field, Side Side) AskedCutOut { get; init; }

    /// <summary>The same for where they are to close.</summary>
    internal required (string Field, Side Side) AskedCutIn { get; init; }

    /// <summary>How it is asked for where they move.</summary>
    internal required Func<Ruling, Ruling> SeeThemMove { get; init; }

    /// <summary>What its contacts say; with three wires those that end the defrost.</summary>
    /// <param name="one">The case.</param>
    /// <param name="points">Where they are to move.</param>
    /// <param name="opensOnRise">Whether they open on rise.</param>
    /// <param name="closed">Whether they are closed.</param>
    public static Ruling Judge(ThermostatCase one, Points points, bool opensOnRise, bool closed) => new AtTemperature
    {
        Whose = "Its contacts",
        Points = points,
        OpensOnRise = opensOnRise,
        IsClosed = closed,
        There = one.There!.Value,
        AskedCutOut = one.AskedCutOut,
        AskedCutIn = one.AskedCutIn,
        SeeThemMove = open => open.ThenSeeItMove(one.Seen(closed), $"Bring its bulb past where it is to {(closed ? "open" : "close")}, and read the thermometer as it does: {new BulbBrought(points.OnFall, points.OnRise)}."),
    }.Judge();

    /// <summary>What the fans' contacts of a switch with three wires say. Where they moved has no reading of its own: they are looked at again past where they should have.</summary>
    /// <param name="one">The case.</param>
    /// <param name="closed">Whether they are closed.</param>
    public static Ruling JudgeFans(ThermostatCase one, bool closed) => new AtTemperature
    {
        Whose = "The fans' contacts",
        Points = one.Fans,
        OpensOnRise = true,
        IsClosed = closed,
        There = one.There!.Value,
        AskedCutOut = ("fanCutOutNeeded", Side.Site),
        AskedCutIn = ("fanCutInNeeded", Side.Site),
        SeeThemMove = open => open.ThenRead("bulbTemperature", $"Bring its bulb more than 5 °F (2.8 K) past where they are to {(closed ? "open" : "close")}, read the thermometer, and see whether they did: {new BulbBrought(one.Fans.OnFall - Degrees.Near, one.Fans.OnRise + Degrees.Near)}."),
    }.Judge();

    private Ruling Judge()
    {
        if (Points is { OnRise: null, OnFall: null }) return Asking(AskedCutOut, $"Where it is to move is not known.", "Find out where it is to open and close: on its scale, or in the equipment's papers.");
        if (IsBeyond() is not { } warm) return Between();
        var shallBeClosed = OpensOnRise != warm;
        var said = FormattableString.Invariant($"{new ShownTemperature(There)} at its bulb are more than 5 °F (2.8 K) {(warm ? "above" : "below")} {new ShownTemperature(Points.At(warm ? Moving.OnRise : Moving.OnFall)!.Value)}");
        if (IsClosed == shallBeClosed) return IsClosed ? Ruling.Good($"{Whose} are closed, and are to be: {said}.") : Ruling.Good($"{Whose} are open, and are to be: {said}. It has done its work; look further along the circuit.").NotThePart();
        return Ruling.Bad($"{Whose} are {(IsClosed ? "closed and are to be open" : "open and are to be closed")}: {said}.").ThePartHasFailed();
    }

    /// <summary>Whether it is surely warmer than both temperatures; false where surely colder; null in between, or where one of them is not known and may lie beyond.</summary>
    private bool? IsBeyond()
    {
        if (Points.OnRise is { } upper && There > upper && !Degrees.AreNear(There, upper)) return true;
        if (Points.OnFall is { } lower && There < lower && !Degrees.AreNear(There, lower)) return false;
        return null;
    }

    private Ruling Between() => Points is { OnRise: not null, OnFall: not null }
        ? SeeThemMove(Ruling.CantTell($"{new ShownTemperature(There)} at its bulb lie within its differential, or within 5 °F (2.8 K) of where it moves: either is right."))
        : Asking(OpensOnRise == Points.OnRise is null ? AskedCutOut : AskedCutIn, $"{new ShownTemperature(There)} at its bulb: only one of the two temperatures at which it moves is known.", "Find out where it is to do so: on its scale, or in the equipment's papers.");

    private static Ruling Asking((string Field, Side Side) asked, FormattableString sentence, string why) => Ruling.CantTell(sentence).ThenRead(asked.Field, why, asked.Side);
}
