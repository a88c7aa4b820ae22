using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Parts;

/// <summary>The positions that a <c>define</c> gives its controls, what each joins, and where they stand at rest.</summary>
internal sealed class DefinitionControls(DefineSyntax define, DefinitionLugs lugs, FindingSink sink)
{
    private readonly List<(string Suffix, List<PositionDefinition> Positions, int AtRest)> controls = [];

    public IEnumerable<ControlDefinition> All =>
        controls.Select(c => new ControlDefinition(c.Suffix, [.. c.Positions], c.AtRest));

    /// <summary>The travel at which a dial rests; null when no line says it.</summary>
    public double? DialRest { get; private set; }

    public void Add(PositionSyntax line)
    {
        var suffix = line.Control?.Text ?? "";
        var index = controls.FindIndex(c => Naming.Alike(c.Suffix, suffix));
        if (index < 0)
        {
            index = controls.Count;
            controls.Add((suffix, [], 0));
        }

        var positions = controls[index].Positions;
        if (positions.Exists(p => Naming.Alike(p.Name, line.Position.Text)))
        {
            Report(
                line.Position,
                $"position '{line.Position.Text}' is said twice",
                "join its lugs with '+' on one line"
            );
            return;
        }

        positions.Add(
            new PositionDefinition(line.Position.Text, [.. line.Joints.Select(lugs.Resolve).OfType<ContactGroup>()])
        );
    }

    /// <summary>Where a control rests: one of its positions, or a travel where there is a track to turn.</summary>
    public void Rest(RestInsideSyntax line, bool hasTrack)
    {
        var suffix = line.Control?.Text ?? "";
        var index = controls.FindIndex(c => Naming.Alike(c.Suffix, suffix));
        if (index >= 0)
        {
            var rest = controls[index].Positions.FindIndex(p => Naming.Alike(p.Name, line.Position.Text));
            if (rest >= 0)
            {
                controls[index] = controls[index] with { AtRest = rest };
                return;
            }
        }

        if (hasTrack && DefinitionNumbers.TryTravel(line.Position.Text, out var travel))
        {
            DialRest = travel;
            return;
        }

        var names = index >= 0 ? controls[index].Positions.Select(p => $"'{p.Name}'") : [];
        Report(
            line.Position,
            $"'{define.Model.Text}' has no position '{line.Position.Text}' to rest in",
            names.Any() ? $"write one of {string.Join(", ", names)}" : null
        );
    }

    private void Report(SyntaxNode at, string message, string? help) =>
        sink.Add(DefinitionFindings.BadDefinition.At(at.Location, message, help));
}
