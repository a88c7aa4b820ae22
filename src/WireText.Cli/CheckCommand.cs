using System.CommandLine;
using WireText.Electrical;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli;

/// <summary><c>wiretext check</c></summary>
internal static class CheckCommand
{
    public static Command Create(CliContext context)
    {
        var files = CommonOptions.ManyFiles();
        var format = CommonOptions.Choice("--format", "How findings are written", "text", "json");
        var strict = new Option<bool>("--strict") { Description = "Warnings count as errors for the exit code" };
        var parts = CommonOptions.PartsFolders();
        var command = new Command(
            "check",
            """
            Reads the wiring, proves or refutes it, and writes what was found.

            Example: wiretext check guitar.wiring
            """
        )
        {
            files,
            format,
            strict,
            parts,
        };
        command.SetAction(parsed =>
            Run(
                context,
                parsed.GetValue(files)!,
                parsed.GetValue(format) == "json",
                parsed.GetValue(strict),
                new FolderSources(parsed.GetValue(parts) ?? [], context.Host)
            )
        );
        return command;
    }

    /// <summary>The exit code for findings.</summary>
    public static int CodeFor(IEnumerable<Finding> findings, bool isStrict) =>
        findings.Any(f => f.Severity >= (isStrict ? Severity.Warning : Severity.Error))
            ? ExitCode.Findings
            : ExitCode.Right;

    /// <summary>True for a circuit that works and that nothing in its file holds to what it does. A remark, not a finding.</summary>
    private static bool IsUnpinned(CompileResult result) =>
        !result.HasErrors
        && result.Circuit is { Expectations.IsEmpty: true } circuit
        && Network.Of(circuit) is not null;

    private static int Run(CliContext context, string[] files, bool asJson, bool isStrict, FolderSources sources)
    {
        var checkedFiles = new List<(string Path, IReadOnlyList<Finding> Findings)>();
        var offers = new List<string>();
        var couldNot = false;
        foreach (var file in files)
        {
            try
            {
                var source = Files.Read(file, context.Host);
                var result = WiringCompiler.Check(source, sources);
                checkedFiles.Add((source.Path, result.Findings));
                if (IsUnpinned(result))
                {
                    offers.Add(source.Path);
                }
            }
            catch (CannotException e)
            {
                context.Error.WriteLine($"wiretext: {e.Message}");
                couldNot = true;
            }
        }

        var all = checkedFiles.SelectMany(f => f.Findings).ToList();
        if (asJson)
        {
            context.Output.Write(FindingJson.Write(checkedFiles));
        }
        else
        {
            FindingText.Write(all, context.Output, context.InColour);
            foreach (var path in offers)
            {
                context.Output.WriteLine(
                    $"{path}: info: no 'expect' says what its positions are meant to do; 'wiretext positions {path} --expect' prints lines that pin what they do now"
                );
            }

            if (checkedFiles.Count > 0)
            {
                context.Output.WriteLine(FindingText.Summary(all, checkedFiles.Count));
            }
        }

        return couldNot ? ExitCode.CouldNot : CodeFor(all, isStrict);
    }
}
