using System.Globalization;
using PartsMatch.Demo;
using PartsMatch.Demo.Writing;

const string usage = "Usage: PartsMatch.Demo [folder]: writes the demo data into the folder (seed-data when none is named).";

var catalogue = DemoCatalogue.Make();
switch (args)
{
    case [] or [not ['-', ..]]:
        var folder = args is [var named] ? named : "seed-data";
        if (Write(() => SeedFolder.Write(catalogue, folder), folder) is var failed and not 0) return failed;
        foreach (var (family, parts) in catalogue.Families)
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{SeedFolder.FileOf(family)}: {parts.Count} parts, {parts.Count(part => part.IsDiscontinued)} discontinued; {family.Outcomes} outcomes"));
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"supersessions.csv: {catalogue.Supersessions.Count}"));
        return 0;
    default:
        Console.Error.WriteLine(usage);
        return 2;
}

static int Write(Action write, string where)
{
    try
    {
        write();
        return 0;
    }
    catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
    {
        Console.Error.WriteLine($"{where} cannot be written to.");
        return 1;
    }
}
