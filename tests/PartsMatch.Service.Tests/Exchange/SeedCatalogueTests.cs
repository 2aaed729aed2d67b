using PartsMatch.Fit;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Hosting;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Exchange;

public sealed class SeedCatalogueTests : IDisposable
{
    private readonly TestFolder _folder = new();

    public SeedCatalogueTests() => Seed.WriteTo(_folder);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Tables_become_parts_with_what_replaced_them_and_what_is_at_hand()
    {
        var seed = SeedCatalogue.Read(_folder.Path);
        seed.Parts.Count.ShouldBe(7);
        var old = seed.Parts.Single(part => part.Number == "ZV-7");
        old.Kind.ShouldBe("motor");
        old.Status.ShouldBe(Store.PartStatus.Discontinued);
        old.SupersededBy.ShouldBe([new("QN-100", "maker", new(2021, 4, 30))]);
        old.Spec.ShouldContain(new Store.NamedText("shaftDiameter", "1/2 in"));
        seed.Stock.Single(line => line.Number == "QN-100").ShouldBe(new("QN-100", 84.50m, "USD", 3));
    }

    [Fact]
    public void The_invented_catalogue_is_part_of_the_program_and_every_cell_of_it_reads()
    {
        var seed = SeedCatalogue.Read(folder: null);
        foreach (var family in Families.All) seed.Parts.ShouldContain(part => part.Kind == family.Kind);
        // As many as the demo data is meant to have.
        seed.Parts.Count(part => part.Kind == "motor").ShouldBe(3000);
        seed.Parts.Count(part => part.Kind == "capacitor").ShouldBe(200);
        var numbers = seed.Parts.Select(part => Store.PartNumber.Key(part.Number)).ToHashSet();
        foreach (var part in seed.Parts)
        {
            var texts = part.Spec.Select(text => new Fit.Judging.NamedText(text.Name, text.Text));
            Families.Find(part.Kind)!.ReadSpec(texts).Complaints.ShouldBeEmpty(part.Number);
            part.SupersededBy.ShouldAllBe(by => numbers.Contains(Store.PartNumber.Key(by.Number)));
        }
    }

    /// <summary>One row in twenty of all kinds, checked as strangers' tables are: none is refused.</summary>
    [Fact]
    public void The_invented_outcomes_go_with_the_invented_catalogue()
    {
        using var folder = new TestFolder();
        var demo = Path.Combine(Repository.Root, "seed-data");
        foreach (var table in Directory.GetFiles(demo, "*s.csv").Where(table => Path.GetFileName(table) != "outcomes.csv")) File.Copy(table, Path.Combine(folder.Path, Path.GetFileName(table)));
        folder.Write("outcomes.csv", string.Join('\n', File.ReadLines(Path.Combine(demo, "outcomes.csv")).Where((_, at) => at % 20 == 0)) + "\n");

        var outcomes = SeedCatalogue.Read(folder.Path).Outcomes;
        outcomes.Count.ShouldBe(2_300);
        outcomes.Select(outcome => outcome.Kind).Distinct().Order(StringComparer.Ordinal).ShouldBe(Families.All.Select(family => family.Kind).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Everything_that_is_wrong_is_told_with_its_file_row_and_column()
    {
        _folder.Write("motors.csv", "number,maker,title,status,power\nA-1,M,t,current,1 banana\nA-2,M,t,sold,1/4 hp\n");
        _folder.Write("stock.csv", "number,price,currency,onHand\nA-1,\"1,5\",USD,many\n");
        _folder.Write("supersessions.csv", "number,supersededBy,saidBy,on\nA-1,A-2,maker,yesterday\n");
        var refused = Should.Throw<StartRefusedException>(() => SeedCatalogue.Read(_folder.Path));
        refused.ExitCode.ShouldBe(ExitCode.SeedRefused);
        string[] places = ["motors.csv, row 2, power", "motors.csv, row 3, status", "stock.csv, row 2, price", "stock.csv, row 2, onHand", "supersessions.csv, row 2, on"];
        places.ShouldAllBe(place => refused.Message.Contains(place));
    }

    [Fact]
    public void A_column_that_is_no_field_is_told()
    {
        _folder.Write("motors.csv", "number,maker,title,status,pwoer\nA-1,M,t,current,1/4 hp\n");
        Should.Throw<StartRefusedException>(() => SeedCatalogue.Read(_folder.Path)).Message.ShouldContain("pwoer");
    }

    [Fact]
    public void A_row_with_too_many_cells_is_told_rather_than_guessed_at()
    {
        _folder.Write("motors.csv", "number,maker,title,status,power\nA-1,M,t,current,1/4 hp,and more\n");
        Should.Throw<StartRefusedException>(() => SeedCatalogue.Read(_folder.Path)).Message.ShouldContain("motors.csv");
    }

    [Fact]
    public void A_folder_without_tables_is_told()
    {
        using var empty = new TestFolder();
        Should.Throw<StartRefusedException>(() => SeedCatalogue.Read(empty.Path)).Message.ShouldContain("motors.csv");
    }
}
