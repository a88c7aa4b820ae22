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
        var format = CommonOptions.Choice("--format", "How findings are written", "text", "json", "sarif", "github");
        var strict = new Option<bool>("--strict") { Description = "Warnings count as errors for the exit code" };
        var notes = new Option<bool>("--notes")
        {
            Description =
                "Also tells what does no harm, and why: loops, twisted wires, ends of braids, gaps while switching",
        };
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
            notes,
            parts,
        };
        command.SetAction(parsed =>
            Run(
                context,
                parsed.GetValue(files)!,
                parsed.GetValue(format)!,
                parsed.GetValue(strict),
                parsed.GetValue(notes),
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

    private static int Run(
        CliContext context,
        string[] files,
        string format,
        bool isStrict,
        bool withNotes,
        FolderSources sources
    )
    {
        var checkedFiles = new List<CheckedFile>();
        var offers = new List<string>();
        var problems = new List<string>();
        var settings = new SettingsFiles(context.Host);
        foreach (var file in files)
        {
            try
            {
                var source = Files.Read(file, context.Host);
                var result = WiringCompiler.Check(source, sources, withNotes, settings.For(file));
                checkedFiles.Add(new CheckedFile(source.Path, result.Findings) { Allowed = result.Allowed });
                if (IsUnpinned(result))
                {
                    offers.Add(source.Path);
                }
            }
            catch (CannotException e)
            {
                // Wrong settings hold for many files, and are said once.
                if (!problems.Contains(e.Message))
                {
                    context.Error.WriteLine($"wiretext: {e.Message}");
                    problems.Add(e.Message);
                }
            }
        }

        var all = checkedFiles.SelectMany(f => f.Findings).ToList();
        switch (format)
        {
            case "json":
                context.Output.Write(FindingJson.Write(checkedFiles));
                break;
            case "sarif":
                context.Output.Write(FindingSarif.Write(checkedFiles, SarifRunOf(context, problems)));
                break;
            case "github":
                context.Output.Write(FindingCommands.Write(checkedFiles, WorkingFolderOf(context)));
                break;
            default:
                WriteText(context, checkedFiles, offers);
                break;
        }

        return problems.Count > 0 ? ExitCode.CouldNot : CodeFor(checkedFiles.SelectMany(f => f.Findings), isStrict);
    }

    private static void WriteText(CliContext context, List<CheckedFile> files, List<string> offers)
    {
        var all = files.SelectMany(f => f.Findings).ToList();
        FindingText.Write(all, context.Output, context.InColour);
        foreach (var path in offers)
        {
            context.Output.WriteLine(
                $"{path}: info: no 'expect' says what its positions are meant to do; 'wiretext positions {path} --expect' prints lines that pin what they do now"
            );
        }

        if (files.Count > 0)
        {
            context.Output.WriteLine(FindingText.Summary(all, files.Count));
        }
    }

    private static SarifRun SarifRunOf(CliContext context, List<string> problems) =>
        new(CliProgram.Version, WorkingFolderOf(context), [.. problems]);

    private static string WorkingFolderOf(CliContext context) => context.Host.WorkingFolder.Replace('\\', '/');
}
