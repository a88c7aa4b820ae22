using System.Text;

namespace WireText.Cli.Describing;

/// <summary>Text in paragraphs and in two columns, broken between words.</summary>
internal sealed class HelpColumns
{
    /// <summary>What the narrowest terminal in use shows without breaking lines.</summary>
    public const int Widest = 80;

    private const string Indent = "  ";

    /// <summary>A name longer than this has its text on the next line.</summary>
    private const int WidestName = 24;

    private readonly StringBuilder text = new();

    public void Heading(string heading) => text.Append($"\n{heading}:\n");

    /// <summary>A line that is to be copied: it is not broken.</summary>
    public void Line(string line) => text.Append($"{Indent}{line}\n");

    /// <summary>Lines that are set in stay as they are; the others of a paragraph flow.</summary>
    public void Paragraphs(string paragraphs)
    {
        foreach (var (place, paragraph) in paragraphs.Split("\n\n").Index())
        {
            text.Append(place == 0 ? "" : "\n");
            if (paragraph.Split('\n').Any(line => line.StartsWith(' ')))
            {
                text.Append($"{paragraph}\n");
                continue;
            }

            foreach (var line in Broken(paragraph.Replace('\n', ' '), Widest))
            {
                text.Append($"{line}\n");
            }
        }
    }

    public void Rows(IEnumerable<(string Name, string About)> rows)
    {
        var all = rows.ToList();
        var width = Math.Min(WidestName, all.Max(row => row.Name.Length));
        foreach (var (name, about) in all)
        {
            Row(name, about, width);
        }
    }

    /// <param name="width">Columns that names take.</param>
    public void Row(string name, string about, int width)
    {
        var start = Indent.Length + width + Indent.Length;
        text.Append($"{Indent}{name}");
        var at = Indent.Length + name.Length;
        if (at + Indent.Length > start)
        {
            text.Append('\n');
            at = 0;
        }

        foreach (var line in Broken(about, Widest - start))
        {
            text.Append(' ', start - at).Append($"{line}\n");
            at = 0;
        }
    }

    public override string ToString() => text.ToString();

    private static IEnumerable<string> Broken(string sentence, int width)
    {
        var line = "";
        foreach (var word in sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                yield return line;
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        yield return line;
    }
}
