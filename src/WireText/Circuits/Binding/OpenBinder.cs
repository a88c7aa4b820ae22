using WireText.Syntax.Nodes;

namespace WireText.Circuits.Binding;

/// <summary>Binds <c>find</c> lines: the controls whose lugs are open, and where else wires may land.</summary>
internal sealed class OpenBinder(CircuitDraft draft, LugResolver resolver)
{
    private readonly ControlBinder controls = new(draft);

    public List<OpenControl> Open { get; } = [];

    public void Bind(FindSyntax syntax)
    {
        var at = syntax.At.Select(resolver.Resolve).OfType<Lug>().Select(lug => lug.Index).ToList();
        var named = new List<string>();
        foreach (var name in syntax.Controls)
        {
            if (controls.FindControl(name) is not { } control)
            {
                continue;
            }

            if (Open.Find(one => one.Control == control.Index) is { } earlier)
            {
                draft.Sink.Add(
                    StatementFindings
                        .SaidTwice.At(
                            name.Location,
                            $"the lugs of '{control.Name}' are to be found already",
                            "name each control once"
                        )
                        .Beside(earlier.DeclaredAt, "asked for here first")
                );
                continue;
            }

            named.Add($"'{control.Name}'");
            Open.Add(new OpenControl(control.Index, [.. at], syntax.Location));
        }

        if (named.Count > 0)
        {
            draft.Sink.Add(
                OpenFindings.ToBeFound.At(
                    syntax.Location,
                    $"the lugs of {string.Join(" and ", named)} are to be found",
                    "ask for the wires with: wiretext propose FILE"
                )
            );
        }
    }
}
