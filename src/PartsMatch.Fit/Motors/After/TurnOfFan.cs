using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Does it turn the right way?</summary>
/// <remarks>The shaft itself proves it. The air proves it for a propeller only: a blower wheel blows the right way, if less, also when it turns backwards.</remarks>
public sealed class TurnOfFan() : ReadingRule<SwapCase>("Turn", MotorReadingSources.Turn)
{
    /// <inheritdoc/>
    public override Ruling Judge(SwapCase one) => (one.Readings.TurnsRightWay, one.Readings.AirRightWay, one.Need.Site.FanKind) switch
    {
        (null, _, _) when one.StandsStill == true => Ruling.CantTell($"It stands still, so which way it turns does not show."),
        (true, false, FanKind.Propeller) => Ruling.CantTell($"It is said to turn the right way, and the air to go the wrong way: is the blade of the other hand, or turned round on the shaft?"),
        (true, _, _) => Ruling.Good($"It turns the right way."),
        (false, _, _) => Ruling.Bad($"It turns the wrong way: reverse it by its plug or leads."),
        (null, null, _) => Ruling.CantTell($"Which way it turns was not looked at."),
        (null, _, FanKind.BlowerWheel) => Ruling.NotApplicable($"The air of a blower wheel proves nothing: it goes the right way, if less, also when the wheel turns backwards. Look at the shaft."),
        (null, true, FanKind.Propeller) => Ruling.Good($"The propeller's air goes the right way, so it turns the right way."),
        (null, false, FanKind.Propeller) => Ruling.Bad($"The propeller's air goes the wrong way: it turns backwards; reverse it by its plug or leads."),
        (null, false, null) => Ruling.CantTell($"The air goes the wrong way: a propeller that turns backwards does that. Look at the shaft."),
        _ => Ruling.CantTell($"The air goes the right way, which proves the turn of a propeller and nothing for a blower wheel; whether it is the one or the other is not known."),
    };
}
