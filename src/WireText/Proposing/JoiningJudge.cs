using WireText.Checks.Sound;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Proposing;

/// <summary>
/// Says of a joining of landing nets whether a state is as it must be: by the same judge that proves claims for <c>check</c>. Each
/// joining is judged once in each state.
/// </summary>
/// <param name="study">Of the problem's circuit: what it solved is not solved again.</param>
internal sealed class JoiningJudge(HarnessProblem problem, Study study)
{
    /// <summary>Circuits with their nets joined that are kept at a time. Chosen: a few megabytes.</summary>
    private const int MostKept = 4_096;

    private readonly Network bare = Network.Of(problem.Bare)!;
    private readonly Dictionary<(int State, Joining Joining), bool> known = [];
    private readonly Dictionary<Joining, Study> studies = [];
    private readonly Dictionary<State, int[]> apart = new(ReferenceEqualityComparer.Instance);

    /// <summary>For each landing net, its number in the bare circuit.</summary>
    private readonly int[] landing =
    [
        .. Enumerable
            .Range(0, problem.Nets.Length)
            .Select(net => problem.Bare.Nets.OneNet[problem.Representative(net)]),
    ];
    private readonly Dictionary<(int State, Joining Joining), HarnessWorth> worths = [];
    private readonly Dictionary<int, bool> waived = [];
    private readonly HashSet<int>? mayHang = HangingAllowed(problem.Circuit);

    /// <summary>Joinings that were judged, each in a state.</summary>
    public int Judged => known.Count;

    public bool IsGood(HarnessState state, Joining joining)
    {
        if (!known.TryGetValue((state.Index, joining), out var isGood))
        {
            known.Add((state.Index, joining), isGood = Judge(state, joining));
        }

        return isGood;
    }

    /// <summary>True where two nets may never be one: tip and sleeve would be, where something must be heard, or a claimed coil shorted.</summary>
    public bool IsForbidden(HarnessState state, int a, int b) =>
        state.Claims.Any(claim => !MayBe(claim, Joining.Apart.With(a, b), isFinal: false))
        || (!state.IsMeantSilent && !IsWaived(state) && IsShort(state.State, Joining.Apart.With(a, b)));

    /// <summary>What a state with nets joined adds to the worth of a harness, dials at rest.</summary>
    public HarnessWorth Worth(HarnessState state, Joining joining)
    {
        if (!worths.TryGetValue((state.Index, joining), out var worth))
        {
            var there = StudyOf(joining).Analyse(state.State);
            worth = new HarnessWorth(
                there.Coils.Count(coil => coil.Place == CoilPlace.Free),
                there.Outcome == Outcome.Sound ? there.Sound.Heard.Count(heard => IsReversed(there.Sound, heard)) : 0
            );
            worths.Add((state.Index, joining), worth);
        }

        return worth;
    }

    /// <summary>True when the string of a coil comes to the tip turned round: its usual end hangs on the sleeve.</summary>
    private static bool IsReversed(JackSound sound, HeardCoil heard) =>
        sound.Gains!.BandGains(heard.Place).Sum(gain => gain.Real) < 0;

    private bool Judge(HarnessState state, Joining joining)
    {
        foreach (var claim in state.Claims)
        {
            if (!MayBe(claim, joining, isFinal: true))
            {
                return false;
            }
        }

        if (!state.IsMeantSilent && IsShort(state.State, joining) && !IsWaived(state))
        {
            return false;
        }

        var there = StudyOf(joining);
        return state.Claims.All(claim => there.JudgeOf(claim).Holds(claim, mayNameTraces: true))
            && IsSound(state, there);
    }

    /// <summary>Something is heard, where nothing says otherwise, and no coil hangs on the signal by one end.</summary>
    private bool IsSound(HarnessState state, Study there)
    {
        if (there.Sounds.Of(state.State).Outcome != Outcome.Sound)
        {
            return state.IsMeantSilent || IsWaived(state);
        }

        return state.Moved >= HangingCoil.RarelyMoved
            || mayHang is null
            || CoilPlacement
                .Of(there.Network, state.State)
                .All(one => one.Place != CoilPlace.HangsOnSignal || mayHang.Contains(one.Coil.Part));
    }

    /// <summary>True where nothing can be heard whatever is wired: tip and sleeve are one, or nothing can come to the tip.</summary>
    private bool IsWaived(HarnessState state)
    {
        if (!waived.TryGetValue(state.Index, out var isWaived))
        {
            var all = Joining.Apart;
            for (var net = 2; net < problem.Nets.Length; net++)
            {
                all = all.With(1, net);
            }

            isWaived =
                problem.Circuit.Allowances.Any(one => one.Check == "dead-position")
                || IsShort(state.State, Joining.Apart)
                || StructuralOutcomes.Of(StudyOf(all).Network, state.State) == StructuralOutcome.Open;
            waived.Add(state.Index, isWaived);
        }

        return isWaived;
    }

    /// <summary>False where the structure alone refutes a line: tip and sleeve are one, or a coil that it names is not live.</summary>
    /// <param name="isFinal">False for what holds whatever else is joined.</param>
    private bool MayBe(Expectation claim, Joining joining, bool isFinal)
    {
        if (claim.Jack is { } jack && jack != problem.Circuit.Outputs[0].Part)
        {
            return true;
        }

        foreach (var coils in claim.Claims.OfType<CoilsClaim>())
        {
            var nodeOf = Nodes(claim.State, joining);
            if (nodeOf[bare.Tip] == nodeOf[bare.Sleeve])
            {
                return false;
            }

            var named = coils.Coils.All();
            if (!isFinal)
            {
                return named.All(coil => AreApart(coil, nodeOf));
            }

            var isLive = LivePart.Find(
                bare,
                bare.Branches.AsSpan(),
                nodeOf,
                bare.DialsOf(claim.State),
                [],
                (bare.Tip, bare.Sleeve)
            );
            return named.All(coil => bare.Branches.Any(branch => branch.Element == coil && isLive[branch.Index]));
        }

        return true;
    }

    private bool AreApart(int coil, int[] nodeOf) =>
        bare.Branches.Any(branch => branch.Element == coil && nodeOf[branch.From] != nodeOf[branch.To]);

    private bool IsShort(State state, Joining joining)
    {
        var nodeOf = Nodes(state, joining);
        return nodeOf[bare.Tip] == nodeOf[bare.Sleeve];
    }

    private int[] Nodes(State state, Joining joining)
    {
        var nodeOf = (int[])NodesApart(state).Clone();
        for (var net = 1; net < problem.Nets.Length; net++)
        {
            if (joining[net] == net)
            {
                continue;
            }

            var (one, other) = (nodeOf[landing[net]], nodeOf[landing[joining[net]]]);
            if (one != other)
            {
                nodeOf.AsSpan().Replace(Math.Max(one, other), Math.Min(one, other));
            }
        }

        return nodeOf;
    }

    /// <summary>What contacts and dials alone make one.</summary>
    private int[] NodesApart(State state)
    {
        if (!apart.TryGetValue(state, out var nodeOf))
        {
            apart.Add(state, nodeOf = bare.AtTheDials(state));
        }

        return nodeOf;
    }

    private Study StudyOf(Joining joining)
    {
        if (!studies.TryGetValue(joining, out var there))
        {
            if (studies.Count >= MostKept)
            {
                studies.Clear();
            }

            studies.Add(joining, there = study.Rewired(problem.Joined(joining)));
        }

        return there;
    }

    /// <summary>The pickups of which a coil may hang, because the text allows it; null where any may.</summary>
    private static HashSet<int>? HangingAllowed(Circuit circuit)
    {
        var allowed = circuit.Allowances.Where(one => one.Check == HangingCoil.Id).ToList();
        return allowed.Exists(one => one.Lug is null)
            ? null
            :
            [
                .. allowed
                    .Select(one => circuit.FindPart(one.Lug!)?.Index ?? circuit.FindLug(one.Lug!)?.Part)
                    .OfType<int>(),
            ];
    }
}
