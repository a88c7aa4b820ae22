using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Mods;

/// <summary>Takes a part out, and what is soldered to it.</summary>
internal static class Dropping
{
    private const string EmptyCell = ".";

    /// <summary>What is left of a statement without a part: one that is changed, or none. Null where it has nothing to do with it.</summary>
    public static ImmutableArray<StatementSyntax>? LeftOf(StatementSyntax statement, string name) =>
        statement switch
        {
            PartSyntax part when Naming.Alike(part.Name.Text, name) => [],
            PartSyntax { Hangs: { } hangs } part when IsOn(hangs.From, name) || IsOn(hangs.To, name) => Hanging(
                part,
                name
            ),
            SpliceSyntax splice when Naming.Alike(splice.Name.Text, name) => [],
            SpliceSyntax splice when splice.Lugs.Any(lead => IsOn(lead, name)) =>
            [
                splice with
                {
                    Lugs = splice.Lugs.RemoveAll(lead => IsOn(lead, name)),
                },
            ],
            WireSyntax wire when wire.Lugs.Any(lug => IsOn(lug, name)) => [],
            CableSyntax cable => LeftOf(cable, name),
            TouchSyntax touch when touch.Lugs.Any(lug => IsOn(lug, name)) => Touching(touch, name),
            PositionsSyntax positions when IsOn(positions.Control, name) => [],
            PlaceSyntax place when Naming.Alike(place.Name.Text, name) => [],
            AllowSyntax { At: { } at } when IsOn(at, name) => [],
            FindSyntax find when find.Controls.Concat(find.At).Any(one => IsOn(one, name)) => Finding(find, name),
            FoundSyntax found when Mentions.Part(found, name) => [],
            RestSyntax rest when rest.Pairs.Any(pair => Mentions.Part(pair, name)) => Resting(rest, name),
            ArrangeSyntax arrange when arrange.Rows.Any(row => row.Cells.Any(cell => cell.Is(name))) =>
            [
                Without(arrange, name),
            ],
            _ => null,
        };

    private static bool IsOn(LugSyntax? lug, string name) => lug is not null && Naming.Alike(lug.Name.Text, name);

    /// <summary>A part that hung on the one that goes keeps its other lead, as a wire of its own.</summary>
    private static ImmutableArray<StatementSyntax>? Hanging(PartSyntax part, string name)
    {
        var hangs = part.Hangs!;
        var on = IsOn(hangs.From, name) ? hangs.From : hangs.To;
        var left = new Lifting(on.FullName, null).LeftOf(part);
        return left is not { } kept
            ? null
            : [.. kept.Where(one => one is not WireSyntax wire || !wire.Lugs.Any(lug => IsOn(lug, name)))];
    }

    private static ImmutableArray<StatementSyntax>? LeftOf(CableSyntax cable, string name)
    {
        var cores = cable.Cores.RemoveAll(core => IsOn(core.From, name) || IsOn(core.To, name));
        var braid =
            cable.Braid is { } whole && (IsOn(whole.From, name) || IsOn(whole.To, name))
                ? whole with
                {
                    From = IsOn(whole.From, name) ? null : whole.From,
                    To = IsOn(whole.To, name) ? null : whole.To,
                }
                : cable.Braid;
        return cores.Length == cable.Cores.Length && braid == cable.Braid ? null
            : cores.IsEmpty ? []
            : [cable with { Cores = cores, Braid = braid is { From: null, To: null } ? null : braid }];
    }

    private static ImmutableArray<StatementSyntax> Touching(TouchSyntax touch, string name) =>
        touch.Lugs.RemoveAll(lug => IsOn(lug, name)) is { Length: > 1 } left ? [touch with { Lugs = left }] : [];

    private static ImmutableArray<StatementSyntax> Finding(FindSyntax find, string name) =>
        find.Controls.RemoveAll(control => IsOn(control, name)) is { IsEmpty: false } left
            ? [find with { Controls = left, At = find.At.RemoveAll(lug => IsOn(lug, name)) }]
            : [];

    private static ImmutableArray<StatementSyntax> Resting(RestSyntax rest, string name) =>
        rest.Pairs.RemoveAll(pair => Mentions.Part(pair, name)) is { IsEmpty: false } left
            ? [rest with { Pairs = left }]
            : [];

    private static ArrangeSyntax Without(ArrangeSyntax arrange, string name) =>
        arrange with
        {
            Rows =
            [
                .. arrange.Rows.Select(row =>
                    row with
                    {
                        Cells = [.. row.Cells.Select(cell => cell.Is(name) ? cell with { Text = EmptyCell } : cell)],
                    }
                ),
            ],
        };
}
