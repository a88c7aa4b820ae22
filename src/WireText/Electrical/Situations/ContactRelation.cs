using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Situations;

/// <summary>Whether two nets are in contact in every state of the controls, in some, or in none.</summary>
public enum ContactRelation
{
    /// <summary>No position of any control joins them.</summary>
    Never,

    Sometimes,

    /// <summary>Every state joins them, by contacts: no solder does.</summary>
    Always,

    /// <summary>They are one net.</summary>
    OneNet,

    /// <summary>Too many controls lie between them to say.</summary>
    Unknown,
}

/// <summary>How two nets are joined by contacts alone, over all states with the plugs at rest.</summary>
/// <param name="Controls">The controls that decide it, in order of declaration; empty when none does.</param>
/// <param name="Apart">Positions that keep them apart, one entry a control as in <see cref="Situation.State"/>; null when nothing does.</param>
public sealed record ContactReport(ContactRelation Relation, ImmutableArray<int> Controls, State? Apart)
{
    /// <summary>States that are looked at before the answer is "unknown": as many as twelve two-way switches have. Chosen.</summary>
    internal const int Limit = 4_096;

    public static ContactReport Between(Network network, int a, int b)
    {
        if (a == b)
        {
            return new ContactReport(ContactRelation.OneNet, [], null);
        }

        if (!network.HasContactAt(a) || !network.HasContactAt(b))
        {
            return new ContactReport(ContactRelation.Never, [], network.Open);
        }

        if (new ContactSearch(network, [], (a, b), Limit).Run(network.Open) is not { } leaves)
        {
            return new ContactReport(ContactRelation.Unknown, [], null);
        }

        var apart = leaves.FirstOrDefault(leaf => !leaf.IsJoined);
        var relation =
            apart is null ? ContactRelation.Always
            : leaves.Exists(leaf => leaf.IsJoined) ? ContactRelation.Sometimes
            : ContactRelation.Never;
        return new ContactReport(relation, Deciding(network, leaves), apart?.State);
    }

    private static ImmutableArray<int> Deciding(Network network, List<ContactLeaf> leaves) =>
        [
            .. Enumerable
                .Range(0, network.Circuit.Controls.Length)
                .Where(control =>
                    !network.Circuit.Controls[control].IsPlug && leaves.Exists(leaf => leaf.State[control] is not null)
                ),
        ];
}
