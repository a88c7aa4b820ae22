using System.Collections.Immutable;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using WireText.Pages;

namespace WireText.Cli.Serving;

/// <summary>
/// Decides what is answered. Any page in the browser, and any program on the machine, can reach the port: only who has the address
/// with its token is given anything, and only under the name that the address has.
/// </summary>
internal sealed class PageGate
{
    /// <summary>128 bits, which nobody guesses.</summary>
    private const int TokenBytes = 16;

    private readonly string host;
    private readonly string token = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));
    private readonly ImmutableArray<PageFile> files;

    public PageGate(IPEndPoint at, ImmutableArray<PageFile> files) => (host, this.files) = (at.ToString(), files);

    /// <summary>Where the page is.</summary>
    public string Address => $"http://{host}/{token}/";

    /// <param name="request">Null for what could not be read.</param>
    public Reply Answer(RequestHead? request)
    {
        if (request is null)
        {
            return Reply.Refusal(400, "this is no request that is answered here");
        }

        if (request.Host != host || request.Origin is { } origin && origin != $"http://{host}")
        {
            return Reply.Refusal(403, "this address is not for other pages");
        }

        if (!HasToken(request.Target))
        {
            return Reply.Refusal(403, "open the whole address that wiretext watch has printed");
        }

        if (request.Method != "GET")
        {
            return Reply.Refusal(405, "nothing can be changed here");
        }

        var name = request.Target[(token.Length + 2)..];
        return name == LivePage.Events ? Reply.Events
            : files.FirstOrDefault(file => file.Name == name) is { } found ? Reply.Of(found)
            : Reply.Refusal(404, "there is nothing of that name");
    }

    /// <summary>Compared in a time that does not tell how much of it was right.</summary>
    private bool HasToken(string target)
    {
        var expected = $"/{token}/";
        return target.Length >= expected.Length
            && CryptographicOperations.FixedTimeEquals(
                Encoding.ASCII.GetBytes(target[..expected.Length]),
                Encoding.ASCII.GetBytes(expected)
            );
    }
}
