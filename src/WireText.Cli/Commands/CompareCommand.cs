using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Comparing;
using WireText.Mods;
using WireText.Output;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext compare</c></summary>
internal sealed class CompareCommand : Command
{
    private readonly Argument<string> before = new("OLD") { Description = "The wiring as it was; - is standard input" };
    private readonly Argument<string> after = new("NEW") { Description = "The wiring as it is; - is standard input" };
    private readonly ChoiceOption<Func<CircuitComparison, PositionComparison?, string>> format = new(
        "--format",
        "How it is written",
        ("text", ComparisonText.Write),
        ("json", ComparisonJson.Write),
        ("markdown", ComparisonText.WriteMarkdown)
    );
    private readonly Option<bool> mod = new("--mod")
    {
        Description = "Write the mod that turns OLD into NEW instead: a file that stands on OLD",
    };
    private readonly PartsOption parts = new();

    public CompareCommand(CliContext context)
        : base(
            "compare",
            """
            Says how two wirings differ, and what that does in each position: before → after. A part that was renamed, and
            lines in another order or form, are no difference.

            Exit code: 0 the same, 1 different, 2 it could not be done.

            Example: wiretext compare guitar.wiring guitar.wiring
            """
        )
    {
        Add(before);
        Add(after);
        Add(format);
        Add(mod);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var sources = parts.In(parsed, context.Sources);
        var (old, now) = (parsed.GetRequiredValue(before), parsed.GetRequiredValue(after));
        var (was, isNow) = (WiringToCompare.Read(context, old, sources), WiringToCompare.Read(context, now, sources));
        var circuits = CircuitComparison.Of(was.Circuit!, isNow.Circuit!);
        if (parsed.GetValue(mod))
        {
            WriteMod(context, old, was, isNow);
        }
        else
        {
            context.Output.Write(format.In(parsed)(circuits, circuits.IsSame ? null : PositionComparison.Of(circuits)));
        }

        return circuits.IsSame ? ExitCode.Right : ExitCode.Findings;
    }

    private static void WriteMod(CliContext context, string old, Compilation was, Compilation now)
    {
        var written = ModText.Of(new BaseWiring(was.Tree, was.Resolved), now.Resolved);
        foreach (var line in written.Left)
        {
            context.Tell($"no line of a mod takes this out of {old}: {line}");
        }

        context.Data.Write(written.WriteOn(Path.GetFileName(old)));
    }
}
