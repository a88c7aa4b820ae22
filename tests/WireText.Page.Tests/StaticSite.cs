using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using WireText.Testing;

namespace WireText.Page.Tests;

/// <summary>The built playground on a host that knows nothing but files, in a folder of its own.</summary>
internal sealed class StaticSite : IDisposable
{
    private const string Folder = "/shop/wiring/";

    private static readonly string Root = Repository.PathOf("artifacts", "site");

    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        [".html"] = "text/html",
        [".js"] = "text/javascript",
        [".css"] = "text/css",
        [".wasm"] = "application/wasm",
        [".json"] = "application/json",
        [".txt"] = "text/plain",
    };

    private readonly HttpListener listener = new();
    private readonly ConcurrentQueue<string> missing = new();

    private StaticSite(int port)
    {
        Address = $"http://localhost:{port}{Folder}";
        listener.Prefixes.Add($"http://localhost:{port}/");
        listener.Start();
        _ = Task.Run(Serve);
    }

    /// <summary>The address of the site, with its last slash.</summary>
    public string Address { get; }

    /// <summary>What was asked for and is not there.</summary>
    public IEnumerable<string> Missing => missing;

    /// <summary>All files of the site. The test is skipped where it is not built.</summary>
    public static IReadOnlyList<string> Files
    {
        get
        {
            SkipUnlessBuilt();
            return Every.Of(
#pragma warning disable RS0030 // Held to something just here.
                Directory.EnumerateFiles(Root, "*", SearchOption.AllDirectories)
#pragma warning restore RS0030
            );
        }
    }

    /// <summary>Starts a host. The test is skipped where the site is not built.</summary>
    public static StaticSite Start()
    {
        SkipUnlessBuilt();
        using var free = new TcpListener(IPAddress.Loopback, 0);
        free.Start();
        var port = ((IPEndPoint)free.LocalEndpoint).Port;
        free.Stop();
        return new StaticSite(port);
    }

    public void Dispose() => listener.Close();

    private static void SkipUnlessBuilt() =>
        Skip.IfNot(
            File.Exists(Path.Combine(Root, "index.html")),
            "the playground is not built: .ci/site artifacts/site builds it"
        );

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            try
            {
                Answer(await listener.GetContextAsync());
            }
            catch (Exception e) when (e is HttpListenerException or ObjectDisposedException or IOException)
            {
                // The host ends, or the page went away in the middle.
            }
        }
    }

    private void Answer(HttpListenerContext asked)
    {
        var path = asked.Request.Url!.AbsolutePath;
        var name = path.StartsWith(Folder, StringComparison.Ordinal) ? path[Folder.Length..] : "";
        var file = Path.Combine(Root, name.Length == 0 ? "index.html" : name);
        if (!path.StartsWith(Folder, StringComparison.Ordinal) || !File.Exists(file))
        {
            missing.Enqueue(path);
            asked.Response.StatusCode = 404;
            asked.Response.Close();
            return;
        }

        asked.Response.ContentType = Types[Path.GetExtension(file)];
        asked.Response.Close(File.ReadAllBytes(file), willBlock: false);
    }
}
