namespace WireText.Proposing;

/// <summary>The joinings of landing nets that are good in a state, and the pairs that none of them may hold.</summary>
internal sealed class GoodJoinings
{
    private readonly HarnessProblem problem;
    private readonly JoiningJudge judge;
    private readonly HarnessBudget budget;
    private readonly int[] forbidden;
    private readonly int most;

    /// <param name="most">How many joins they may have.</param>
    private GoodJoinings(HarnessProblem problem, JoiningJudge judge, HarnessState state, int most, HarnessBudget budget)
    {
        (this.problem, this.judge, this.budget, this.most, State) = (problem, judge, budget, most, state);
        forbidden = new int[problem.Nets.Length];
        for (var a = 0; a < forbidden.Length; a++)
        {
            for (var b = a + 1; b < forbidden.Length; b++)
            {
                if (judge.IsForbidden(state, a, b))
                {
                    forbidden[a] |= 1 << b;
                    forbidden[b] |= 1 << a;
                }
            }
        }
    }

    public HarnessState State { get; }

    /// <summary>Those with fewest joins first.</summary>
    public List<Joining> All { get; private set; } = [];

    /// <summary>Looks for them, where the state is one whose joinings are listed.</summary>
    public static GoodJoinings Of(
        HarnessProblem problem,
        JoiningJudge judge,
        HarnessState state,
        int most,
        HarnessBudget budget
    )
    {
        var good = new GoodJoinings(problem, judge, state, most, budget);
        if (state.IsListed)
        {
            good.Grow(1, Joining.Apart, 0);
            good.All = [.. good.All.OrderBy(joining => joining.Rank)];
        }

        return good;
    }

    /// <summary>True when no pair that it joins is forbidden.</summary>
    public bool Allows(Joining joining)
    {
        for (var net = 1; net < forbidden.Length; net++)
        {
            if (joining[net] == net || forbidden[net] == 0)
            {
                continue;
            }

            for (var other = 0; other < net; other++)
            {
                if ((forbidden[net] & (1 << other)) != 0 && joining.AreOne(net, other))
                {
                    return false;
                }
            }
        }

        return true;
    }

    /// <summary>True when some good joining holds all of this one; for a state that is not listed, when nothing forbids it.</summary>
    public bool MayGrowFrom(Joining joining) =>
        State.IsListed ? All.Exists(good => good.Holds(joining)) : Allows(joining);

    /// <summary>Each net in turn in a block that is there, or in one of its own.</summary>
    private void Grow(int net, Joining joining, int rank)
    {
        if (net == problem.Nets.Length)
        {
            if (budget.Step(judge) && judge.IsGood(State, joining))
            {
                All.Add(joining);
            }

            return;
        }

        if (budget.IsSpent)
        {
            return;
        }

        var forced = problem.Forced[net];
        if (forced == net)
        {
            Grow(net + 1, joining, rank);
        }

        for (var block = 0; block < net && rank < most; block++)
        {
            if (joining[block] == block && (forced == net || joining[forced] == block) && IsFree(net, block, joining))
            {
                Grow(net + 1, joining.With(net, block), rank + 1);
            }
        }
    }

    private bool IsFree(int net, int block, Joining joining)
    {
        for (var other = 0; other < net; other++)
        {
            if (joining[other] == block && (forbidden[net] & (1 << other)) != 0)
            {
                return false;
            }
        }

        return true;
    }
}
