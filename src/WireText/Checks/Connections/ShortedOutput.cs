using System.Collections.Immutable;
using System.Globalization;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds what shorts the output: always, or in positions that were meant to sound.</summary>
public sealed class ShortedOutput : IJackCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "shorted-output",
            Title: "the output is shorted",
            Severity: Severity.Error,
            Group: FindingGroup.Connections,
            Why: """
            Where tip and sleeve are joined nothing is heard. A control that does only that is a mute, and right; so is a
            position with a name that says so. Any other position that shorts the signal while the rest of the instrument
            sounds has a wire on the wrong throw.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    lever-3way
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 white
            wire   sel.A0 to vol.3 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            wire   [|sel.A3 to out.sleeve|] black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    lever-3way
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 to sel.A2 white
            wire   bridge.hot to sel.B3 to sel.B2 white
            wire   sel.A0 to sel.B0 to vol.3 white
            wire   vol.2 to out.tip white
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.case to out.sleeve black
            """,
            Mend: """
            Take the wire out, or move it to the throw it was meant for. Where silence is meant, give the position the name
            off, mute, standby, silent or kill.
            """
        )
        {
            YieldsToErrorsAlone = true,
            Silences =
            [
                new Silence("crowded-lug", SilenceReach.SamePart),
                new Silence("unconnected-lug", SilenceReach.SamePart),
                new Silence("part-shorted", SilenceReach.SamePart),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network)
        {
            return [];
        }

        return network.Tip == network.Sleeve ? [Always(context)] : InPositions(context, network);
    }

    /// <summary>One finding for each wire to blame, with all positions that it shorts: as few wires as explain them all.</summary>
    private IEnumerable<Finding> InPositions(StudyContext context, Network network)
    {
        var left = SilentPositions
            .Shorted(context)
            .Select(shorted => (Shorted: shorted, Blamed: BlameAt(context, network, shorted)))
            .ToList();
        while (left.Count > 0)
        {
            var cause = left.SelectMany(one => one.Blamed)
                .DistinctBy(KeyOf)
                .OrderByDescending(blamed => left.Count(one => Explains(blamed, one.Blamed)))
                .First();
            yield return InPositions(
                context,
                network,
                cause,
                [.. left.Where(one => Explains(cause, one.Blamed)).Select(one => one.Shorted)]
            );
            left.RemoveAll(one => Explains(cause, one.Blamed));
        }
    }

    private static bool Explains(ImmutableArray<Wire> cause, ImmutableArray<ImmutableArray<Wire>> blamed) =>
        blamed.Any(wires => KeyOf(wires) == KeyOf(cause));

    private static string KeyOf(ImmutableArray<Wire> wires) => string.Join(' ', wires.Select(wire => wire.Index));

    private Finding Always(StudyContext context)
    {
        var output = context.Circuit.Outputs[0];
        var blamed = JoinBlame.Between(context, output.Tip, output.Sleeve, state: null);
        return Report(
            context,
            blamed,
            [],
            $"tip and sleeve of '{context.Circuit.Parts[output.Part].Name}' are joined in every position",
            otherwise: null
        );
    }

    private static ImmutableArray<ImmutableArray<Wire>> BlameAt(
        StudyContext context,
        Network network,
        SilentPositions shorted
    )
    {
        var output = context.Circuit.Outputs[0];
        return JoinBlame.Likeliest(context, output.Tip, output.Sleeve, shorted.State);
    }

    private Finding InPositions(
        StudyContext context,
        Network network,
        ImmutableArray<Wire> blamed,
        ImmutableArray<SilentPositions> shorted
    )
    {
        var nodeOf = network.InContact(shorted[0].State);
        var what =
            nodeOf[network.Tip] == nodeOf[network.Sleeve]
                ? "tip and sleeve are joined"
                : "the signal goes to ground before the volume";
        var where = shorted
            .Select(one => string.Join(" ", one.Positions.Select(at => context.PositionName(at.Control, at.Position))))
            .ToList();
        return Report(
            context,
            blamed,
            [.. shorted.SelectMany(one => one.Positions).Distinct()],
            ShortMessage.FirstOf(
                $"{what} at {string.Join(" and at ", where)}",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{what} at {where[0]} and in {where.Count - 1} more positions"
                )
            ),
            otherwise: shorted.Length == 1 ? "name that position 'off' if silence is meant" : null
        );
    }

    private Finding Report(
        StudyContext context,
        ImmutableArray<Wire> blamed,
        ImmutableArray<(int Control, int Position)> positions,
        string message,
        string? otherwise
    )
    {
        var circuit = context.Circuit;
        var place =
            blamed is [var first, ..] ? first.DeclaredAt
            : positions is [var at, ..] ? context.PlaceOf(circuit.Controls[at.Control])
            : circuit.Parts[circuit.Outputs[0].Part].NameAt;
        var takeOut =
            blamed.IsEmpty ? null
            : !Advice.KeepsTheSound(context, [.. blamed.Select(wire => new RemoveWire(wire.Index))])
                ? $"move one end of: {string.Join("; ", blamed.Select(wire => WireLines.Line(circuit, wire)))}"
            : $"take out: {string.Join("; ", blamed.Select(wire => WireLines.Line(circuit, wire)))}";
        var help = takeOut is not null && otherwise is not null ? $"{takeOut}; or {otherwise}" : takeOut ?? otherwise;
        return Description.At(
            place,
            message,
            help,
            [
                .. blamed
                    .SelectMany(wire => new[] { wire.From, wire.To })
                    .Where(lug => lug >= 0)
                    .Select(context.Subject),
                .. positions.Select(at =>
                    Subject.Position(
                        circuit.Controls[at.Control].Name,
                        circuit.Controls[at.Control].Positions[at.Position].Name
                    )
                ),
            ]
        );
    }
}
