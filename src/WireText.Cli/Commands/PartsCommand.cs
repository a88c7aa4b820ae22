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
    /// <summary>What a kind of part is when no model is named; several kinds have one of that name.</summary>
    private const string Plain = "standard";

    private readonly Argument<string[]> names = new("NAME")
    {
        Description = "A kind, a model or both, such as pot, lever-3way or pot push-pull",
        Arity = new ArgumentArity(0, 2),
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
        names.CompletionSources.Add(_ =>
            StandardParts
                .Catalogue.Kinds.Concat(StandardParts.Catalogue.Definitions.Select(part => part.Model))
                .Where(name => !Naming.Alike(name, Plain))
                .Distinct(Naming.Comparer)
        );
        Add(names);
        SetAction(parsed => Run(context, parsed.GetValue(names) ?? []));
    }

    private static int Run(CliContext context, string[] names)
    {
        var catalogue = StandardParts.Catalogue;
        if (names.Length == 0)
        {
            context.Output.Write(PartSheet.List(catalogue));
            return ExitCode.Right;
        }

        var found = names is [var kind, var model] ? [Model(catalogue, kind, model)] : Alike(catalogue, names[0]);
        context.Output.Write(string.Join('\n', found.Select(PartSheet.Show)));
        return ExitCode.Right;
    }

    private static PartDefinition Model(PartCatalogue catalogue, string kind, string model)
    {
        var ofKind = catalogue.Definitions.Where(part => Naming.Alike(part.Kind, kind)).ToList();
        if (ofKind.Count == 0)
        {
            throw new CannotException(
                $"there is no kind of part called '{kind}'{Offer.Nearest(kind, catalogue.Kinds)}"
            );
        }

        return ofKind.Find(part => Naming.Alike(part.Model, model))
            ?? throw new CannotException(
                $"no standard {ofKind[0].Kind} is called '{model}'{Offer.Nearest(model, ofKind.Select(part => part.Model))}"
            );
    }

    /// <summary>The models of that name, or all of the kind.</summary>
    private static List<PartDefinition> Alike(PartCatalogue catalogue, string name)
    {
        if (Naming.Alike(name, Plain))
        {
            var kinds = catalogue.Definitions.Where(part => Naming.Alike(part.Model, Plain)).Select(part => part.Kind);
            throw new CannotException(
                $"several kinds have a '{Plain}' model; write the kind before it: {string.Join(", ", kinds)}"
            );
        }

        var found = catalogue
            .Definitions.Where(part => Naming.Alike(part.Model, name) || Naming.Alike(part.Kind, name))
            .ToList();
        if (found.Count == 0)
        {
            var offer = Offer.Nearest(name, catalogue.Kinds.Concat(catalogue.Definitions.Select(part => part.Model)));
            throw new CannotException($"no standard part is called '{name}'{offer}");
        }

        return found;
    }
}
