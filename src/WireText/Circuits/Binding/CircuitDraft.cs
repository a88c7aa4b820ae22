using System.Collections.Immutable;
using System.Globalization;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What the binder has so far. Names are alike in upper and lower case.</summary>
internal sealed class CircuitDraft(PartCatalogue catalogue, FindingSink sink)
{
    private readonly Dictionary<string, int> partsByName = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, int> lugsByName = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> brokenNames = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<int> misnamedControls = [];
    private readonly HashSet<string> namesTwice = new(StringComparer.OrdinalIgnoreCase);

    public PartCatalogue Catalogue { get; } = catalogue;

    public FindingSink Sink { get; } = sink;

    public List<Part> Parts { get; } = [];

    public List<Lug> Lugs { get; } = [];

    public List<Control> Controls { get; } = [];

    public List<Dial> Dials { get; } = [];

    public List<Element> Elements { get; } = [];

    public List<Wire> Wires { get; } = [];

    public List<Cable> Cables { get; } = [];

    public List<Join> Joins { get; } = [];

    /// <summary>A part that was named but could not be built: what leads to it is not reported again.</summary>
    public void MarkBroken(string name) => brokenNames.Add(name);

    public bool IsBroken(string name) => brokenNames.Contains(name);

    /// <summary>The positions of a control were given words that could not be taken: nobody knows by which it is meant now.</summary>
    public void MarkMisnamed(Control control) => misnamedControls.Add(control.Index);

    public bool IsMisnamed(Control control) => misnamedControls.Contains(control.Index);

    /// <summary>True when another part wants the name as well: a line with the name may mean either.</summary>
    public bool IsNameTwice(string name) => namesTwice.Contains(name);

    public Part? FindPart(string name) => partsByName.TryGetValue(name, out var index) ? Parts[index] : null;

    public Lug? FindLug(string fullName) => lugsByName.TryGetValue(fullName, out var index) ? Lugs[index] : null;

    /// <summary>Takes a name for a part; reports it and gives false when it is taken already.</summary>
    public bool Claim(WordSyntax name)
    {
        if (FindPart(name.Text) is not { } earlier)
        {
            return true;
        }

        namesTwice.Add(name.Text);
        Sink.Add(
            PartFindings
                .NameTaken.At(
                    name.Location,
                    $"'{name.Text}' is the name of another part already",
                    $"give it a name of its own, such as {FreeName(name.Text)}"
                )
                .Beside(earlier.NameAt, $"'{earlier.Name}' is named here first")
        );
        return false;
    }

    /// <summary>The name with the least number that makes it free.</summary>
    private string FreeName(string name)
    {
        var number = 2;
        while (FindPart(Numbered()) is not null)
        {
            number++;
        }

        return Numbered();

        string Numbered() => string.Create(CultureInfo.InvariantCulture, $"{name}{number}");
    }

    /// <summary>Adds the lugs of a part that is about to be added, and gives their indices.</summary>
    public ImmutableArray<int> AddLugs(string partName, PartDefinition definition)
    {
        var isItsOwnLug = definition.Terminals.Count(t => t.Kind != TerminalKind.Inner) == 1;
        var indices = ImmutableArray.CreateBuilder<int>(definition.Terminals.Length);
        foreach (var terminal in definition.Terminals)
        {
            var isOwn = isItsOwnLug && terminal.Kind != TerminalKind.Inner;
            var name = isOwn ? partName : $"{partName}.{terminal.Name}";
            indices.Add(Lugs.Count);
            lugsByName.TryAdd(name, Lugs.Count);
            Lugs.Add(new Lug(Lugs.Count, Parts.Count, name, terminal));
        }

        return indices.MoveToImmutable();
    }

    public void AddPart(Part part)
    {
        partsByName.Add(part.Name, part.Index);
        Parts.Add(part);
    }
}
