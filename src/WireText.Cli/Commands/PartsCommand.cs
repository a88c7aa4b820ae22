using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Output;
using WireText.Parts;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext parts</c></summary>
internal sealed class PartsCommand : Command
{
    private readonly Argument<string?> name = new("NAME")
    {
        Description = "A kind or a model, such as pot or lever-3way",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public PartsCommand(CliContext context)
        : base(
            "parts",
            """
            Lists the standard parts, or shows one with its lugs and its definition.

            Example: wiretext parts lever-3way
            """
        )
    {
        Add(name);
        SetAction(parsed => Run(context, parsed.GetValue(name)));
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
            .Definitions.Where(d =>
                Naming.Alike(d.Model, name) && !Naming.Alike(d.Model, "standard") || Naming.Alike(d.Kind, name)
            )
            .ToList();
        if (found.Count == 0)
        {
            var offer = Offer.Nearest(name, catalogue.Kinds.Concat(catalogue.Definitions.Select(d => d.Model)));
            throw new CannotException($"no standard part is called '{name}'{offer}");
        }

        context.Output.Write(string.Join('\n', found.Select(PartSheet.Show)));
        return ExitCode.Right;
    }
}
