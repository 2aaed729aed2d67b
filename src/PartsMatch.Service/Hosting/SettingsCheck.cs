using PartsMatch.Service.Access;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Exchange.Lists;
using PartsMatch.Service.Graph.Limits;

namespace PartsMatch.Service.Hosting;

/// <summary>Looks at what was set before anything is made of it: a key that is none of ours is never left aside, and a value that cannot be is told with what can.</summary>
internal static class SettingsCheck
{
    /// <summary>People put our name before a setting; there is nothing under it.</summary>
    private const string OurName = "PartsMatch";
    private const int MostSlips = 2;

    private static readonly IReadOnlyList<Setting> Known =
    [
        .. DataFolder.Settings,
        .. Setting.AllOf(AccessSettings.Section, typeof(AccessSettings)),
        .. Setting.AllOf(QueryLimits.Section, typeof(QueryLimits)),
        .. Setting.AllOf(ExchangeLimits.Section, typeof(ExchangeLimits)),
        .. Setting.AllOf(ListLimits.Section, typeof(ListLimits)),
    ];

    private static readonly IReadOnlyList<string> OurSections = [OurName, .. Known.Select(setting => SectionOf(setting.Key)).Distinct()];

    /// <summary>Sections that the host reads.</summary>
    private static readonly IReadOnlyList<string> HostSections = ["Logging", "Kestrel"];

    /// <exception cref="StartRefusedException">All that is wrong, a line each.</exception>
    public static void Demand(IConfiguration configuration, IEnumerable<string> typed)
    {
        List<string> complaints =
        [
            .. configuration.AsEnumerable().Where(pair => pair.Value is not null).OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => Complaint(pair.Key, pair.Value!)).OfType<string>(),
            .. typed.Select(KeyTyped).OfType<string>().Where(key => !Has(OurSections, SectionOf(key)) && !Has(HostSections, SectionOf(key)) && !IsSlip(key)).Select(Unknown),
        ];
        if (complaints.Count == 0 && configuration.GetSection(AccessSettings.Section).Get<AccessSettings>()?.Contradiction is { } why) complaints.Add(why);
        if (complaints.Count > 0) throw new StartRefusedException(ExitCode.SettingsRefused, string.Join(Environment.NewLine, complaints));
    }

    private static string? Complaint(string key, string value)
    {
        if (Known.FirstOrDefault(setting => Same(setting.Key, key)) is { } known) return known.Holds(value) ? null : $"{known.Key} is “{value}”; it takes {known.Right}.";
        if (IsLogLevel(key)) return Enum.TryParse<LogLevel>(value, ignoreCase: true, out _) ? null : $"{key} is “{value}”; it takes one of {string.Join(", ", Enum.GetNames<LogLevel>())}.";
        return key.Contains(':', StringComparison.Ordinal) && Has(OurSections, SectionOf(key)) || IsSlip(key) ? Unknown(key) : null;
    }

    /// <summary>The environment is full of others' names; one that is ours but for a slip is not another's.</summary>
    private static bool IsSlip(string key) => Known.Any(setting => Spelling.Distance(setting.Key, key, MostSlips) is > 0 and <= MostSlips);

    private static bool IsLogLevel(string key) => key.StartsWith("Logging:", StringComparison.OrdinalIgnoreCase) && key.Contains(":LogLevel:", StringComparison.OrdinalIgnoreCase);

    private static string Unknown(string key)
    {
        var bare = Same(SectionOf(key), OurName) ? key[(OurName.Length + 1)..] : key;
        var near = Spelling.Nearest(bare, Known.Select(setting => setting.Key));
        return near.Count > 0
            ? $"There is no setting {key}. Did you mean {string.Join(" or ", near)}?"
            : $"There is no setting {key}. The settings are: {string.Join(", ", Known.Select(setting => setting.Key))}.";
    }

    /// <summary>The key of a setting typed as --Section:Key=value.</summary>
    private static string? KeyTyped(string arg) => arg.StartsWith("--", StringComparison.Ordinal) && arg[2..].Split('=')[0] is var key && key.Contains(':', StringComparison.Ordinal) ? key : null;

    private static string SectionOf(string key) => key.Split(':')[0];

    private static bool Has(IEnumerable<string> names, string name) => names.Any(one => Same(one, name));

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
