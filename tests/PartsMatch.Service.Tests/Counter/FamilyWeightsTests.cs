using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Counter;

/// <summary>Weights are put in place, kept and put back, and a file of them is whole at any moment.</summary>
public sealed class FamilyWeightsTests : IDisposable
{
    private static readonly Family Family = Families.All[0];

    private readonly TestFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public void New_weights_are_on_the_disk_and_those_before_them_are_kept()
    {
        var weights = Open();
        weights.HasPrevious(Family).ShouldBeFalse();
        var before = weights.Now;
        weights.Put(Family, Some(2), weights.Now[Family]).IsGiven.ShouldBeTrue();

        weights.Now[Family].Id.ShouldBe(Some(2).Id);
        before[Family].Id.ShouldBe(Weights.HandSet(Family).Id, "who took them keeps them");
        weights.HasPrevious(Family).ShouldBeTrue();
        Open().Now[Family].Id.ShouldBe(Some(2).Id, "another start reads them");
        WeightsFile.Read(File.ReadAllText(PathOf("previous.json")), Family).Weights!.Id.ShouldBe(Weights.HandSet(Family).Id);
    }

    [Fact]
    public void Weights_that_were_held_against_others_than_those_that_rank_by_now_are_refused()
    {
        var weights = Open();
        var held = weights.Now[Family];
        weights.Put(Family, Some(2), held);
        var refused = weights.Put(Family, Some(3), held);
        (refused.IsGiven, refused.Refusals[0].Code).ShouldBe((false, Codes.ChangedSince));
        weights.Now[Family].Id.ShouldBe(Some(2).Id);
    }

    [Fact]
    public void Gone_back_twice_everything_is_as_it_was()
    {
        var weights = Open();
        weights.GoBack(Family).ShouldBeNull("there is nothing before the first ones");
        weights.Put(Family, Some(2), weights.Now[Family]);
        weights.GoBack(Family)!.Value!.Id.ShouldBe(Weights.HandSet(Family).Id);
        Open().Now[Family].Id.ShouldBe(Weights.HandSet(Family).Id);
        weights.GoBack(Family)!.Value!.Id.ShouldBe(Some(2).Id);
        Open().Now[Family].Id.ShouldBe(Some(2).Id);
    }

    [Fact]
    public void The_same_weights_made_anew_do_not_push_out_those_there_is_to_go_back_to()
    {
        var weights = Open();
        weights.Put(Family, Some(2), weights.Now[Family]);
        weights.Put(Family, Some(2), weights.Now[Family]);
        weights.GoBack(Family)!.Value!.Id.ShouldBe(Weights.HandSet(Family).Id);
    }

    [Fact]
    public void What_somebody_wrote_into_the_file_for_the_next_start_is_kept_as_the_previous_weights()
    {
        var weights = Open();
        File.WriteAllText(PathOf("json"), WeightsFile.Write(Some(3)));
        weights.Put(Family, Some(2), weights.Now[Family]);
        weights.GoBack(Family)!.Value!.Id.ShouldBe(Some(3).Id);
    }

    [Fact]
    public void Previous_weights_that_cannot_be_read_are_told_of_and_nothing_changes()
    {
        var weights = Open();
        weights.Put(Family, Some(2), weights.Now[Family]);
        File.WriteAllText(PathOf("previous.json"), "{");
        var refusal = weights.GoBack(Family)!.Refusals.ShouldHaveSingleItem();
        refusal.Message.ShouldStartWith("The weights from before cannot be used, and nothing was changed. The weights file is not JSON");
        weights.Now[Family].Id.ShouldBe(Some(2).Id);
        Open().Now[Family].Id.ShouldBe(Some(2).Id);
    }

    [Theory]
    [InlineData("json.new")]
    [InlineData("previous.json.new")]
    public void A_disk_that_does_not_take_them_leaves_the_weights_as_they_are(string inTheWay)
    {
        var weights = Open();
        Directory.CreateDirectory(PathOf(inTheWay));
        weights.Put(Family, Some(2), weights.Now[Family]).Refusals.ShouldHaveSingleItem().Code.ShouldBe(Codes.StoreFailed);
        weights.Now[Family].Id.ShouldBe(Weights.HandSet(Family).Id);
        Open().Now[Family].Id.ShouldBe(Weights.HandSet(Family).Id);
    }

    [Fact]
    public void What_a_cut_off_writing_left_beside_the_file_is_never_read()
    {
        Open();
        File.WriteAllText(PathOf("json.new"), "{\"version\":");
        var weights = Open();
        weights.Now[Family].Id.ShouldBe(Weights.HandSet(Family).Id);
        weights.Put(Family, Some(2), weights.Now[Family]).IsGiven.ShouldBeTrue();
    }

    [Fact]
    public async Task Whoever_reads_while_weights_change_finds_whole_ones()
    {
        var weights = Open();
        string[] ids = [Weights.HandSet(Family).Id, Some(2).Id];
        var changing = Task.Run(() =>
        {
            for (var turn = 0; turn < 20; turn++) weights.Put(Family, turn % 2 == 0 ? Some(2) : Weights.HandSet(Family), weights.Now[Family]);
        }, TestContext.Current.CancellationToken);
        var seen = 0;
        do
        {
            var now = weights.Now;
            ids.ShouldContain(now[Family].Id);
            now[Family].ShouldBeSameAs(now[Family]);
            WeightsFile.Read(await File.ReadAllTextAsync(PathOf("json"), TestContext.Current.CancellationToken), Family).Weights.ShouldNotBeNull();
            seen++;
        }
        while (!changing.IsCompleted);
        await changing;
        seen.ShouldBeGreaterThan(0);
    }

    private FamilyWeights Open() => new(new DataFolder(_data.Path, SeedFolder: null));

    private string PathOf(string ending) => Path.Combine(_data.Path, "weights", $"{Family.Kind}.{ending}");

    private static Weights Some(double intercept) => Weights.Of(Family, new(WeightsOrigin.Trained, intercept));
}
