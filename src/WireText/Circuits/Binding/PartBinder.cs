using System.Collections.Immutable;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Makes parts, with their lugs, controls, dials and elements, from part and splice lines.</summary>
internal sealed class PartBinder(CircuitDraft draft)
{
    private readonly CircuitRoom room = new(draft.Sink);

    /// <summary>False when the circuit has no room for the part.</summary>
    public bool Bind(PartSyntax syntax)
    {
        if (!draft.Claim(syntax.Name))
        {
            return true;
        }

        if (PartArguments.Read(syntax, draft) is not { } arguments)
        {
            draft.MarkBroken(syntax.Name.Text);
            return true;
        }

        var definition = arguments.Definition;
        if (!room.Take(definition, syntax.Name))
        {
            return false;
        }

        var index = draft.Parts.Count;
        var lugs = draft.AddLugs(syntax.Name.Text, definition);
        var controls = AddControls(syntax.Name.Text, index, definition, lugs);
        var dials = AddDials(syntax.Name.Text, index, definition);
        var keys = new PartKeys(draft.Sink, arguments, syntax.Name);
        var elements = new ElementBinder(draft, arguments, keys, syntax.Name, index, lugs, dials).Bind();
        var holes = HoleBinder.Bind(keys, definition);
        keys.ReportUnused();
        foreach (var group in definition.Joined)
        {
            AddJoined(definition, group, lugs, syntax.Name.Location);
        }

        draft.AddPart(
            new Part(
                index,
                syntax.Name.Text,
                definition,
                lugs,
                controls,
                dials,
                elements.Indices,
                elements.ValueLabel,
                elements.TaperLabel,
                [.. arguments.Traits],
                HangsOn: null,
                arguments.Remark,
                syntax.Name.Location
            )
            {
                Holes = holes.Holes,
                HolesFrom = holes.From,
            }
        );
        return true;
    }

    /// <inheritdoc cref="Bind(PartSyntax)"/>
    public bool Bind(SpliceSyntax syntax)
    {
        if (!draft.Claim(syntax.Name))
        {
            return true;
        }

        if (!room.Take(StandardParts.Splice, syntax.Name))
        {
            return false;
        }

        var index = draft.Parts.Count;
        var lugs = draft.AddLugs(syntax.Name.Text, StandardParts.Splice);
        ImmutableArray<string> traits = syntax.Sleeved is null ? [] : ["sleeved"];
        draft.AddPart(
            new Part(
                index,
                syntax.Name.Text,
                StandardParts.Splice,
                lugs,
                [],
                [],
                [],
                null,
                null,
                traits,
                HangsOn: null,
                syntax.Remark?.Value,
                syntax.Name.Location
            )
        );
        return true;
    }

    private ImmutableArray<int> AddControls(string name, int part, PartDefinition definition, ImmutableArray<int> lugs)
    {
        var indices = ImmutableArray.CreateBuilder<int>();
        foreach (var control in definition.Controls)
        {
            var positions = control.Positions.Select(p => new Position(
                p.Name,
                [.. p.Closed.Select(group => LugsOf(definition, group, lugs))]
            ));
            indices.Add(draft.Controls.Count);
            draft.Controls.Add(
                new Control(
                    draft.Controls.Count,
                    Suffixed(name, control.Suffix),
                    part,
                    [.. positions],
                    control.Rest,
                    definition.Between,
                    definition.IsEndless
                )
                {
                    IsPlug = string.Equals(definition.Kind, PartKinds.Jack, StringComparison.OrdinalIgnoreCase),
                }
            );
        }

        return indices.ToImmutable();
    }

    private ImmutableArray<int> AddDials(string name, int part, PartDefinition definition)
    {
        var indices = ImmutableArray.CreateBuilder<int>();
        var suffixes = definition
            .Insides.OfType<Inside.TrackInside>()
            .Select(t => t.Name ?? "")
            .Distinct(StringComparer.OrdinalIgnoreCase);
        foreach (var suffix in suffixes)
        {
            indices.Add(draft.Dials.Count);
            draft.Dials.Add(
                new Dial(draft.Dials.Count, Suffixed(name, suffix), part, definition.DialRest ?? Dial.FullyUp)
            );
        }

        return indices.ToImmutable();
    }

    private void AddJoined(PartDefinition definition, ContactGroup group, ImmutableArray<int> lugs, SourceLocation at)
    {
        var members = LugsOf(definition, group, lugs);
        for (var i = 1; i < members.Length; i++)
        {
            draft.Joins.Add(new Join(draft.Joins.Count, JoinKind.Joined, members[i - 1], members[i], Wire: -1, at));
        }
    }

    private static ImmutableArray<int> LugsOf(
        PartDefinition definition,
        ContactGroup group,
        ImmutableArray<int> lugs
    ) => [.. group.Terminals.Select(name => lugs[definition.IndexOf(name)])];

    private static string Suffixed(string name, string suffix) => suffix.Length == 0 ? name : $"{name}.{suffix}";
}
