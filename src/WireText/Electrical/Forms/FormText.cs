using System.Collections.Immutable;
using System.Globalization;
using WireText.Circuits;

namespace WireText.Electrical.Forms;

/// <summary>Writes a form: as a person says it, or as the language claims it.</summary>
public static class FormText
{
    /// <summary>As a person says it: <c>neck parallel bridge, out of phase</c>, <c>hb.n</c>, <c>neck through 100n</c>.</summary>
    public static string ForPeople(Circuit circuit, HeardForm form)
    {
        var text = form switch
        {
            { Root: { } root } => new Writer(circuit, isClaim: false, PhaseWord(form) is not null).Write(root)
                + PhaseWord(form),
            { Kind: FormKind.Bridge } => "bridge network: " + string.Join(", ", form.Coils.Select(InBridge)),
            _ => "nothing",
        };
        var dark = form.DarkenedBy.Select(part => $", darkened by {part.Text}");
        var traces = form.Traces.Select(trace => $" (a trace of {trace.Coil.Name}, {Figure(trace.Decibels)} dB)");
        return text + string.Concat(dark) + string.Concat(traces);
    }

    /// <summary>As <c>expect</c> claims it: <c>reversed neck parallel bridge</c>, <c>hb.n</c>, <c>neck through lo</c>; null for what no claim can say.</summary>
    public static string? AsClaim(Circuit circuit, HeardForm form) =>
        form.Root is { } root ? new Writer(circuit, isClaim: true, hidesSigns: false).Write(root) : null;

    internal static string Figure(double decibels)
    {
        var digits = Math.Abs(decibels) < 10 ? "0.0" : "0";
        var text = Math.Abs(decibels).ToString(digits, CultureInfo.InvariantCulture);
        return decibels < 0 ? "−" + text : text;
    }

    internal static int CoilsOf(Circuit circuit, Part part) =>
        part.Elements.Count(element => circuit.Elements[element] is Coil);

    private static string InBridge(FormCoil coil) =>
        (coil.Sign < 0 ? "reversed " : "") + $"{coil.Coil.Name} {Figure(coil.Decibels)} dB";

    /// <summary>What ends the text where two groups are out of phase or turn; null where the words of the parts say it, or nothing.</summary>
    private static string? PhaseWord(HeardForm form)
    {
        if (form.Coils.Any(coil => coil.Phase == PhaseRelation.TurnsWithFrequency))
        {
            return ", phase turns with frequency";
        }

        var groups = form.Root switch
        {
            SeriesForm series => series.Parts,
            ParallelForm parallel => parallel.Parts,
            _ => [],
        };
        var isReversed = groups.Where(group => group.Coils.All(coil => coil.Sign < 0)).ToList();
        var isMixed = groups.Any(group => group.Coils.Any(coil => coil.Sign < 0) && !isReversed.Contains(group));
        var isOut = form.Coils.Any(coil => coil.Phase == PhaseRelation.OutOfPhase);
        return isOut && isReversed.Count > 0 && !isMixed && IsOneOfTwo(form.Root!) ? ", out of phase" : null;
    }

    /// <summary>True when the coils fall into two pickups, or two coils, of which one is reversed.</summary>
    private static bool IsOneOfTwo(FormNode root)
    {
        var coils = root.Coils.ToList();
        var parts = coils.Select(coil => coil.Coil.Part).Distinct().Count();
        return coils.Count == 2
            || (
                parts == 2
                && coils.GroupBy(coil => coil.Coil.Part).All(part => part.DistinctBy(coil => coil.Sign).Count() == 1)
            );
    }

    /// <summary>One way of writing.</summary>
    /// <param name="isClaim">In the words of the language, with the names of parts.</param>
    /// <param name="hidesSigns">True when the phase is said at the end.</param>
    private sealed class Writer(Circuit circuit, bool isClaim, bool hidesSigns)
    {
        public string Write(FormNode node) =>
            node switch
            {
                CoilForm coil => Reversed(node) + coil.Coil.Name + Notes(node),
                SeriesForm series => WriteSeries(series),
                ParallelForm parallel => WriteParallel(parallel),
                _ => "",
            };

        private string WriteSeries(SeriesForm series)
        {
            var words = new List<string>();
            foreach (var group in Grouped(series.Parts))
            {
                words.Add(
                    group is [CoilForm first, _, ..]
                        ? Reversed(first) + circuit.Parts[first.Coil.Part].Name
                        : Bracketed(group[0])
                );
            }

            return Joined(words, " series ", series);
        }

        private string WriteParallel(ParallelForm parallel)
        {
            var groups = Grouped(parallel.Parts);
            if (!isClaim && groups is [[CoilForm first, _, ..]])
            {
                return Reversed(first) + circuit.Parts[first.Coil.Part].Name + ", coils parallel" + Notes(parallel);
            }

            return Joined([.. parallel.Parts.Select(Bracketed)], " parallel ", parallel);
        }

        private string Joined(List<string> words, string join, FormNode node)
        {
            var text = string.Join(join, words);
            var notes = Notes(node);
            return words.Count > 1 && notes.Length > 0 ? $"({text}){notes}" : text + notes;
        }

        /// <summary>Parts one by one, but all bare coils of a pickup with one sign together.</summary>
        private List<List<FormNode>> Grouped(ImmutableArray<FormNode> parts)
        {
            var groups = new List<List<FormNode>>();
            foreach (var part in parts)
            {
                var together = part is CoilForm coil
                    ? parts.OfType<CoilForm>().Where(other => other.Coil.Part == coil.Coil.Part).ToList()
                    : [];
                var isWhole =
                    together.Count > 1
                    && together.Count == CoilsOf(circuit, circuit.Parts[together[0].Coil.Part])
                    && together.DistinctBy(other => other.Sign).Count() == 1
                    && together.TrueForAll(other => other is { IsPlainlyJoined: true, Through.IsEmpty: true });
                if (!isWhole)
                {
                    groups.Add([part]);
                }
                else if (together[0] == part)
                {
                    groups.Add([.. together]);
                }
            }

            return groups;
        }

        private string Bracketed(FormNode node)
        {
            var text = Write(node);
            var isOneWord = node is CoilForm || (node is SeriesForm series && Grouped(series.Parts).Count == 1);
            return isOneWord ? text : $"({text})";
        }

        private string Reversed(FormNode node) =>
            !hidesSigns && node.Coils.All(coil => coil.Sign < 0) ? "reversed " : "";

        private string Notes(FormNode node)
        {
            var through = node.Through.Where(part => part.IsNamed).ToList();
            if (isClaim)
            {
                return through is [var only, ..] ? $" through {circuit.Parts[only.Parts[0]].Name}" : "";
            }

            var shunts = node.ShuntedBy.Where(part => part.IsNamed).ToList();
            return string.Concat(through.Select(part => $" through {part.Text}"))
                + string.Concat(shunts.Select(part => $" shunted by {part.Text}"))
                + (node.Decibels is { } decibels and < -0.5 ? $" at {Figure(decibels)} dB" : "");
        }
    }
}
