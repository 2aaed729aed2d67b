using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace PartsMatch.Service.Tests.Support;

/// <summary>Everything that was logged, with its exceptions.</summary>
internal sealed class RecordedLog : ILoggerProvider, ILogger
{
    private readonly ConcurrentQueue<string> _lines = [];

    public string Text => string.Join('\n', _lines);

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) =>
        _lines.Enqueue($"{logLevel} {formatter(state, exception)} {exception}");

    public void Dispose()
    {
    }
}
