using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Output;
using WireText.Parts;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext parts</c></summary>
internal static class PartsCommand
{
    public static Command Create(CliContext context)
    {
        var name = new Argument<string?>("NAME")
        {
            Description = "A kind or a model, such as pot or lever-3way",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command(
            "parts",
            """
            Lists the standard parts, or shows one with its lugs and its definition.

            Example: wiretext parts lever-3way
            """
        )
        {
            name,
        };
        command.SetAction(parsed => Run(context, parsed.GetValue(name)));
        return command;
    }

    private static int Run(CliContext context, string? name)
    {
        var catalogue = StandardParts.Catalogue;
        if (name is null)
        {
            context.Output.Write(PartSheet.List(catalogue));
            return ExitCode.Right;
        }

        var found = catalogue
            .Definitions.Where(d => Is(d.Model, name) && !Is(d.Model, "standard") || Is(d.Kind, name))
            .ToList();
        if (found.Count == 0)
        {
            var names = catalogue.Kinds.Concat(catalogue.Definitions.Select(d => d.Model));
            var near = DidYouMean.Nearest(name, names);
            throw new CannotException(
                $"no standard part is called '{name}'" + (near is null ? "" : $"; did you mean '{near}'?")
            );
        }

        context.Output.Write(string.Join('\n', found.Select(PartSheet.Show)));
        return ExitCode.Right;
    }

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
