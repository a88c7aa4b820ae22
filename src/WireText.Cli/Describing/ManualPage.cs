using System.Globalization;
using System.Text;

namespace WireText.Cli.Describing;

/// <summary>Writes the page of the program for <c>man</c>, in the macros that every troff has.</summary>
internal static class ManualPage
{
    public static string Write(ProgramShape program, string version)
    {
        var page = new StringBuilder();
        var upper = program.Name.ToUpperInvariant();
        page.Append($".TH {upper} 1 \"\" \"{Text($"{program.Name} {version}")}\"\n");
        page.Append($".SH NAME\n{program.Name} \\- guitar wiring as text, checked and drawn\n");
        page.Append($".SH SYNOPSIS\n.B {program.Name}\n.I command\n[\\fIargument\\fR ...] [\\fIoption\\fR ...]\n");
        page.Append(".SH DESCRIPTION\n");
        AppendLines(page, program.About);
        page.Append(".SH OPTIONS\n");
        AppendOptions(page, program.Options);
        page.Append(".SH COMMANDS\n");
        foreach (var command in program.Commands)
        {
            AppendCommand(page, program, command);
        }

        return page.ToString();
    }

    private static void AppendCommand(StringBuilder page, ProgramShape program, CommandShape command)
    {
        page.Append(
            $".SS {Text($"{program.Name} {command.Name} {string.Join(' ', command.Arguments.Select(argument => argument.Use))}").TrimEnd()}\n"
        );
        AppendLines(page, command.About);
        foreach (var argument in command.Arguments)
        {
            page.Append($".TP\n.I {Text(argument.Name)}\n{Line(argument.About)}\n");
        }

        AppendOptions(page, command.Options);
        page.Append(".PP\nExample:\n");
        foreach (var example in command.Examples)
        {
            page.Append($".br\n.B {Text(example)}\n");
        }
    }

    private static void AppendOptions(StringBuilder page, IEnumerable<OptionShape> options)
    {
        foreach (var option in options)
        {
            var value = option.Value is null ? "" : $" \\fI{Text(option.Value)}\\fR";
            page.Append($".TP\n\\fB{Text(string.Join(", ", option.Names))}\\fR{value}\n{Line(option.About)}\n");
        }
    }

    /// <summary>Paragraphs; lines that are set in stay lines of their own.</summary>
    private static void AppendLines(StringBuilder page, string text)
    {
        foreach (var (place, paragraph) in text.Split("\n\n").Index())
        {
            page.Append(place == 0 ? "" : ".PP\n");
            foreach (var (number, line) in paragraph.Split('\n').Index())
            {
                page.Append(number > 0 && line.StartsWith(' ') ? ".br\n" : "").Append(Line(line.Trim())).Append('\n');
            }
        }
    }

    /// <summary>A line of text, of which no start is taken for a request.</summary>
    private static string Line(string line) =>
        line.StartsWith('.') || line.StartsWith('\'') ? $"\\&{Text(line)}" : Text(line);

    /// <summary>A hyphen that can be copied, and by its number what no old troff reads.</summary>
    private static string Text(string text) =>
        string.Concat(
            text.EnumerateRunes()
                .Select(rune =>
                    rune.Value switch
                    {
                        '\\' => "\\e",
                        '-' => "\\-",
                        < 128 => rune.ToString(),
                        var code => string.Create(CultureInfo.InvariantCulture, $"\\[u{code:X4}]"),
                    }
                )
        );
}
