using System.Globalization;
using System.Text;
using CsCheck;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>Whatever an editor sends, the language server goes on to the next message, and ends as it was asked to.</summary>
public class HostileEditorTests
{
    private const string Begin = """{"jsonrpc":"2.0","id":"a","method":"initialize","params":{"capabilities":{}}}""";
    private const string ShutDown = """{"jsonrpc":"2.0","id":"z","method":"shutdown"}""";
    private const string Exit = """{"jsonrpc":"2.0","method":"exit"}""";

    private static readonly string[] Methods =
    [
        "textDocument/didOpen",
        "textDocument/didChange",
        "textDocument/didClose",
        "textDocument/didSave",
        "workspace/didChangeWatchedFiles",
        "initialized",
        "$/cancelRequest",
        "textDocument/completion",
        "textDocument/hover",
        "textDocument/definition",
        "textDocument/references",
        "textDocument/rename",
        "textDocument/prepareRename",
        "textDocument/documentHighlight",
        "textDocument/documentSymbol",
        "textDocument/foldingRange",
        "textDocument/formatting",
        "textDocument/codeAction",
        "textDocument/semanticTokens/full",
        "textDocument/inlayHint",
        "textDocument/codeLens",
        "workspace/executeCommand",
        "textDocument/unheardOf",
        "\\ud800",
    ];

    /// <summary>Of an open text, of none, and what is no set of parameters.</summary>
    private static readonly string[] Parameters =
    [
        """{"textDocument":{"uri":"untitled:a","version":1,"text":"pot vol 250k audio\nwire vol. to vol.case bare\nexpect vol="}}""",
        """{"textDocument":{"uri":"untitled:a","version":2},"contentChanges":[{"text":"pot 𝄞 ?\r\rexpect 🎸=: (("}],"position":{"line":1,"character":3}}""",
        """{"textDocument":{"uri":"untitled:a","version":99999999999},"contentChanges":[],"position":{"line":-1,"character":-7}}""",
        """{"textDocument":{"uri":"untitled:a","version":1},"position":{"line":2,"character":11},"newName":"x y","range":{"start":{"line":0,"character":0},"end":{"line":9,"character":9}},"context":{"only":[1]}}""",
        """{"textDocument":{"uri":"untitled:a","version":3},"position":{"line":2147483647,"character":2147483647},"newName":"","range":{"start":{"line":9,"character":0},"end":{"line":0,"character":0}},"context":{}}""",
        """{"textDocument":{"uri":"untitled:a","version":4},"contentChanges":[{"text":"\ud800"}],"position":{"line":9e99,"character":0}}""",
        """{"textDocument":{"uri":"file:///nowhere/a.wiring","version":1,"text":"base \"../b\"\ninclude \"/etc/passwd\"\nbase \"a.wiring\""}}""",
        """{"textDocument":{"uri":"%%%","version":1,"text":""},"position":{"line":0,"character":0}}""",
        """{"command":"wiretext.draw","arguments":["untitled:a"]}""",
        """{"command":"wiretext.positions","arguments":[]}""",
        """{"id":1}""",
        """{"id":{}}""",
        "[]",
        "7",
        "null",
        "{}",
    ];

    private static readonly string[] Frames =
    [
        "Content-Length: 7\r\n\r\n{\"a\":1}",
        "Content-Length: 2\r\n\r\n\u0080",
        "Content-Length: 0\r\n\r\n",
        "Content-Length: -4\r\n\r\n",
        "content-length:2\r\nContent-Type: x\r\n\r\n[]",
        "\r\n\r\n\n\n",
        "garbage\r\n",
        "Content-Length: 41\r\n\r\n{\"jsonrpc\":\"2.0\",\"id\":{\"a\":1},\"method\":1}",
    ];

    [Fact]
    public void Messages_OfAnyKind_EndTheProgramOnlyByTheirWord()
    {
        Samples.Each(
            Gen.Int[0, int.MaxValue].Array[1, 25],
            150,
            numbers =>
            {
                var sent = string.Concat(numbers.Select(MessageOf).Prepend(Framed(Begin)).Append(Framed(ShutDown)));
                using var host = new TestHost(sent + Framed(Exit));

                var ran = Ran.Of(host, "language-server");

                Assert.Equal(0, ran.Code);
                Assert.Empty(ran.Error);
                Assert.DoesNotContain("fault of the program", ran.Output, StringComparison.Ordinal);
                Assert.Contains("""{"jsonrpc":"2.0","id":"z","result":null}""", ran.Output, StringComparison.Ordinal);
            }
        );
    }

    private static string MessageOf(int number)
    {
        if (number % 7 == 0)
        {
            return Frames[number / 7 % Frames.Length];
        }

        var (method, parameters) = (Methods[number % Methods.Length], Parameters[number / 31 % Parameters.Length]);
        var id = number % 3 == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"\"id\":{number % 5},");
        return Framed($$"""{"jsonrpc":"2.0",{{id}}"method":"{{method}}","params":{{parameters}}}""");
    }

    private static string Framed(string message) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Content-Length: {Encoding.UTF8.GetByteCount(message)}\r\n\r\n{message}"
        );
}
