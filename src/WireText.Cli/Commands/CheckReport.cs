using System.Collections.Immutable;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary>What checking many files came to, in the order of the files.</summary>
/// <param name="Problems">Why files could not be checked, each reason once: wrong settings hold for many files.</param>
internal sealed record CheckReport(ImmutableArray<FileChecked> Files, ImmutableArray<string> Problems)
{
    public int Mended => Files.Sum(file => file.Mended);

    private ImmutableArray<CheckedFile> Checked => [.. Files.Select(file => file.File)];

    /// <param name="problems">What hindered the search for files.</param>
    public static CheckReport Of(IEnumerable<string> problems, IReadOnlyCollection<FileOutcome> outcomes)
    {
        var refused = outcomes.OfType<FileRefused>().Select(file => file.Problem);
        return new([.. outcomes.OfType<FileChecked>()], [.. problems.Concat(refused).Distinct(StringComparer.Ordinal)]);
    }

    public int Code(bool isStrict) =>
        Problems.IsEmpty ? ExitCode.For(Files.SelectMany(file => file.File.Findings), isStrict) : ExitCode.CouldNot;

    public void TellProblems(CliContext context)
    {
        foreach (var problem in Problems)
        {
            context.Tell(problem);
        }
    }

    public void Write(FindingFormat format, CliContext context)
    {
        switch (format)
        {
            case FindingFormat.Json:
                context.Data.Write(FindingJson.Write(Checked));
                break;
            case FindingFormat.Sarif:
                context.Data.Write(
                    FindingSarif.Write(Checked, new SarifRun(ProgramVersion.Text, FolderOf(context), Problems))
                );
                break;
            case FindingFormat.Commands:
                context.Data.Write(FindingCommands.Write(Checked, FolderOf(context)));
                break;
            default:
                WriteText(context);
                break;
        }
    }

    private static string FolderOf(CliContext context) =>
        context.Host.WorkingFolder.Replace(Path.DirectorySeparatorChar, '/');

    private void WriteText(CliContext context)
    {
        List<Finding> all = [.. Files.SelectMany(file => file.File.Findings)];
        FindingText.Write(all, context.Output);
        foreach (var waiting in Checked.Select(FindingText.Waiting).OfType<string>())
        {
            context.Output.WriteLine(waiting);
        }

        foreach (var path in Files.Where(file => file.IsUnpinned).Select(file => file.File.Path))
        {
            context.Output.WriteLine(
                $"{path}: no 'expect' says what its positions are meant to do; 'wiretext positions {path} --expect' prints lines that pin what they do now"
            );
        }

        if (!Files.IsEmpty)
        {
            context.Output.WriteLine(FindingText.Summary(all, Files.Length));
            FindingText.WriteRight(all, context.Output);
        }
    }
}
