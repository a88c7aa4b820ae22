using System.CommandLine;
using System.Text;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Starting;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext new</c></summary>
internal sealed class NewCommand : Command
{
    private const string Ending = ".wiring";

    private readonly Argument<string> name = new("NAME")
    {
        Description = $"What the file is called, with or without {Ending}; - is standard output",
    };

    private readonly Option<string?> pickups = OptionOf("--pickups", "Which pickups it has", StarterPickups.All);
    private readonly Option<string?> selector = OptionOf(
        "--selector",
        "What chooses between them",
        StarterSelector.All
    );
    private readonly Option<string?> controls = OptionOf("--controls", "Which pots it has", StarterControls.All);
    private readonly Option<string?> jack = OptionOf("--jack", "Which jack it has", StarterJack.All);

    public NewCommand(CliContext context)
        : base(
            "new",
            """
            Begins a wiring: writes a commented file in which nothing is found, and whose claims are proven. On a terminal it asks
            what no option says; elsewhere it takes what is usual. A file that is there already stays as it is.

            Example: wiretext new bass --pickups two-humbuckers --selector none
            """
        )
    {
        Add(name);
        Add(pickups);
        Add(selector);
        Add(controls);
        Add(jack);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var target = FileOf(parsed.GetRequiredValue(name));
        context.Results.RefuseTaken(target);
        var starter = Chosen(new StarterQuestions(context, parsed));
        context.Results.Create(target, Encoding.UTF8.GetBytes(starter.Write()));
        if (target != StandardStream.Name)
        {
            context.Output.Write($"{target} is written\nnext: wiretext watch {target} --open\n");
        }

        return ExitCode.Right;
    }

    private Starter Chosen(StarterQuestions questions)
    {
        var these = questions.Choose(pickups, StarterPickups.All);
        var switched = questions.Choose(selector, StarterSelector.For(these));
        return new Starter(
            these,
            switched,
            questions.Choose(controls, StarterControls.For(these, switched)),
            questions.Choose(jack, StarterJack.All)
        );
    }

    private static string FileOf(string name) =>
        name == StandardStream.Name || name.EndsWith(Ending, StringComparison.OrdinalIgnoreCase) ? name : name + Ending;

    private static Option<string?> OptionOf<T>(string name, string description, IEnumerable<T> answers)
        where T : IStarterAnswer
    {
        string[] words = [.. answers.Select(answer => answer.Word)];
        var option = new Option<string?>(name) { Description = description, HelpName = string.Join('|', words) };
        option.AcceptOnlyFromAmong(words);
        return option;
    }
}
