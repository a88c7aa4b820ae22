using System.Collections.Immutable;
using WireText.Mods;
using WireText.Syntax;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Comparing;

/// <summary>The lines of a mod that take a line of its base out.</summary>
internal static class ModLines
{
    /// <summary>What takes a statement out, where another circuit has it no more; none where no line of a mod does.</summary>
    /// <param name="was">The statements of the base.</param>
    /// <param name="now">The statements of the other circuit.</param>
    public static IEnumerable<StatementSyntax> TakingOut(
        StatementSyntax statement,
        ImmutableArray<StatementSyntax> was,
        ImmutableArray<StatementSyntax> now
    ) =>
        statement switch
        {
            PartSyntax part => Replacing(part, now) is { } replace ? [replace] : Dropping(part.Name, was),
            SpliceSyntax splice => Dropping(splice.Name, was),
            WireSyntax wire => [new LiftSyntax(wire.Lugs[0], wire.Lugs[^1], wire.Location)],
            CableSyntax cable => cable.Cores.Select(core => new LiftSyntax(core.From, core.To, core.Location)),
            ExpectSyntax expect => [new DropExpectSyntax(expect.Jack, expect.State, expect.Location)],
            _ => [],
        };

    /// <summary>A statement as a line, or several.</summary>
    public static string TextOf(StatementSyntax statement) =>
        statement switch
        {
            LiftSyntax lift => $"lift {lift.Lug.FullName}{(lift.To is { } to ? $" to {to.FullName}" : "")}",
            DropSyntax drop => $"drop {drop.Name.Text}",
            DropExpectSyntax drop => $"drop expect {ExpectedAt.Words(drop.Jack, drop.State)}",
            ReplaceSyntax replace =>
                $"replace {replace.Name.Text} {StatementText.Arguments(replace.Arguments)}".TrimEnd(),
            _ => Canonical.Written(statement),
        };

    /// <summary>A part and all that is expected of it: what holds of the other circuit is written anew.</summary>
    private static IEnumerable<StatementSyntax> Dropping(WordSyntax name, ImmutableArray<StatementSyntax> was) =>
        was.OfType<ExpectSyntax>()
            .Where(expect => Mentions.Part(expect, name.Text))
            .Select(expect => new DropExpectSyntax(expect.Jack, expect.State, expect.Location))
            .Append<StatementSyntax>(new DropSyntax(name, name.Location));

    /// <summary>Another model or value in the same place, on the same wires; null where it is more than that.</summary>
    private static ReplaceSyntax? Replacing(PartSyntax part, ImmutableArray<StatementSyntax> now) =>
        now.OfType<PartSyntax>().FirstOrDefault(other => Naming.Alike(other.Name.Text, part.Name.Text)) is { } other
        && Naming.Alike(other.Kind.Text, part.Kind.Text)
        && Hanging(other) == Hanging(part)
            ? new ReplaceSyntax(other.Name, other.Arguments, other.Location)
            : null;

    private static string Hanging(PartSyntax part) =>
        part.Hangs is { } hangs ? $"{hangs.From.FullName} {hangs.To.FullName}".ToUpperInvariant() : "";
}
