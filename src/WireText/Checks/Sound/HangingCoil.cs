using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds coils that hang on the signal by one end while others sound.</summary>
public sealed class HangingCoil : IJackCheck
{
    /// <summary>From so many controls off rest on, it weighs less.</summary>
    internal const int RarelyMoved = 2;

    internal const string Id = "hanging-coil";

    public CheckDescription Description { get; } =
        new(
            Id: Id,
            Title: "a coil hangs on the signal by one end",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            A coil that is joined to the signal by one end and to nothing by the other sends no string to the jack. It stays
            there as an antenna, and hums; so do coils that are closed into a loop on each other and hang by one lead. Hanging on
            ground, or shorted, they would be quiet.
            """,
            Bad: """
            pickup [|hb|]  humbucker-4
            switch cut spdt
            pot    vol 250k audio
            jack   out mono
            wire   hb.n-start to vol.3 to cut.A2 red
            wire   hb.n-finish to cut.A1 green
            wire   cut.A0 to hb.s-finish white
            wire   hb.s-start to vol.case black
            wire   hb.shield to vol.case bare
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip blue
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup hb  humbucker-4
            switch cut spdt
            pot    vol 250k audio
            jack   out mono
            wire   hb.n-start to vol.3 red
            wire   hb.n-finish to cut.A0 green
            wire   cut.A0 to hb.s-finish white
            wire   cut.A2 to vol.case black
            wire   hb.s-start to vol.case black
            wire   hb.shield to vol.case bare
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip blue
            wire   vol.case to out.sleeve black
            """,
            Mend: """
            Let the switch cut the coil off at its hot end, or short it, so that it hangs on ground alone. Where it is the
            price of a simpler switch, allow it, with the reason.
            """
        )
        {
            Silences =
            [
                new Silence("pickup-shorted", SilenceReach.SamePart),
                new Silence("position-name", SilenceReach.SamePart),
                new Silence("out-of-phase", SilenceReach.SamePart),
                new Silence("hum-partner", SilenceReach.SamePart),
                .. Silence.WhatDialsDo(),
            ],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        if (context.Study.Network is not { } network || context.Study.Outcomes is not { } outcomes)
        {
            return [];
        }

        var hanging =
            from i in Enumerable.Range(0, outcomes.Situations.Length)
            let state = outcomes.Situations[i].State
            where outcomes.AtRest[i] == StructuralOutcome.Sounding
            where !context.Study.Mutes.Any(mute => mute.IsIn(state))
            from one in CoilPlacement.Of(network, state)
            where one.Place == CoilPlace.HangsOnSignal
            select (one.Coil, State: state);
        return hanging
            .GroupBy(one => one.Coil.Part)
            .OrderBy(pickup => pickup.Key)
            .Select(pickup => Report(context, network, [.. pickup]));
    }

    private Finding Report(StudyContext context, Network network, List<(Coil Coil, State State)> hanging)
    {
        var circuit = context.Circuit;
        var (coil, state) = hanging.MinBy(one => Moved(circuit, one.State));
        var lead = SignalEnd(network, coil, state);
        var name = circuit.NameOf(lead);
        var hangs = $"'{coil.Name}' hangs on the signal by '{name}'";
        var allow = $"or write: allow hanging-coil at {circuit.Parts[coil.Part].Name} \"why\"";
        return Description
            .At(
                Moved(circuit, state) >= RarelyMoved ? Severity.Note : Severity.Warning,
                circuit.Parts[coil.Part].NameAt,
                ShortMessage.FirstOf(
                    $"{hangs}{context.AtText(state)}, and hums",
                    $"{hangs}{context.AtText(state)}",
                    $"{hangs} in a position, and hums"
                ),
                $"let the switch lift '{name}' there or short the coil, {allow}",
                [Subject.Part(circuit.Parts[coil.Part].Name), .. context.StatedSubjects(state)]
            )
            .Seeking(Remedy.Any, allow);
    }

    /// <summary>How many controls a situation needs off rest.</summary>
    private static int Moved(Circuit circuit, State state) =>
        state.Stated.Count(at => at.Position != circuit.Controls[at.Control].Rest);

    /// <summary>The end from which the tip is nearer: the one that still reaches it with the coil taken away.</summary>
    private static int SignalEnd(Network network, Coil coil, State state)
    {
        var nodeOf = network.AtTheDials(state);
        var neighbours = network
            .Branches.Where(branch => branch.Element != coil.Index)
            .SelectMany(branch =>
                new[]
                {
                    (From: nodeOf[branch.From], To: nodeOf[branch.To]),
                    (From: nodeOf[branch.To], To: nodeOf[branch.From]),
                }
            )
            .ToLookup(edge => edge.From, edge => edge.To);
        var reached = new HashSet<int> { nodeOf[network.Tip] };
        var open = new Queue<int>(reached);
        while (open.TryDequeue(out var node))
        {
            foreach (var next in neighbours[node].Where(reached.Add))
            {
                open.Enqueue(next);
            }
        }

        return reached.Contains(nodeOf[network.Circuit.Nets.OneNet[coil.Start]]) ? coil.Start : coil.Finish;
    }
}
