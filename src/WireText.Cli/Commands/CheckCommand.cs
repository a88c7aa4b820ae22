using System.CommandLine;
using System.Globalization;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Storage;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext check</c></summary>
internal static class CheckCommand
{
    private const int MostJobs = 256;

    /// <param name="WithNotes">Also what does no harm.</param>
    /// <param name="IsMending">Whether what is certain is mended in the files.</param>
    /// <param name="Jobs">Files checked at once.</param>
    private sealed record Request(
        string[] Files,
        string Format,
        bool IsStrict,
        bool WithNotes,
        bool IsMending,
        int Jobs
    );

    public static Command Create(CliContext context)
    {
        var files = CommonOptions.ManyFiles();
        files.Description = "Wiring files, or folders with such files in them; - is standard input";
        var format = CommonOptions.Choice("--format", "How findings are written", "text", "json", "sarif", "github");
        var strict = new Option<bool>("--strict") { Description = "Warnings count as errors for the exit code" };
        var notes = new Option<bool>("--notes")
        {
            Description =
                "Also tells what does no harm, and why: loops, twisted wires, ends of braids, gaps while switching",
        };
        var fix = new Option<bool>("--fix") { Description = "Mends in the files what is certain, and checks again" };
        var jobs = new Option<int?>("--jobs")
        {
            Description = "Files checked at once; without it as many as there are processors",
            HelpName = "N",
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
            fix,
            jobs,
            parts,
        };
        command.SetAction(parsed =>
            Run(
                context,
                new Request(
                    parsed.GetValue(files)!,
                    parsed.GetValue(format)!,
                    parsed.GetValue(strict),
                    parsed.GetValue(notes),
                    parsed.GetValue(fix),
                    CommonOptions.InRange(parsed.GetValue(jobs), MostJobs, "--jobs") ?? Environment.ProcessorCount
                ),
                new FolderSources(parsed.GetValue(parts) ?? [], context.Host)
            )
        );
        return command;
    }

    private static int Run(CliContext context, Request request, FolderSources sources)
    {
        var outcomes = new FileChecker(context, sources, request.WithNotes, request.IsMending).Check(
            Files.WithFoldersOpened(request.Files),
            request.Jobs
        );
        // Wrong settings hold for many files, and are said once.
        var problems = outcomes.Select(one => one.Problem).OfType<string>().Distinct(StringComparer.Ordinal).ToList();
        foreach (var problem in problems)
        {
            context.Error.WriteLine($"wiretext: {problem}");
        }

        var files = outcomes.Select(one => one.Checked).OfType<CheckedFile>().ToList();
        switch (request.Format)
        {
            case "json":
                context.Output.Write(FindingJson.Write(files));
                break;
            case "sarif":
                context.Output.Write(FindingSarif.Write(files, SarifRunOf(context, problems)));
                break;
            case "github":
                context.Output.Write(FindingCommands.Write(files, WorkingFolderOf(context)));
                break;
            default:
                WriteText(context, files, outcomes.Where(one => one.IsUnpinned).Select(one => one.Checked!.Path));
                break;
        }

        if (request.IsMending)
        {
            // What reads another format reads nothing but that.
            (request.Format == "text" ? context.Output : context.Error).WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{outcomes.Sum(one => one.Mended)} mended")
            );
        }

        return problems.Count > 0
            ? ExitCode.CouldNot
            : ExitCode.For(files.SelectMany(f => f.Findings), request.IsStrict);
    }

    private static void WriteText(CliContext context, List<CheckedFile> files, IEnumerable<string> offers)
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
        new(ProgramVersion.Text, WorkingFolderOf(context), [.. problems]);

    private static string WorkingFolderOf(CliContext context) => context.Host.WorkingFolder.Replace('\\', '/');
}
