using System.Net;
using System.Net.Sockets;
using System.Text;
using WireText.Pages;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The page beside a text is for who has its address, and for nobody else on the machine or in the browser.</summary>
public sealed class WatchServerTests : IDisposable
{
    private readonly TestFolder folder = new();
    private readonly Watching watching;

    public WatchServerTests() => watching = Watching.Of(folder.Put("a.wiring", Sample.Right));

    private Uri Address => new(watching.Address);

    public void Dispose()
    {
        watching.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void Address_IsOnTheLoopbackAddressWithATokenOfItsOwn()
    {
        using var other = Watching.Of(folder["a.wiring"]);

        Assert.Matches("^http://127\\.0\\.0\\.1:[0-9]+/[0-9a-f]{32}/$", watching.Address);
        Assert.NotEqual(Address.AbsolutePath, new Uri(other.Address).AbsolutePath);
    }

    [Theory]
    [InlineData("", "text/html")]
    [InlineData("live.mjs", "text/javascript")]
    [InlineData("viewer.mjs", "text/javascript")]
    [InlineData("page.css", "text/css")]
    [InlineData("live.css", "text/css")]
    public void Address_GivesThePageAndWhatItAsksFor(string file, string type)
    {
        var answer = Ask($"GET {Address.AbsolutePath}{file} HTTP/1.1", $"Host: {Address.Authority}");

        Assert.StartsWith("HTTP/1.1 200 OK\r\n", answer, StringComparison.Ordinal);
        Assert.Contains($"\r\nContent-Type: {type}; charset=utf-8\r\n", answer, StringComparison.Ordinal);
        Assert.Contains("\r\nContent-Security-Policy: default-src 'none'; ", answer, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "unsafe",
            answer[..answer.IndexOf("\r\n\r\n", StringComparison.Ordinal)],
            StringComparison.Ordinal
        );
        Assert.Contains("\r\nReferrer-Policy: no-referrer\r\n", answer, StringComparison.Ordinal);
    }

    [Fact]
    public void ItsOwnOrigin_IsAnswered() =>
        Assert.Equal(
            200,
            StatusOf(
                $"GET {Address.AbsolutePath} HTTP/1.1",
                $"Host: {Address.Authority}",
                $"Origin: http://{Address.Authority}"
            )
        );

    /// <summary>HOST and TOKEN stand for those of the address.</summary>
    [Theory]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: wiring.example")]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: 127.0.0.1")]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: localhost:80")]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: HOST.wiring.example")]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Origin: http://wiring.example")]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Origin: https://HOST")]
    [InlineData(403, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Origin: null")]
    [InlineData(403, "GET /TOKEN/events HTTP/1.1", "Host: HOST", "Origin: http://127.0.0.1")]
    [InlineData(403, "GET / HTTP/1.1", "Host: HOST")]
    [InlineData(403, "GET /events HTTP/1.1", "Host: HOST")]
    [InlineData(403, "GET /TOKEN HTTP/1.1", "Host: HOST")]
    [InlineData(403, "GET /00000000000000000000000000000000/ HTTP/1.1", "Host: HOST")]
    [InlineData(403, "GET //TOKEN/ HTTP/1.1", "Host: HOST")]
    [InlineData(404, "GET /TOKEN/a.wiring HTTP/1.1", "Host: HOST")]
    [InlineData(404, "GET /TOKEN/../../etc/passwd HTTP/1.1", "Host: HOST")]
    [InlineData(404, "GET /TOKEN/%2e%2e/a.wiring HTTP/1.1", "Host: HOST")]
    [InlineData(404, "GET /TOKEN/?a=b HTTP/1.1", "Host: HOST")]
    [InlineData(405, "POST /TOKEN/ HTTP/1.1", "Host: HOST")]
    [InlineData(405, "HEAD /TOKEN/ HTTP/1.1", "Host: HOST")]
    [InlineData(405, "OPTIONS /TOKEN/events HTTP/1.1", "Host: HOST")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Host: wiring.example")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Origin: http://HOST", "Origin: http://wiring.example")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Content-Length: 1")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host: HOST", "Transfer-Encoding: chunked")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host : HOST")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host: HOST", " folded")]
    [InlineData(400, "GET /TOKEN/ HTTP/1.1", "Host: HOST\nOrigin: http://wiring.example")]
    [InlineData(400, "GET http://HOST/TOKEN/ HTTP/1.1", "Host: HOST")]
    [InlineData(400, "GET /TOKEN/ HTTP/2.0", "Host: HOST")]
    [InlineData(400, "GET  /TOKEN/ HTTP/1.1", "Host: HOST")]
    [InlineData(400, "")]
    [InlineData(400, "\u0016\u0003\u0001")]
    public void WhatIsNotForThePage_IsRefused(int status, params string[] lines) =>
        Assert.Equal(status, StatusOf([.. lines.Select(Filled)]));

    [Theory]
    [InlineData("GET /{0} HTTP/1.1")]
    [InlineData("GET / HTTP/1.1\r\nX: {0}")]
    public void WhatIsTooLong_IsRefused(string request) =>
        Assert.Equal(
            431,
            StatusOf(request.Replace("{0}", new string('a', LivePage.MostRequestBytes), StringComparison.Ordinal))
        );

    /// <summary>What lies outside of the answers: neither the text nor its path is given by name.</summary>
    [Fact]
    public void ARefusal_SaysNothingOfTheFile()
    {
        var answer = Ask("GET / HTTP/1.1", $"Host: {Address.Authority}");

        Assert.DoesNotContain("wiring\"", answer, StringComparison.Ordinal);
        Assert.DoesNotContain(folder.Root, answer, StringComparison.Ordinal);
        Assert.DoesNotContain(Address.AbsolutePath.Trim('/'), answer, StringComparison.Ordinal);
    }

    [Fact]
    public void ThePageInTooManyPlaces_IsRefusedUntilOneIsClosed()
    {
        var open = Enumerable.Range(0, LivePage.MostReaders).Select(_ => new EventReader(watching)).ToList();
        string[] events = [$"GET {Address.AbsolutePath}events HTTP/1.1", $"Host: {Address.Authority}"];
        Every.Item(open, reader => Assert.Equal("picture", reader.Next().Kind));

        Assert.Equal(503, StatusOf(events));

        open[0].Dispose();
        Assert.True(
            SpinWait.SpinUntil(() => IsOpen(events), Watching.Longest),
            "there is no place again where one was closed"
        );
        open.ForEach(reader => reader.Dispose());
    }

    /// <summary>Who hangs up, or says half a request, takes nothing from the others.</summary>
    [Fact]
    public void ConnectionsThatAreLeft_TakeNothingFromOthers()
    {
        for (var i = 0; i < 3 * LivePage.MostConnections; i++)
        {
            using var client = Connect();
            client.GetStream().Write("GET /"u8);
        }

        Assert.True(
            SpinWait.SpinUntil(
                () => StatusOrNone($"GET {Address.AbsolutePath} HTTP/1.1", $"Host: {Address.Authority}") == 200,
                Watching.Longest
            )
        );
    }

    [SkippableFact]
    public void AnotherAddressOfThisMachine_ReachesNothing()
    {
        IPAddress[] others =
        [
            .. Dns.GetHostAddresses(Dns.GetHostName(), AddressFamily.InterNetwork)
                .Where(address => !IPAddress.IsLoopback(address)),
        ];
        Skip.If(others.Length == 0, "this machine has no other address");
        foreach (var other in others)
        {
            using var client = new TcpClient();
            Assert.ThrowsAny<SocketException>(() => client.Connect(other, Address.Port));
        }
    }

    private string Filled(string line) =>
        line.Replace("HOST", Address.Authority, StringComparison.Ordinal)
            .Replace("/TOKEN", Address.AbsolutePath.TrimEnd('/'), StringComparison.Ordinal);

    private int StatusOf(params string[] lines) =>
        int.Parse(Ask(lines).Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);

    private int? StatusOrNone(params string[] lines)
    {
        try
        {
            return StatusOf(lines);
        }
        catch (Exception e) when (e is IOException or SocketException or IndexOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>The events are given: they have no end, so only their first line is read.</summary>
    private bool IsOpen(string[] lines)
    {
        using var client = Connect();
        using var stream = client.GetStream();
        stream.Write(Encoding.ASCII.GetBytes(string.Join("\r\n", lines) + "\r\n\r\n"));
        using var reader = new StreamReader(stream);
        return reader.ReadLine() == "HTTP/1.1 200 OK";
    }

    private string Ask(params string[] lines)
    {
        using var client = Connect();
        using var stream = client.GetStream();
        stream.Write(Encoding.Latin1.GetBytes(string.Join("\r\n", lines) + "\r\n\r\n"));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    private TcpClient Connect()
    {
        var client = new TcpClient(Address.Host, Address.Port);
        client.ReceiveTimeout = (int)Watching.Longest.TotalMilliseconds;
        return client;
    }
}
