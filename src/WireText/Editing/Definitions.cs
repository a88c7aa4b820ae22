using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Finds where the lines under a <c>define</c> give something its name.</summary>
internal static class Definitions
{
    /// <summary>A control, a dial or a coil.</summary>
    public static SourceLocation? SectionIn(DefineSyntax define, string name) =>
        define
            .Lines.Select(line =>
                line switch
                {
                    PositionSyntax position => position.Control,
                    TrackInsideSyntax track => track.Name,
                    CoilInsideSyntax coil => coil.Name,
                    _ => null,
                }
            )
            .FirstOrDefault(word => word is not null && Naming.Alike(word.Text, name))
            ?.Location;

    /// <param name="section">The control behind the part's name; empty for the one that carries it.</param>
    public static SourceLocation? PositionIn(DefineSyntax define, string section, string name) =>
        define
            .Lines.OfType<PositionSyntax>()
            .FirstOrDefault(line =>
                Naming.Alike(line.Control?.Text ?? "", section) && Naming.Alike(line.Position.Text, name)
            )
            ?.Position.Location;
}
