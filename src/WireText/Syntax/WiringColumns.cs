using System.Collections.Immutable;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Syntax;

/// <summary>Sets lines that no file has yet in even columns.</summary>
public static class WiringColumns
{
    public static ImmutableArray<string> Of(ImmutableArray<string> lines) =>
        [
            .. Formatter
                .Format(WiringParser.Parse(new SourceText("lines", string.Join('\n', lines) + "\n")))
                .Split('\n', StringSplitOptions.RemoveEmptyEntries),
        ];
}
