namespace WireText.Proposing;

/// <summary>How a proposal is looked for.</summary>
/// <param name="MostJoints">More are not looked for; null for any number.</param>
/// <param name="Effort">How many times the usual work is done before the search gives up; from 1.</param>
public sealed record ProposalRequest(int? MostJoints = null, int Effort = 1)
{
    /// <summary>Steps of a search after which it gives up, where they are fewer than the effort has; null for those of the effort.</summary>
    public long? MostSteps { get; init; }

    /// <summary>The largest effort. Chosen.</summary>
    public const int MostEffort = 100;

    /// <summary>The most joints that can be asked for. Chosen: no switch has so many lugs.</summary>
    public const int MostAsked = 200;
}
