using System.Text;
using WireText.Text;

namespace WireText.Output;

/// <summary>
/// The one way to where people read: a terminal, or the log of a workflow. Whatever is written, nothing but this writer moves
/// the cursor, changes a colour or starts a command.
/// </summary>
/// <param name="inColour">True where colours are understood and wanted.</param>
public sealed class MessageWriter(TextWriter inner, bool inColour) : TextWriter
{
    public override Encoding Encoding => inner.Encoding;

    public override void Write(char value) => inner.Write(VisibleText.Lines(value.ToString()));

    /// <summary>Writes lines; a name from somewhere else among them is made one line first.</summary>
    public override void Write(string? value) => inner.Write(VisibleText.Lines(value ?? ""));

    public override void WriteLine() => inner.Write('\n');

    /// <summary>Writes one line, whatever is in it.</summary>
    public override void WriteLine(string? value)
    {
        inner.Write(VisibleText.Line(value ?? ""));
        inner.Write('\n');
    }

    /// <summary>Writes a text in a colour or in bold.</summary>
    /// <param name="style">The parameters of Select Graphic Rendition (ECMA-48), such as <c>1;31</c>.</param>
    public void WriteStyled(string text, string style)
    {
        var visible = VisibleText.Lines(text);
        inner.Write(inColour ? $"\u001b[{style}m{visible}\u001b[0m" : visible);
    }

    /// <summary>Goes back to the start of the line and empties it (ECMA-48, Erase in Line).</summary>
    public void EraseLine() => inner.Write("\r\u001b[K");

    public override void Flush() => inner.Flush();
}
