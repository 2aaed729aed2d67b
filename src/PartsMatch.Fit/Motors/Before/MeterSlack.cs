namespace PartsMatch.Fit.Motors.Before;

/// <summary>What an ordinary ohmmeter leaves open of a few ohms (practice).</summary>
internal static class MeterSlack
{
    /// <summary>A step of its last digit, either way, Ω.</summary>
    public const double Step = 0.1;

    /// <summary>What its own leads show where nobody subtracted them, Ω.</summary>
    public const double Leads = 0.3;

    /// <summary>How to get closer.</summary>
    public const string Advice = "Touch the meter's leads together, subtract what they show, and measure again, best with a meter that shows hundredths of an ohm.";
}
