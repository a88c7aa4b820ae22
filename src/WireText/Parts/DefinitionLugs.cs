using WireText.Geometry;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Parts;

/// <summary>The lugs, leads and inner joints that a <c>define</c> names, and what is said where a line names another.</summary>
internal sealed class DefinitionLugs(DefineSyntax define, FindingSink sink)
{
    private readonly List<Terminal> terminals = [];

    public IReadOnlyList<Terminal> All => terminals;

    public void Add(TerminalsSyntax line)
    {
        var kind = Naming.Alike(line.Keyword.Text, "leads") ? TerminalKind.Lead : TerminalKind.Lug;
        foreach (var (name, at) in line.Terminals)
        {
            Add(name, kind, at is null ? null : new Point(at.X, at.Y));
        }
    }

    public void Add(NamesSyntax line)
    {
        foreach (var name in line.Names)
        {
            if (Naming.Alike(line.Keyword.Text, "inner"))
            {
                Add(name, TerminalKind.Inner, at: null);
            }
            else if (Resolve(name) is { } terminal)
            {
                terminals[terminals.IndexOf(terminal)] = Naming.Alike(line.Keyword.Text, "metal")
                    ? terminal with
                    {
                        IsMetal = true,
                    }
                    : terminal with
                    {
                        IsSpare = true,
                    };
            }
        }
    }

    /// <summary>The lug of a name; null, after a finding, when there is none.</summary>
    public Terminal? Resolve(WordSyntax name)
    {
        if (Find(name.Text) is { } terminal)
        {
            return terminal;
        }

        var near = DidYouMean.Nearest(name.Text, terminals.Select(t => t.Name), allowed: 1);
        sink.Add(
            DefinitionFindings.BadDefinition.At(
                name.Location,
                $"'{define.Model.Text}' has no lug '{name.Text}'",
                near is null ? "name it under lugs, leads or inner" : $"did you mean '{near}'?"
            )
        );
        return null;
    }

    /// <summary>Lugs that a contact or solder joins; null, after a finding, when one of the names is none.</summary>
    public ContactGroup? Resolve(JointSyntax joint)
    {
        var found = joint.Words.Select(Resolve).ToList();
        var named = found.OfType<Terminal>().Select(terminal => terminal.Name).ToList();
        return named.Count < found.Count ? null : new ContactGroup([.. named]);
    }

    private void Add(WordSyntax name, TerminalKind kind, Point? at)
    {
        if (Find(name.Text) is not null)
        {
            sink.Add(
                DefinitionFindings.BadDefinition.At(
                    name.Location,
                    $"'{name.Text}' is named twice in '{define.Model.Text}'"
                )
            );
            return;
        }

        terminals.Add(new Terminal(name.Text, kind, at, IsMetal: false, IsSpare: false));
    }

    private Terminal? Find(string name) => terminals.Find(t => Naming.Alike(t.Name, name));
}
