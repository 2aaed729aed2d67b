using PartsMatch.Fit.Judging;

namespace PartsMatch.Demo.Outcomes;

/// <summary>An invented outcome.</summary>
/// <param name="Id">Its id.</param>
/// <param name="On">The day.</param>
/// <param name="Place">Where.</param>
/// <param name="Old">The old part's number.</param>
/// <param name="New">The new part's number.</param>
/// <param name="Site">What was read of the site.</param>
/// <param name="Result">right first time, reworked, or came back.</param>
/// <param name="Reason">Why it came back or was reworked; empty else.</param>
/// <param name="Right">How likely it was right first time by the hidden truth: no file holds it.</param>
public sealed record DemoOutcome(string Id, DateOnly On, string Place, string Old, string New, IReadOnlyList<NamedText> Site, string Result, string Reason, double Right);
