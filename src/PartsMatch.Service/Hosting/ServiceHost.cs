using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Graph;
using PartsMatch.Service.Pages;

namespace PartsMatch.Service.Hosting;

/// <summary>Puts the service together: what it is made of, and which way a request takes through it.</summary>
internal static class ServiceHost
{
    private const string DefaultAddress = "http://127.0.0.1:5080";

    /// <exception cref="StartRefusedException">A setting is none of ours, or its value cannot be.</exception>
    public static WebApplication Build(string[] args, Action<WebApplicationBuilder>? change = null)
    {
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
        builder.Configuration.AddCommandLine(args, new Dictionary<string, string>(StringComparer.Ordinal) { ["--data"] = "Data:Folder" });
        SettingsCheck.Demand(builder.Configuration, args);
        if (!SaysWhereToListen(builder.Configuration)) builder.WebHost.UseUrls(DefaultAddress);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestLineSize = AddressLength.ReadAtMost;
        });
        // Standard output is for what a person is told, the first key above all; logs go beside it.
        builder.Logging.AddSimpleConsole().Services.Configure<Microsoft.Extensions.Logging.Console.ConsoleLoggerOptions>(console => console.LogToStandardErrorThreshold = LogLevel.Trace);

        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddSingleton(services => DataFolder.Of(services.GetRequiredService<IConfiguration>()));
        builder.Services.AddSingleton(services => services.GetRequiredService<DataFolder>().OpenStore(services.GetRequiredService<TimeProvider>()));
        builder.AddAccess();
        builder.Services.AddSingleton<Catalogues>().AddSingleton<PartWrites>().AddSingleton<PartHistories>().AddSingleton<OutcomeRecords>().AddSingleton<FamilyWeights>().AddSingleton<Judgements>().AddSingleton<Proofs>();
        builder.Services.AddSingleton<TrainingLog>().AddSingleton<ModelTrainings>();
        builder.Services.AddProblemDetails();
        builder.Services.AddGraph();
        builder.Services.AddPages();
        builder.Services.AddExchange();
        change?.Invoke(builder);
        return builder.Build();
    }

    /// <summary>Opens the store and builds all that is made once, so that whatever is wrong shows before anyone is answered.</summary>
    /// <remarks>The store is opened while schema and pages are made: neither needs the other, and together they are half of a start.</remarks>
    public static Task PrepareAsync(WebApplication app) => Task.WhenAll(Task.Run(() => Open(app.Services)), Task.Run(() => MakeWay(app)));

    private static void Open(IServiceProvider services)
    {
        _ = services.GetRequiredService<Catalogues>();
        _ = services.GetRequiredService<FamilyWeights>();
        _ = services.GetRequiredService<TrainingLog>();
    }

    /// <summary>The way that a request takes.</summary>
    private static void MakeWay(WebApplication app)
    {
        app.UseSecurityHeaders();
        app.UseProblems();
        app.UseResponseCompression();
        app.UseAddressLength();
        app.UseRouting();
        app.UseAccess();
        Health.Map(app);
        app.MapGraph();
        app.MapPages();
        app.MapExchange();
    }

    private static bool SaysWhereToListen(ConfigurationManager configuration) =>
        ((string[])["urls", "http_ports", "https_ports"]).Any(name => !string.IsNullOrEmpty(configuration[name])) || configuration.GetSection("Kestrel:Endpoints").Exists();
}
