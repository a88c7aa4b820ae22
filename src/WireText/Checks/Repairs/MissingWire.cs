using WireText.Checks.Connections;
using WireText.Checks.Grounding;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Checks.Repairs;

/// <summary>
/// Names the wire that an unconnected lug lacks, where nothing else is found: the one after which nothing is found at all, and
/// all others with which that is so do the same.
/// </summary>
public static class MissingWire
{
    /// <summary>Nets that are tried: each is a check of the whole circuit. Chosen: twice what the largest example has.</summary>
    internal const int MostTried = 80;

    /// <summary>The report with the wire told in the finding; the report itself where none or several would do.</summary>
    /// <param name="study">Of the circuit or a twin of it.</param>
    public static CheckReport AddTo(
        CheckReport report,
        Circuit circuit,
        Study study,
        CheckRequest request,
        CancellationToken cancellation = default
    )
    {
        var mistakes = report.Findings.Where(finding => finding.Severity >= Severity.Warning).Take(2).ToList();
        if (
            mistakes is not [{ Id: UnconnectedLug.Id, Otherwise: { } otherwise, Subjects: [var loose, ..] } found]
            || circuit.FindLug(loose.Name) is not { } lug
            || Find(circuit, study, request, lug.Index, cancellation) is not { } wire
        )
        {
            return report;
        }

        var (to, isGround) = (wire.To, circuit.Nets.SameNet(wire.To, circuit.Outputs[0].Sleeve));
        var colour = isGround ? WireLines.GroundColour : WireLines.SignalColour;
        var line = WireLines.Line(circuit.NameOf(lug.Index), circuit.NameOf(to), colour);
        return report with
        {
            Findings =
            [
                .. report.Findings.Select(finding =>
                    finding == found ? found with { Help = $"solder it: {line}, {otherwise}" } : finding
                ),
            ],
        };
    }

    private static AddWire? Find(
        Circuit circuit,
        Study study,
        CheckRequest request,
        int lug,
        CancellationToken cancellation
    )
    {
        var context = CheckContext.Of(circuit, study, cancellation);
        var others = Enumerable
            .Range(0, circuit.Nets.Count)
            .Where(net => net != circuit.Nets.OneNet[lug])
            .Select(net => LugOn(context, net, lug))
            .Where(other => other >= 0)
            .ToList();
        if (others.Count > MostTried)
        {
            return null;
        }

        (AddWire Wire, Circuit Circuit)? only = null;
        foreach (var other in others)
        {
            cancellation.ThrowIfCancellationRequested();
            var edit = new AddWire(lug, other);
            var edited = edit.Apply(circuit);
            if (!LeadRules.Allow(edited, edit.LugsIn(circuit).AsSpan()) || !IsRight(edited))
            {
                continue;
            }

            if (only is { } first && !Behaviour.IsEqual(first.Circuit, edited))
            {
                return null;
            }

            only ??= (edit, edited);
        }

        return only?.Wire;

        bool IsRight(Circuit edited)
        {
            var rewired = study.Rewired(edited);
            return Advice.KeepsTheSound(study, rewired)
                && Checker
                    .Examine(edited, rewired, request, cancellation)
                    .Findings.All(finding => finding.Severity < Severity.Warning);
        }
    }

    /// <summary>A lug of a net that a wire can be soldered to; -1 when there is none. Of ground the nearest metal.</summary>
    private static int LugOn(CheckContext context, int net, int lug)
    {
        var circuit = context.Circuit;
        return
            net == circuit.Nets.OneNet[circuit.Outputs[0].Sleeve]
            && circuit.FindLug(GroundPlaces.Nearest(context, lug)) is { } metal
            ? metal.Index
            : circuit
                .Nets.Members[net]
                .FirstOrDefault(other => !circuit.Lugs[other].IsLead && !circuit.Lugs[other].IsInner, -1);
    }
}
