using PartsMatch.Service.Hosting;

return await Serving.RunAsync(args, Console.Out, Console.Error);
