using System.Text;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Studies;
using WireText.Electrical.Traces;

namespace WireText.Editing;

/// <summary>Says what a lug is, what is one net with it, and what it does in each position.</summary>
internal static class LugHover
{
    /// <summary>Lugs of a net that are listed. Chosen: a ground has dozens.</summary>
    private const int MostLugs = 12;

    /// <summary>Positions that are told. Chosen: more are a table, and `wiretext positions` has it.</summary>
    private const int MostRows = 12;

    public static string? At(Compilation compiled, NameUse use)
    {
        if (compiled.Circuit is not { } circuit || Named(compiled, circuit, use) is not { } lug)
        {
            return null;
        }

        var text = new StringBuilder($"{lug.Name}: {LugWords.Of(circuit, lug)}\n");
        var net = circuit
            .Nets.Members[circuit.Nets.OneNet[lug.Index]]
            .Where(other => other != lug.Index && !circuit.Lugs[other].IsInner)
            .ToList();
        text.Append(
            net.Count == 0
                ? "one net with nothing else\n"
                : $"one net with {string.Join(", ", net.Take(MostLugs).Select(circuit.NameOf))}{(net.Count > MostLugs ? ", …" : "")}\n"
        );
        if (compiled.Study is { } study)
        {
            AppendRows(text, circuit, study, lug);
        }

        return Hovers.Code(text.ToString());
    }

    /// <summary>The lug that a name means: of words with a dot all of them count.</summary>
    private static Lug? Named(Compilation compiled, Circuit circuit, NameUse use)
    {
        var content = compiled.Source.Content;
        var start = use.At.Span.Start;
        while (start > 0 && content[start - 1] is not (' ' or '\t' or '\n' or '\r' or '(' or ':' or ','))
        {
            start--;
        }

        return circuit.FindLug(content[start..use.At.Span.End]);
    }

    private static void AppendRows(StringBuilder text, Circuit circuit, Study study, Lug lug)
    {
        var rows = study.Positions.Rows;
        if (rows.Length > MostRows || !study.Positions.Columns.Any())
        {
            return;
        }

        text.Append('\n');
        foreach (var row in rows)
        {
            var state = StateText.OfStated(circuit, row.State);
            text.Append($"{state}: {WhatItDoes(circuit, study, row, lug.Index)}\n");
        }
    }

    private static string WhatItDoes(Circuit circuit, Study study, PositionRow row, int lug)
    {
        var joined = new ContactNets(circuit, row.State);
        var output = circuit.Outputs[0];
        var (isTip, isSleeve) = (joined.AreOne(lug, output.Tip), joined.AreOne(lug, output.Sleeve));
        return isTip && isSleeve ? "tip and sleeve are joined here"
            : isTip ? "joined to the tip"
            : isSleeve ? "joined to the sleeve"
            : Trace.OfState(circuit, study.Network, row.State).Lugs[lug] ? "on the way of the signal"
            : "no signal";
    }
}
