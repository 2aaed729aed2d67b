using PartsMatch.Service.Commands;

return await CommandLine.RunAsync(args, Console.Out, Console.Error);
