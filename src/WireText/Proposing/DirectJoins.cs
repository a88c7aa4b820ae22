namespace WireText.Proposing;

/// <summary>Lists the ways to join free leads and lugs for good: to each other, or to one net that is wired already.</summary>
internal static class DirectJoins
{
    /// <summary>
    /// Only those that some good joining holds in each state: what is joined for good is joined everywhere. Found by growing, for what
    /// no state allows no larger one does.
    /// </summary>
    public static List<Joining> Of(
        HarnessProblem problem,
        IReadOnlyList<GoodJoinings> states,
        JoiningJudge judge,
        HarnessBudget budget
    )
    {
        var found = new List<Joining>();
        var seen = new HashSet<Joining> { problem.Forced };
        var open = new Queue<Joining>(seen);
        while (open.TryDequeue(out var joining) && budget.Step(judge))
        {
            if (!states.All(state => state.MayGrowFrom(joining)))
            {
                continue;
            }

            found.Add(joining);
            for (var lead = 1; lead < problem.Nets.Length; lead++)
            {
                for (var net = 0; problem.Nets[lead].IsFree && net < problem.Nets.Length; net++)
                {
                    var joined = joining.With(lead, net);
                    if (joined != joining && IsOnOneNet(problem, joined) && seen.Add(joined))
                    {
                        open.Enqueue(joined);
                    }
                }
            }
        }

        return found;
    }

    /// <summary>True when no two nets that are wired already are joined: that is the author's affair.</summary>
    private static bool IsOnOneNet(HarnessProblem problem, Joining joining)
    {
        for (var net = 0; net < problem.Nets.Length; net++)
        {
            for (var other = 0; other < net; other++)
            {
                if (joining.AreOne(net, other) && !problem.Nets[net].IsFree && !problem.Nets[other].IsFree)
                {
                    return false;
                }
            }
        }

        return true;
    }
}
