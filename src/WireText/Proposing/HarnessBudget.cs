namespace WireText.Proposing;

/// <summary>How much a search may look at: counted and never timed, so that every machine stops at the same place.</summary>
internal sealed class HarnessBudget(ProposalRequest request)
{
    /// <summary>Steps of one search at the usual effort. Chosen: some seconds.</summary>
    internal const int MostNodes = 5_000_000;

    /// <summary>Joinings judged in one search at the usual effort. Chosen: some ten seconds.</summary>
    internal const int MostJudged = 300_000;

    private readonly long nodes = Math.Min(request.MostSteps ?? long.MaxValue, (long)MostNodes * request.Effort);
    private readonly long judged = (long)MostJudged * request.Effort;

    public long Nodes { get; private set; }

    public bool IsSpent { get; private set; }

    /// <summary>Counts a step; false when there are no more.</summary>
    public bool Step(JoiningJudge judge)
    {
        Nodes++;
        IsSpent |= Nodes > nodes || judge.Judged > judged;
        return !IsSpent;
    }
}
