using WireText.Checks.Connections;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Grounding;

/// <summary>Finds grounds that come to the sleeve by the braid of a cable and by nothing else.</summary>
public sealed class BraidOnlyReturn : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "braid-only-return",
            Title: "a braid is the only way back to the sleeve",
            Severity: Severity.Note,
            Group: FindingGroup.Grounding,
            Why: """
            A braid is thin strands that were bent, twisted and heated at its end: it is the first to break, and with it the
            ground of all that stands behind it. Where it is a pickup's own screen that pickup alone is lost, and nothing
            else can be done; anywhere else a wire beside it costs nothing. A screened lead to the jack wired so is ordinary
            work, and it is right as long as it holds.
            """,
            Bad: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            cable  vol.2 to out.tip white  [|braid vol.case to out.sleeve|]
            """,
            Good: """
            pickup neck single-coil
            pot    vol  250k audio
            jack   out  mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            cable  vol.2 to out.tip white  braid vol.case to out.sleeve
            """,
            Mend: "Run a wire beside the braid, from one of its ends to the other."
        );

    public IEnumerable<Finding> Find(StudyContext context)
    {
        var circuit = context.Circuit;
        var braids = circuit.Wires.Where(wire => wire is { Kind: WireKind.Braid, From: >= 0, To: >= 0 }).ToList();
        if (context.Study.Network is not { } network || braids.Count == 0)
        {
            yield break;
        }

        var pieces = WithoutBraids(circuit);
        var sleeve = pieces.Find(circuit.Outputs[0].Sleeve);
        var behind = circuit
            .Nets.Members[network.Sleeve]
            .GroupBy(pieces.Find)
            .Where(piece => piece.Key != sleeve && !IsOwnScreen(circuit, [.. piece]));
        foreach (var piece in behind)
        {
            var braid = braids.First(wire => pieces.Find(wire.From) == piece.Key || pieces.Find(wire.To) == piece.Key);
            yield return Report(context, braid, isFromBehind: pieces.Find(braid.From) == piece.Key);
        }
    }

    /// <summary>What is joined when the braids are taken off.</summary>
    private static DisjointSets WithoutBraids(Circuit circuit)
    {
        var pieces = new DisjointSets(circuit.Lugs.Length);
        foreach (var join in circuit.Joins)
        {
            if (join.Wire < 0 || circuit.Wires[join.Wire].Kind != WireKind.Braid)
            {
                pieces.Unite(join.From, join.To);
            }
        }

        return pieces;
    }

    /// <summary>True for leads of one part, spliced or not: the braid is what that part came with.</summary>
    private static bool IsOwnScreen(Circuit circuit, List<int> lugs)
    {
        var own = lugs.Select(lug => circuit.Lugs[lug])
            .Where(lug => !JointRules.IsSplice(circuit.PartOf(lug)))
            .ToList();
        return own.TrueForAll(lug => lug.IsLead && lug.Part == own[0].Part);
    }

    private Finding Report(StudyContext context, Wire braid, bool isFromBehind)
    {
        var circuit = context.Circuit;
        var behind = circuit.NameOf(isFromBehind ? braid.From : braid.To);
        return Description.At(
            braid.DeclaredAt,
            $"'{behind}' comes to the sleeve by this braid alone",
            "run a wire beside it: "
                + WireLines.Line(circuit.NameOf(braid.From), circuit.NameOf(braid.To), WireLines.GroundColour),
            context.Subject(braid.From),
            context.Subject(braid.To)
        );
    }
}
