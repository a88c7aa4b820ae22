using System.Collections.Immutable;

namespace WireText.Measuring;

/// <summary>The picture's wires held against the circuit's.</summary>
/// <param name="Drawn">Ids of the wires and braids that the picture shows with a path, each once, in ordinal order.</param>
/// <param name="Missing">Asked for, or named in the picture, but without a path.</param>
/// <param name="Extra">Shown but not asked for, or shown again.</param>
/// <param name="Rerouted">Shown between other lugs than the circuit says.</param>
internal sealed record WireRoll(
    ImmutableArray<string> Drawn,
    ImmutableArray<string> Missing,
    ImmutableArray<string> Extra,
    ImmutableArray<string> Rerouted
)
{
    public static WireRoll Call(DrawnPicture picture, IReadOnlyList<ExpectedWire>? source)
    {
        var shown = picture
            .Wires.Select(wire => (wire.Id, wire.From, wire.To, HasPath: wire.Path is not null))
            .Concat(picture.Braids.Select(braid => (braid.Id, braid.From, braid.To, HasPath: HasPath(braid))))
            .OrderBy(wire => wire.Id, StringComparer.Ordinal)
            .ToList();
        var drawn = shown.Where(wire => wire.HasPath).Select(wire => wire.Id).Distinct(StringComparer.Ordinal).ToList();
        var again = shown.GroupBy(wire => wire.Id, StringComparer.Ordinal).Where(group => group.Count() > 1);
        var asked = (source ?? []).Select(wire => wire.Id).Order(StringComparer.Ordinal).ToList();
        var missing = source is null
            ? shown.Where(wire => !wire.HasPath).Select(wire => wire.Id)
            : asked.Except(drawn, StringComparer.Ordinal);
        var extra = source is null ? [] : drawn.Except(asked, StringComparer.Ordinal);

        var expected = new Dictionary<string, ExpectedWire>(StringComparer.Ordinal);
        foreach (var wire in source ?? [])
        {
            expected[wire.Id] = wire;
        }

        var rerouted =
            from wire in shown
            where expected.TryGetValue(wire.Id, out var want) && !IsBetween(wire.From, wire.To, want)
            select wire.Id;
        return new WireRoll(
            [.. drawn],
            [.. missing.Distinct(StringComparer.Ordinal)],
            [.. extra.Concat(again.Select(group => group.Key)).Order(StringComparer.Ordinal)],
            [.. rerouted.Distinct(StringComparer.Ordinal)]
        );
    }

    private static bool HasPath(DrawnBraid braid) => braid.Sheaths.Length + braid.Tails.Length > 0;

    private static bool IsBetween(string from, string to, ExpectedWire want)
    {
        var (first, second) = (want.From ?? "", want.To ?? "");
        return (from == first && to == second) || (from == second && to == first);
    }
}
