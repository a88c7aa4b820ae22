namespace WireText.Cli.Tests;

/// <summary>What one run of the program came to.</summary>
internal sealed record Ran(int Code, string Output, string Error, byte[] OutputBytes)
{
    /// <summary>Runs the program with these arguments, nothing on its input and no terminal.</summary>
    public static Ran Of(params string[] args) => Of(new TestHost(), args);

    public static Ran Of(TestHost host, params string[] args)
    {
        var code = CliProgram.Run(args, host);
        return new Ran(code, host.Written, host.Complaint, host.WrittenBytes);
    }
}
