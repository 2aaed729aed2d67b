namespace PartsMatch.Service.Hosting;

/// <summary>The service will not start as it is set up. The message is for a person: what is wrong, where, what would be right.</summary>
public sealed class StartRefusedException(int exitCode, string message, Exception? cause = null) : Exception(message, cause)
{
    public int ExitCode { get; } = exitCode;
}
