using Sprache;
using WireText.Syntax.Nodes;

namespace WireText.Syntax.Parsing;

/// <summary>What can be kept of a bad line, so that its name stays known and what leads to it is not reported as well.</summary>
internal static class BrokenStatements
{
    private static readonly Parser<WordSyntax> Name = WordParsers.Identifier("a name");

    /// <summary>A part, a splice, a colour or a definition with its name; null where the line names none.</summary>
    public static StatementSyntax? WhatIsKnown(LineReading reading)
    {
        var keyword = reading.FirstWord;
        var behind = LineInput.At(reading.Aside(), keyword.Span.End);
        StatementSyntax? node =
            keyword.Is(Keywords.Define) ? Define(behind)
            : Name(behind) is not { WasSuccessful: true } name ? null
            : keyword.Is(Keywords.Colour) ? new ColourSyntax(name.Value, null, null, reading.Content)
            : keyword.Is(Keywords.Splice) ? new SpliceSyntax(name.Value, [], null, null, reading.Content)
            : StatementParsers.For(keyword.Text) is null
                ? new PartSyntax(keyword, name.Value, [], null, reading.Content)
            : null;
        return node is null ? null : node with { IsBroken = true };
    }

    private static DefineSyntax? Define(LineInput behind)
    {
        var names = Name.Repeat(2)(behind);
        return names.WasSuccessful && names.Value.ToList() is [var kind, var model]
            ? new DefineSyntax(kind, model, null, [], behind.Reading.Content)
            : null;
    }
}
