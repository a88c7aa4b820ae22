using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Electrical.Studies;

namespace WireText.Cli.Arguments;

/// <summary><c>--jack</c>: the output jack that is listened at.</summary>
internal sealed class JackOption : Option<string?>
{
    public JackOption()
        : base("--jack")
    {
        Description = "The output jack to listen at; without it: the first of the file";
        HelpName = "NAME";
    }

    /// <summary>The study seen from the jack that was asked for.</summary>
    /// <exception cref="CannotException">No output jack has that name.</exception>
    public Study In(ParseResult parsed, Study study)
    {
        if (parsed.GetValue(this) is not { } name)
        {
            return study;
        }

        var circuit = study.Circuit;
        if (circuit.FindPart(name) is { } part && circuit.Outputs.Any(output => output.Part == part.Index))
        {
            return study.At(part.Index);
        }

        var names = circuit.Outputs.Select(output => circuit.Parts[output.Part].Name);
        throw new CannotException(
            $"--jack {name}: no output jack has that name; there is {string.Join(" and ", names)}"
        );
    }
}
