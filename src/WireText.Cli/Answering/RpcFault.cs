namespace WireText.Cli.Answering;

/// <summary>A request that is refused, with a code of JSON-RPC 2.0 or of LSP 3.17.</summary>
internal sealed class RpcFault(int code, string message) : Exception(message)
{
    public const int ParseError = -32700;
    public const int InvalidRequest = -32600;
    public const int MethodNotFound = -32601;
    public const int InvalidParams = -32602;
    public const int InternalError = -32603;
    public const int ServerNotInitialized = -32002;
    public const int RequestFailed = -32803;
    public const int RequestCancelled = -32800;

    public int Code { get; } = code;
}
