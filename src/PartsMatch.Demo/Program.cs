using System.Globalization;
using PartsMatch.Demo;
using PartsMatch.Demo.Writing;

if (args.Length > 1 || (args.Length == 1 && args[0].StartsWith('-')))
{
    Console.Error.WriteLine("Usage: PartsMatch.Demo [folder]   writes the demo catalogue into the folder (seed-data when none is named).");
    return 2;
}

var folder = args is [var named] ? named : "seed-data";
var catalogue = DemoCatalogue.Make();
try
{
    SeedFolder.Write(catalogue, folder);
}
catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine($"The folder {folder} cannot be written to.");
    return 1;
}

foreach (var (family, parts) in catalogue.Families)
{
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{SeedFolder.FileOf(family)}: {parts.Count} parts, {parts.Count(part => part.IsDiscontinued)} discontinued"));
}

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"supersessions.csv: {catalogue.Supersessions.Count}"));
return 0;
