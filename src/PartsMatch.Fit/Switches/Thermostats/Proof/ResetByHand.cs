using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>What contacts say that are reset by hand: they are judged by where they open, which is where it trips; they close by its button alone, once its bulb has come back.</summary>
internal static class ResetByHand
{
    /// <summary>How far back one that opens on rise can surely be reset where nothing is marked: 50 °F, K (practice).</summary>
    private const double SurelyColder = 27.8;

    /// <summary>How far back one that opens on fall can: 20 °F, K (practice). A freeze stat is reset in a room, which comes to no 50 °F above its trip.</summary>
    private const double SurelyWarmer = 11.12;

    /// <summary>What they say at the temperature that is there.</summary>
    public static Ruling Judge(ThermostatCase one, Points points, bool opensOnRise, bool closed)
    {
        if (points.At(opensOnRise ? Moving.OnRise : Moving.OnFall) is not { } trip) return Ruling.CantTell($"Where it is to open is not known.").ThenRead(one.AskedCutOut.Field, "Find out where it is to open: on its scale, or in the equipment's papers.", one.AskedCutOut.Side);
        var there = one.There!.Value;
        var isOver = opensOnRise ? there > trip : there < trip;
        if (isOver && !Degrees.AreNear(there, trip))
        {
            var said = FormattableString.Invariant($"{new ShownTemperature(there)} at its bulb are more than 5 °F (2.8 K) {(opensOnRise ? "above" : "below")} {new ShownTemperature(trip)}");
            return closed
                ? Ruling.Bad($"Its contacts are closed and are to be open: {said}.").ThePartHasFailed()
                : Ruling.Good($"Its contacts are open, and are to be: {said}. It has done its work; find out why.").NotThePart();
        }

        if (!closed) return Open(one, points.At(opensOnRise ? Moving.OnFall : Moving.OnRise) ?? Back(one, trip, opensOnRise), opensOnRise);
        return isOver
            ? Ruling.CantTell($"It is closed within 5 °F (2.8 K) of where it is to open: either is right.").ThenSeeItMove(one.Seen(closed), "Read the thermometer at its bulb as it opens.")
            : Ruling.Good($"It is closed, and {new ShownTemperature(there)} at its bulb are not {(opensOnRise ? "above" : "below")} {new ShownTemperature(trip)}, where it is to open.");
    }

    private static Ruling Open(ThermostatCase one, double resetsAt, bool opensOnRise) => one.Readings.HoldsAfterReset switch
    {
        null => Ruling.CantTell($"It is open, and is reset by hand.").ThenRead("holdsAfterReset", "Press its button: does it stay closed?"),
        true => Ruling.Good($"It stays closed after its reset: it had tripped. Find out why.").NotThePart(),
        false when IsBack(one.There!.Value, resetsAt, opensOnRise) => Ruling.Bad($"It does not stay closed after its reset, though {new ShownTemperature(one.There!.Value)} at its bulb are more than 5 °F (2.8 K) past {new ShownTemperature(resetsAt)}, where it can be reset.").ThePartHasFailed(),
        false => Ruling.CantTell($"It does not stay closed after its reset, and its bulb has not surely come back far enough for that.").ThenRead("bulbTemperature", FormattableString.Invariant($"Let its bulb come back more than 5 °F (2.8 K) past {new ShownTemperature(resetsAt)}, press its button again, and read the thermometer.")),
    };

    private static bool IsBack(double there, double resetsAt, bool opensOnRise) => (opensOnRise ? there < resetsAt : there > resetsAt) && !Degrees.AreNear(there, resetsAt);

    /// <summary>Its trip less its greatest differential, or less what is surely enough.</summary>
    private static double Back(ThermostatCase one, double trip, bool opensOnRise)
    {
        var differential = one.Measured.Differential?.Kelvins.High;
        return opensOnRise ? trip - (differential ?? SurelyColder) : trip + (differential ?? SurelyWarmer);
    }
}
