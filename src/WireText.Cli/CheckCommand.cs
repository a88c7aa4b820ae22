using System.CommandLine;
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

    private static int Run(CliContext context, string[] files, bool asJson, bool isStrict, FolderSources sources)
    {
        var checkedFiles = new List<(string Path, IReadOnlyList<Finding> Findings)>();
        var couldNot = false;
        foreach (var file in files)
        {
            try
            {
                var source = Files.Read(file, context.Host);
                checkedFiles.Add((source.Path, WiringCompiler.Check(source, sources).Findings));
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
            if (checkedFiles.Count > 0)
            {
                context.Output.WriteLine(FindingText.Summary(all, checkedFiles.Count));
            }
        }

        return couldNot ? ExitCode.CouldNot : CodeFor(all, isStrict);
    }
}
