using Microsoft.Extensions.DependencyInjection;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Learning;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Tests.Support;

/// <summary>Outcomes of the small catalogue's motors, each put in for a quarter horsepower at 230 V.</summary>
internal static class Recorded
{
    private static readonly NamedText[] Plate = [new("power", "1/4 hp"), new("speed", "1075 rpm"), new("voltage", "230 V"), new("phase", "1"), new("frequency", "60 Hz"), new("shaftDiameter", "1/2 in")];
    private static readonly NamedText[] Site = [new("volts", "230 V")];

    /// <summary>QN-100 and QN-200 in turn, which their specs hardly tell apart: one of them comes back from most places, the other from few.</summary>
    public static void OneMotorComesBack(TestService service, int count) => Add(service, count, at => at % 2 == 0 ? ("QN-100", at % 20 == 0) : ("QN-200", at % 10 < 7));

    /// <summary>Two motors of which one comes back as often as the other: there is nothing to learn but how often.</summary>
    public static void BothComeBackAlike(TestService service, int count) => Add(service, count, at => (at % 2 == 0 ? "QN-100" : "QN-200", at % 8 < 2));

    private static void Add(TestService service, int count, Func<int, (string Number, bool ComesBack)> told)
    {
        var (family, records) = (Families.All[0], service.Services.GetRequiredService<OutcomeRecords>());
        var need = family.ReadNeed(new(null, Plate, Site, null)).Need;
        var shelf = service.Services.GetRequiredService<Catalogues>().Shelf;
        for (var at = 0; at < count; at++)
        {
            var (number, comesBack) = told(at);
            records.All.Enqueue((family, new(new DateOnly(2025, 1, 1).AddDays(at % 365), FormattableString.Invariant($"place {at % 23}"), need, number, shelf.Find(number)!.Spec, comesBack ? Result.CameBack : Result.RightFirstTime)));
        }
    }
}
