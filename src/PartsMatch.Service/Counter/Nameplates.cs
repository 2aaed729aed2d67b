using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Counter;

/// <summary>Reads a plate's text, or says why there is nothing to read.</summary>
internal static class Nameplates
{
    public static Answer<NameplateReading> Read(Family family, string text)
    {
        var reading = family.ReadNameplate(text);
        List<Refusal> refusals = [.. reading.Complaints.Where(Needs.IsOfTheWhole).Select(complaint => new Refusal(complaint.Code, "text", complaint.Message))];
        return refusals.Count == 0 ? reading : Answer<NameplateReading>.Refused(refusals);
    }
}
