using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Forms;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds positions that are named series, parallel or cut and are something else.</summary>
public sealed class JoinName : IJackCheck
{
    /// <summary>Words for fewer coils than in another position of the control. Common practice.</summary>
    private static readonly ImmutableArray<string> CutWords = ["cut", "split", "tap", "tapped", "coil-cut"];

    /// <summary>Words for a coil against the others, of two that are heard in phase elsewhere. Common practice.</summary>
    private static readonly ImmutableArray<string> TurnedWords =
    [
        "turned",
        "reversed",
        "reverse",
        "out-of-phase",
        "antiphase",
    ];

    public CheckDescription Description { get; } =
        new(
            Id: "join-name",
            Title: "a position is named after another connection",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            A position named series puts two coils or pickups in series that another position of the same control does not, one
            named parallel puts them in parallel, one named cut or split leaves a coil out that another position has, and one
            named turned or reversed turns a coil round against another. Where the wires do otherwise, a lug is mistaken or
            the names are in the wrong order.
            """,
            Bad: """
            pickup neck   humbucker-4
            switch coils  dpdt
            pot    vol    250k audio
            jack   out    mono
            positions [|coils|] parallel series
            wire   neck.n-start to coils.B2 white
            wire   coils.B2 to vol.3 white
            wire   neck.n-finish to coils.A0 green
            wire   neck.s-finish to coils.B0 red
            wire   coils.A1 to coils.B1 red
            wire   coils.A2 to vol.case black
            wire   neck.s-start to vol.case black
            wire   neck.shield to vol.case bare
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck   humbucker-4
            switch coils  dpdt
            pot    vol    250k audio
            jack   out    mono
            positions coils series parallel
            wire   neck.n-start to coils.B2 white
            wire   coils.B2 to vol.3 white
            wire   neck.n-finish to coils.A0 green
            wire   neck.s-finish to coils.B0 red
            wire   coils.A1 to coils.B1 red
            wire   coils.A2 to vol.case black
            wire   neck.s-start to vol.case black
            wire   neck.shield to vol.case bare
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Follow the wires of the control, or put its names in the order of what is heard."
        )
        {
            Silences = [.. Silence.WhatDialsDo()],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        foreach (var control in context.Circuit.Controls.Where(control => !control.IsPlug))
        {
            var meant = control.Positions.Select(position => MeaningOf(position.Name)).ToList();
            if (
                meant.Exists(meaning => meaning is not null)
                && BaseStates(context.Circuit, control)
                    .Select(state => FirstWrong(context, control, state, meant))
                    .FirstOrDefault(finding => finding is not null)
                    is { } finding
            )
            {
                yield return finding;
            }
            else if (TurnsNothing(context, control) is { } unturned)
            {
                yield return unturned;
            }
        }
    }

    /// <summary>The finding of a position that is named turned and turns no coil, whatever another control is set to; null for none.</summary>
    private Finding? TurnsNothing(StudyContext context, Control control)
    {
        var states = BaseStates(context.Circuit, control).ToList();
        foreach (
            var position in Enumerable
                .Range(0, control.Positions.Length)
                .Where(position => TurnedWords.Any(word => Naming.Alike(control.Positions[position].Name, word)))
        )
        {
            var turns = states.ConvertAll(state => TurnedCoils.At(context.Study, control, position, state));
            if (turns.Contains(Turning.Nothing) && !turns.Contains(Turning.Coils))
            {
                var state = states[turns.IndexOf(Turning.Nothing)].At(control.Index, position);
                return Report(context, control, position, "nothing is turned round", state, names: null)
                    .Seeking(Remedy.Any);
            }
        }

        return null;
    }

    /// <summary>What a position's name says of the coils; null when it says nothing of it. A name with other words too means more.</summary>
    private static PairJoin? MeaningOf(string name) =>
        Naming.Alike(name, "series") ? PairJoin.Series
        : Naming.Alike(name, "parallel") ? PairJoin.Parallel
        : CutWords.Any(word => Naming.Alike(name, word)) ? PairJoin.None
        : null;

    /// <summary>At rest, and with each other control alone in each of its positions: what is switched may be heard in some only.</summary>
    private static IEnumerable<State> BaseStates(Circuit circuit, Control own)
    {
        var rest = State.Rest(circuit);
        return circuit
            .Controls.Where(control => control != own && !control.IsPlug)
            .SelectMany(control =>
                Enumerable
                    .Range(0, control.Positions.Length)
                    .Where(position => position != control.Rest)
                    .Select(position => rest.At(control.Index, position))
            )
            .Prepend(rest);
    }

    /// <summary>The first position that is not what it is called, where the control changes how coils are joined; else null.</summary>
    private Finding? FirstWrong(StudyContext context, Control control, State state, List<PairJoin?> meant)
    {
        ImmutableArray<HeardForm> forms =
        [
            .. Enumerable
                .Range(0, control.Positions.Length)
                .Select(position => context.Study.Analyse(state.At(control.Index, position)).Form),
        ];
        if (forms.Any(form => form.Kind == FormKind.Nothing))
        {
            return null;
        }

        var pairs = forms.Select(CoilPairs.Of).ToList();
        var changed = pairs
            .SelectMany(one => one.Joined)
            .Distinct()
            .Where(pair => pairs.Exists(one => one[pair] != pairs[0][pair]))
            .ToList();
        var wrong = changed.Count == 0 ? -1 : Enumerable.Range(0, forms.Length).FirstOrDefault(at => !Fits(at, at), -1);
        return wrong < 0
            ? null
            : Report(context, control, wrong, Missing(meant[wrong]), state.At(control.Index, wrong), Exchanged());

        // Whether a position is what a name says.
        bool Fits(int position, int name) =>
            meant[name] is not { } join || changed.Exists(pair => pairs[position][pair] == join);

        // The names with two of them exchanged, so that each fits; null where no exchange does it.
        IEnumerable<string>? Exchanged()
        {
            var places = Enumerable.Range(0, forms.Length).ToImmutableArray();
            var orders =
                from one in places
                from other in places
                where one < other
                let order = places.SetItem(one, other).SetItem(other, one)
                where places.All(at => Fits(at, order[at]))
                select order.Select(name => control.Positions[name].Name);
            return orders.FirstOrDefault();
        }
    }

    private static string Missing(PairJoin? meant) =>
        meant switch
        {
            PairJoin.Series => "nothing is put in series",
            PairJoin.Parallel => "nothing is put in parallel",
            _ => "no coil is left out",
        };

    private Finding Report(
        StudyContext context,
        Control control,
        int position,
        string missing,
        State state,
        IEnumerable<string>? names
    )
    {
        var heard = FormText.ForPeople(context.Circuit, context.Study.Analyse(state).Form);
        var missed = $"at {context.PositionName(control.Index, position)} {missing}";
        return Description
            .At(
                control.NamedAt ?? context.PlaceOf(control),
                ShortMessage.FirstOf($"{missed}: {heard} is heard", missed),
                names is null
                    ? "follow the wires of that position, or name it after what is heard"
                    : $"exchange the throws, or name them in the order of what is heard: positions {control.Name} {string.Join(' ', names)}",
                [
                    Subject.Position(control.Name, control.Positions[position].Name),
                    .. control
                        .Positions[position]
                        .Closed.SelectMany(group => group)
                        .Where(context.IsJointed)
                        .Distinct()
                        .Select(context.Subject),
                ]
            )
            .Seeking(Remedy.Part);
    }
}
