using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>What is sent, and how an answer shows that it is one.</summary>
/// <param name="Path">The path.</param>
/// <param name="Bodies">What is posted, one after the other and then again; none where it is got.</param>
/// <param name="Has">What a right answer has in it.</param>
internal sealed record LoadRequest(string Path, IReadOnlyList<string> Bodies, string Has);

/// <summary>What a load came to.</summary>
/// <param name="Answers">How many came.</param>
/// <param name="Seconds">In which time.</param>
/// <param name="Median">Of the time that an answer took, ms.</param>
/// <param name="Percentile99">Of the time that an answer took, ms.</param>
/// <param name="Wrong">The first that was no right answer; null when all were.</param>
internal sealed record LoadResult(int Answers, double Seconds, double Median, double Percentile99, string? Wrong);

/// <summary>Sends requests over a few connections, each as soon as its last one is answered, and looks at every answer.</summary>
internal static class Load
{
    /// <summary>Goes on for so long, and until so many answers came.</summary>
    public static LoadResult Run(Uri service, LoadRequest request, int connections, TimeSpan duration, int least)
    {
        var endpoint = new IPEndPoint(IPAddress.Parse(service.Host), service.Port);
        byte[][] sent = request.Bodies.Count == 0 ? [Bytes(service, request.Path, body: null)] : [.. request.Bodies.Select(body => Bytes(service, request.Path, body))];
        var bySocket = Enumerable.Range(0, connections).Select(_ => new LoadConnection(endpoint)).ToDictionary(connection => connection.Socket);
        var (next, took, waiting) = (0, new List<double>(), new List<Socket>());
        var start = Stopwatch.GetTimestamp();
        try
        {
            foreach (var connection in bySocket.Values) connection.Send(sent[next++ % sent.Length]);
            while (Stopwatch.GetElapsedTime(start) < duration || took.Count < least)
            {
                waiting.Clear();
                waiting.AddRange(bySocket.Keys);
                Socket.Select(waiting, null, null, Timeout.InfiniteTimeSpan);
                foreach (var connection in waiting.Select(socket => bySocket[socket]))
                {
                    if (connection.Receive() is not { } answer) continue;
                    if (!IsRight(answer, request)) return Result(answer);
                    took.Add(connection.Took.TotalMilliseconds);
                    connection.Send(sent[next++ % sent.Length]);
                }
            }

            return Result(wrong: null);
        }
        finally
        {
            foreach (var connection in bySocket.Values) connection.Dispose();
        }

        LoadResult Result(string? wrong)
        {
            var seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
            took.Sort();
            return took.Count == 0 ? new(0, seconds, double.NaN, double.NaN, wrong) : new(took.Count, seconds, took[took.Count / 2], took[(int)(took.Count * 0.99)], wrong);
        }
    }

    private static bool IsRight(string answer, LoadRequest request) =>
        answer.StartsWith("HTTP/1.1 200 ", StringComparison.Ordinal) && answer.Contains(request.Has, StringComparison.Ordinal) && !answer.Contains("\"errors\"", StringComparison.Ordinal);

    private static byte[] Bytes(Uri service, string path, string? body) => Encoding.UTF8.GetBytes(body is null
        ? $"GET {path} HTTP/1.1\r\nHost: {service.Authority}\r\n\r\n"
        : FormattableString.Invariant($"POST {path} HTTP/1.1\r\nHost: {service.Authority}\r\nAccept: application/graphql-response+json\r\nContent-Type: application/json\r\nContent-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n{body}"));
}
