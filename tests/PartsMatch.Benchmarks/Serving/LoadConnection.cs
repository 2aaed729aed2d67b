using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace PartsMatch.Benchmarks.Serving;

/// <summary>One connection that is kept open, with one request under way. It costs a fraction of what a full client does, so that it is the service that is measured.</summary>
internal sealed class LoadConnection : IDisposable
{
    private readonly Socket socket;
    private byte[] answer = new byte[65_536];
    private int length;
    private long sent;

    public LoadConnection(IPEndPoint service)
    {
        socket = new(SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
        socket.Connect(service);
    }

    public Socket Socket => socket;

    /// <summary>How long the last answer took, from the request's first byte to its last.</summary>
    public TimeSpan Took { get; private set; }

    public void Send(byte[] request)
    {
        (length, sent) = (0, Stopwatch.GetTimestamp());
        for (var at = 0; at < request.Length;) at += socket.Send(request.AsSpan(at));
    }

    /// <summary>Takes what has come.</summary>
    /// <returns>The whole answer, head and all, once it is there; null before.</returns>
    public string? Receive()
    {
        if (length == answer.Length) Array.Resize(ref answer, 2 * answer.Length);
        var some = socket.Receive(answer.AsSpan(length));
        if (some == 0) throw new IOException("The service closed a connection.");
        length += some;
        if (!IsWhole(answer.AsSpan(0, length))) return null;
        Took = Stopwatch.GetElapsedTime(sent);
        return Encoding.UTF8.GetString(answer, 0, length);
    }

    public void Dispose() => socket.Dispose();

    private static bool IsWhole(ReadOnlySpan<byte> answer)
    {
        var head = answer.IndexOf("\r\n\r\n"u8);
        if (head < 0) return false;
        var lengthAt = answer[..head].IndexOf("Content-Length: "u8);
        if (lengthAt < 0) return answer.EndsWith("\r\n0\r\n\r\n"u8);
        var said = answer[(lengthAt + "Content-Length: ".Length)..];
        return answer.Length == head + 4 + int.Parse(said[..said.IndexOf((byte)'\r')], CultureInfo.InvariantCulture);
    }
}
