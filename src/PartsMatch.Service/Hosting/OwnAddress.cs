namespace PartsMatch.Service.Hosting;

/// <summary>The address at which this machine reaches the service, for a command that is started meanwhile.</summary>
internal static class OwnAddress
{
    /// <summary>A service that listens everywhere is reached at 127.0.0.1.</summary>
    public static string Of(ICollection<string> listening)
    {
        var address = new Uri(listening.OrderByDescending(url => url.StartsWith("http://", StringComparison.Ordinal)).First().Replace("//+", "//0.0.0.0", StringComparison.Ordinal).Replace("//*", "//0.0.0.0", StringComparison.Ordinal));
        return address.Host is "0.0.0.0" or "[::]" ? FormattableString.Invariant($"{address.Scheme}://127.0.0.1:{address.Port}") : address.GetLeftPart(UriPartial.Authority);
    }
}
