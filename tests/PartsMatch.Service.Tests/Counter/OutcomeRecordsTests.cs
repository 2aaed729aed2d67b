using Microsoft.Extensions.DependencyInjection;
using PartsMatch.Fit;
using PartsMatch.Fit.Motors;
using PartsMatch.Learning;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Counter;

/// <summary>What ranking learns from.</summary>
public sealed class OutcomeRecordsTests
{
    [Fact]
    public async Task It_learns_from_what_counts_with_needs_read_as_any_is()
    {
        await using var service = await TestService.StartAsync();
        var records = service.Services.GetRequiredService<OutcomeRecords>();

        var learnt = records.LessonsOf(Families.All[0]).ToList().OrderBy(one => one.On).ToList();
        learnt.Select(one => (one.On, one.Place, one.PartNumber, one.Result)).ShouldBe(
        [
            (new DateOnly(2026, 1, 10), "cold store 4", "QN200", Result.RightFirstTime),
            (new DateOnly(2026, 1, 13), "cold store 4", "QN100", Result.CameBack),
            (new DateOnly(2026, 2, 1), "greenhouse", "QN300", Result.Reworked),
        ]);
        // The old part's entry is the plate: ZV-7 is said to have a 1/2 in shaft.
        ((MotorSpec)learnt[1].Need.Plate).ShaftDiameter.ShouldNotBeNull().Inches.ShouldBe(0.5, 1e-9);
        ((MotorSite)learnt[1].Need.Site).Volts.ShouldNotBeNull();
        ((MotorSpec)learnt[0].Need.Plate).ShaftDiameter.ShouldBeNull();
        learnt[0].Part.ShouldBeOfType<MotorSpec>();
        (learnt[0].Old, learnt[1].Old).ShouldBe((string.Empty, "ZV-7"));
        learnt.Select(one => one.Id).ShouldBeUnique();
        // The only one of a capacitor says that it was not the part.
        records.LessonsOf(Families.Find("capacitor")!).ToList().ShouldBeEmpty();
    }

    [Fact]
    public async Task A_day_may_be_tomorrow_and_no_later_nor_of_another_century()
    {
        var clock = new SteppedClock();
        await using var service = await TestService.StartAsync(clock, inDataFolder: null);
        var records = service.Services.GetRequiredService<OutcomeRecords>();
        (await RecordAsync("a", records.Today.AddDays(1))).IsGiven.ShouldBeTrue();
        var refusal = (await RecordAsync("b", records.Today.AddDays(2))).Refusals.ShouldHaveSingleItem();
        (refusal.Code, refusal.At).ShouldBe((Codes.DayToCome, "on"));
        (await RecordAsync("c", new DateOnly(2000, 1, 1))).IsGiven.ShouldBeTrue();
        var early = (await RecordAsync("d", new DateOnly(1999, 12, 31))).Refusals.ShouldHaveSingleItem();
        (early.Code, early.At, early.Message).ShouldBe((Codes.Unreadable, "on", "1999-12-31 is before 2000-01-01, the first day that is kept. A day is written as 2026-03-14."));

        Task<Answer<Store.StoredOutcome>> RecordAsync(string id, DateOnly on) =>
            records.RecordAsync(new(id, "motor", FormattableString.Invariant($"{on:O}"), string.Empty, string.Empty, [], [], "QN-100", "right first time", string.Empty, string.Empty, string.Empty), "the test");
    }
}
