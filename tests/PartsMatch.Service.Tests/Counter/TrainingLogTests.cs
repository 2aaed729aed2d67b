using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Counter;

/// <summary>What was trained is written down, and not for ever.</summary>
public sealed class TrainingLogTests : IDisposable
{
    private static readonly Family Family = Families.All[0];

    private readonly TestFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public void The_last_twenty_are_kept_newest_first_and_read_again_as_they_were_written()
    {
        var log = Open();
        for (var at = 1; at <= 23; at++) log.Add(Family, Entry(at));
        var read = Open()[Family];
        read.Select(entry => entry.Outcomes).ShouldBe(Enumerable.Range(4, 20).Reverse());
        var figures = read[0].Figures;
        read[0].ShouldBe(Entry(23) with { Figures = figures });
        figures.ShouldBe(new Dictionary<string, double> { ["gain"] = 0.125 });
        Open()[Families.All[1]].ShouldBeEmpty("another kind has a log of its own");
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[{}]")]
    [InlineData("[null]")]
    [InlineData("null")]
    public void A_log_that_cannot_be_read_keeps_the_service_from_starting_and_says_why(string text)
    {
        Directory.CreateDirectory(Path.Combine(_data.Path, "weights"));
        File.WriteAllText(Path.Combine(_data.Path, "weights", $"{Family.Kind}.trainings.json"), text);
        var refused = Should.Throw<StartRefusedException>(Open);
        refused.ExitCode.ShouldBe(ExitCode.WeightsRefused);
        refused.Message.ShouldEndWith("cannot be read. Mend the file, or remove it and start again: no weight hangs on it.");
    }

    private TrainingLog Open()
    {
        var data = new DataFolder(_data.Path, SeedFolder: null);
        Directory.CreateDirectory(data.Weights);
        return new(data);
    }

    private static TrainingEntry Entry(int at) =>
        new(new(2026, 3, 4, 5, 6, at, TimeSpan.Zero), "first", TrainingEnd.Rescaled, at, LeftOut: 2, "It was “not” better.", new Dictionary<string, double> { ["gain"] = 0.125 });
}
