using System.Globalization;
using System.Text;

namespace WireText.Cli.Tests;

/// <summary>How a conversation with an editor begins and ends, byte for byte.</summary>
public class LanguageServerCommandTests
{
    private const string Begin = """{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"capabilities":{}}}""";
    private const string ShutDown = """{"jsonrpc":"2.0","id":"two","method":"shutdown"}""";
    private const string Exit = """{"jsonrpc":"2.0","method":"exit"}""";

    [Fact]
    public void Example_OfTheHelp_Runs()
    {
        Assert.Contains(
            "Example:\n  wiretext language-server\n",
            Ran.Of("language-server", "--help").Output,
            StringComparison.Ordinal
        );

        var ran = Talk(Begin, ShutDown, Exit);

        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Contains("""{"jsonrpc":"2.0","id":"two","result":null}""", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void End_WithoutAWordOfIt_Exits1() => Assert.Equal(1, Talk(Begin).Code);

    [Fact]
    public void Request_BeforeInitialize_IsRefused() =>
        Assert.Contains(
            """{"jsonrpc":"2.0","id":"two","error":{"code":-32002,""",
            Talk(ShutDown, Exit).Output,
            StringComparison.Ordinal
        );

    [Fact]
    public void Request_AfterShutdown_IsRefused() =>
        Assert.Contains(
            """{"jsonrpc":"2.0","id":1,"error":{"code":-32600,""",
            Talk(Begin.Replace(":1", ":0", StringComparison.Ordinal), ShutDown, Begin, Exit).Output,
            StringComparison.Ordinal
        );

    [Fact]
    public void MessageLongerThanAny_IsSkippedAndRefused()
    {
        var length = 97 * 1024 * 1024;
        using var host = new TestHost([
            .. Encoding.ASCII.GetBytes(
                string.Create(CultureInfo.InvariantCulture, $"Content-Length: {length}\r\n\r\n")
            ),
            .. new byte[length],
            .. Encoding.UTF8.GetBytes(Framed(Begin) + Framed(ShutDown) + Framed(Exit)),
        ]);

        var ran = Ran.Of(host, "language-server");

        Assert.Equal(0, ran.Code);
        Assert.Contains("-32700", ran.Output, StringComparison.Ordinal);
    }

    private static Ran Talk(params string[] messages)
    {
        using var host = new TestHost(string.Concat(messages.Select(Framed)));
        return Ran.Of(host, "language-server");
    }

    private static string Framed(string message) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Content-Length: {Encoding.UTF8.GetByteCount(message)}\r\n\r\n{message}"
        );
}
