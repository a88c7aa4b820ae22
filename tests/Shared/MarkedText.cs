using System.Text;
using WireText.Text;

namespace WireText.Testing;

/// <summary>A text in which <c>[|</c> and <c>|]</c> mark the places that a test is about.</summary>
/// <param name="Text">Without the marks.</param>
/// <param name="Spans">The marked places in <paramref name="Text"/>, by where they start; marks may nest.</param>
internal sealed record MarkedText(string Text, IReadOnlyList<TextSpan> Spans)
{
    public static MarkedText Parse(string marked)
    {
        var text = new StringBuilder();
        var open = new Stack<int>();
        var spans = new List<TextSpan>();
        for (var i = 0; i < marked.Length; i++)
        {
            if (IsAt(marked, i, "[|"))
            {
                open.Push(text.Length);
                i++;
            }
            else if (IsAt(marked, i, "|]"))
            {
                Assert.True(open.Count > 0, "|] without [|");
                spans.Add(TextSpan.FromBounds(open.Pop(), text.Length));
                i++;
            }
            else
            {
                text.Append(marked[i]);
            }
        }

        Assert.True(open.Count == 0, "[| without |]");
        return new MarkedText(text.ToString(), [.. spans.OrderBy(span => span.Start).ThenBy(span => span.End)]);
    }

    private static bool IsAt(string text, int index, string mark) =>
        string.CompareOrdinal(text, index, mark, 0, mark.Length) == 0;
}
