using WireText.Drawing.Layout;
using WireText.Text;

namespace WireText.Testing;

/// <summary>One text that was drawn: what came of it, where everything went, and the picture.</summary>
/// <param name="Layout">Null when there is no circuit to lay out, or one too large.</param>
/// <param name="Svg">Null where <paramref name="Layout"/> is.</param>
internal sealed record Drawn(Compilation Compiled, LayoutResult? Layout, string? Svg)
{
    public static Drawn Of(SourceText source, DrawOptions options)
    {
        var compiled = Compilation.Of(source, NoSources.Instance);
        return new Drawn(compiled, compiled.PlanFor(options.Effort)?.Layout, compiled.Draw(options));
    }
}
