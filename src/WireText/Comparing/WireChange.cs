using System.Collections.Immutable;
using WireText.Circuits;

namespace WireText.Comparing;

public enum WireChangeKind
{
    Lifted,
    Added,

    /// <summary>One end is elsewhere, the other and the colour are as they were.</summary>
    Moved,

    /// <summary>It leads where it led, in another colour, gauge or length.</summary>
    Exchanged,
}

/// <summary>A stretch of wire that is not as it was.</summary>
/// <param name="Before">In the earlier circuit; null for one that is added.</param>
/// <param name="After">In the later circuit; null for one that is lifted.</param>
public sealed record WireChange(WireChangeKind Kind, Wire? Before, Wire? After);

/// <summary>Finds which stretches of wire stay, and which are lifted, added, moved or exchanged.</summary>
internal static class WireChanges
{
    /// <summary>In the order of the earlier circuit, then what is added in the order of the later.</summary>
    public static ImmutableArray<WireChange> Of(Circuit before, Circuit after, PartMatching parts)
    {
        var added = after.Wires.ToList();
        var lifted = before
            .Wires.Where(wire => !Take(wire, (ends, other) => SameEnds(ends, other) && Look(wire) == Look(other)))
            .ToList();
        var changes = new List<WireChange>();
        Pair(WireChangeKind.Exchanged, (_, ends, other) => SameEnds(ends, other));
        Pair(WireChangeKind.Moved, (wire, ends, other) => SharesAnEnd(ends, other) && Look(wire) == Look(other));
        return
        [
            .. changes
                .Concat(lifted.Select(wire => new WireChange(WireChangeKind.Lifted, wire, null)))
                .OrderBy(change => change.Before!.Index),
            .. added.Select(wire => new WireChange(WireChangeKind.Added, null, wire)),
        ];

        bool Take(Wire wire, Func<(int?, int?), Wire, bool> isSame)
        {
            var ends = (parts.AfterOf(wire.From), parts.AfterOf(wire.To));
            var at = added.FindIndex(other => other.Kind == wire.Kind && isSame(ends, other));
            if (at < 0)
            {
                return false;
            }

            added.RemoveAt(at);
            return true;
        }

        void Pair(WireChangeKind kind, Func<Wire, (int?, int?), Wire, bool> isSame)
        {
            foreach (var wire in lifted.ToList())
            {
                var ends = (parts.AfterOf(wire.From), parts.AfterOf(wire.To));
                if (added.Find(other => other.Kind == wire.Kind && isSame(wire, ends, other)) is { } after)
                {
                    changes.Add(new WireChange(kind, wire, after));
                    added.Remove(after);
                    lifted.Remove(wire);
                }
            }
        }
    }

    /// <summary>What a wire is, wherever it leads.</summary>
    public static string Look(Wire wire) =>
        FormattableString.Invariant($"{wire.Colour?.Name} {wire.IsSleeved} {wire.LengthMetres} {wire.Gauge}");

    private static bool SameEnds((int? From, int? To) ends, Wire other) =>
        (ends.From == other.From && ends.To == other.To) || (ends.From == other.To && ends.To == other.From);

    private static bool SharesAnEnd((int? From, int? To) ends, Wire other) =>
        ends.From == other.From || ends.To == other.To || ends.From == other.To || ends.To == other.From;
}
