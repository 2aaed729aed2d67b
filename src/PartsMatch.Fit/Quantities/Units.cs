namespace PartsMatch.Fit.Quantities;

/// <summary>In which units a value is written.</summary>
public enum Units
{
    /// <summary>In the unit it was given in: reading this text back gives an equal value.</summary>
    AsGiven,

    /// <summary>In the units a US plate uses (hp, in, °F), rounded to the trade's precision.</summary>
    Us,

    /// <summary>In SI units (W, mm, °C), rounded to the trade's precision.</summary>
    Si,
}
