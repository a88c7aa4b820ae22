using System.CommandLine;
using System.Globalization;
using WireText.Cli.Arguments;
using WireText.Cli.Running;
using WireText.Cli.Storage;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext check</c></summary>
internal sealed class CheckCommand : Command
{
    private const int MostJobs = 256;

    private readonly Argument<string[]> files = CommonOptions.ManyFiles(
        "Wiring files, or folders with such files in them"
    );
    private readonly ChoiceOption<FindingFormat> format = new(
        "--format",
        "How findings are written",
        ("text", FindingFormat.Text),
        ("json", FindingFormat.Json),
        ("sarif", FindingFormat.Sarif),
        ("github", FindingFormat.Commands)
    );
    private readonly Option<bool> strict = new("--strict")
    {
        Description = "Warnings count as errors for the exit code",
    };
    private readonly Option<bool> harmless = new("--harmless")
    {
        Description =
            "Also tells what does no harm, and why: loops, twisted wires, ends of braids, gaps while switching",
    };
    private readonly Option<bool> fix = new("--fix")
    {
        Description = "Mends in the files what is certain, and checks again",
    };
    private readonly WholeNumberOption jobs = new(
        "--jobs",
        MostJobs,
        "N",
        "Files checked at once; without it as many as there are processors"
    );
    private readonly PartsOption parts = new();

    public CheckCommand(CliContext context)
        : base(
            "check",
            """
            Reads the wiring, proves or refutes it, and writes what was found.

            Example: wiretext check guitar.wiring
            """
        )
    {
        Add(files);
        Add(format);
        Add(strict);
        Add(harmless);
        Add(fix);
        Add(jobs);
        Add(parts);
        SetAction(parsed => Run(context, RequestIn(parsed), parts.In(parsed, context.Sources)));
    }

    private Request RequestIn(ParseResult parsed) =>
        new(
            parsed.GetRequiredValue(files),
            format.In(parsed),
            parsed.GetValue(strict),
            parsed.GetValue(harmless),
            parsed.GetValue(fix),
            jobs.In(parsed) ?? Environment.ProcessorCount
        );

    private static int Run(CliContext context, Request request, FolderSources sources)
    {
        var found = FoundFiles.At(request.Files, context.Sources);
        var checker = new FileChecker(context, sources, request.WithHarmless, request.IsMending);
        var report = CheckReport.Of(found.Problems, checker.Check(found.Files, request.Jobs));
        report.TellProblems(context);
        report.Write(request.Format, context);
        if (request.IsMending)
        {
            // What reads another format reads nothing but that.
            (request.Format == FindingFormat.Text ? context.Output : context.Error).WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{report.Mended} mended")
            );
        }

        return report.Code(request.IsStrict);
    }

    /// <param name="WithHarmless">Also what does no harm.</param>
    /// <param name="IsMending">Whether what is certain is mended in the files.</param>
    /// <param name="Jobs">Files checked at once.</param>
    private sealed record Request(
        string[] Files,
        FindingFormat Format,
        bool IsStrict,
        bool WithHarmless,
        bool IsMending,
        int Jobs
    );
}
