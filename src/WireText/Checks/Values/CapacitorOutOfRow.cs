using System.Collections.Immutable;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Values;

/// <summary>Finds a capacitor that hangs otherwise than the others of the switch that chooses between them.</summary>
public sealed class CapacitorOutOfRow : IStudyCheck
{
    /// <summary>
    /// Fewer capacitors in another order than that of their values are no sign of a slip: of three in any order two exchanged
    /// are always enough. Chosen.
    /// </summary>
    private const int LeastInOrder = 4;

    public CheckDescription Description { get; } =
        new(
            Id: "capacitor-out-of-row",
            Title: "a capacitor of a switch hangs otherwise than the others",
            Severity: Severity.Warning,
            Group: FindingGroup.Values,
            Why: """
            A switch that chooses between capacitors has one a throw, their other leads all on one net, and their values go up
            or down as it is turned. One that ends elsewhere, two on one throw beside an empty one, one on the common, and two
            out of their order tell of a lead on the lug beside.
            """,
            Bad: """
            pickup neck   single-coil
            pot    vol    250k audio
            switch voice  spdt-on-off-on
            cap    warm   4.7n from voice.A1 to vol.case
            cap    [|dark|]   22n  from voice.A2 to vol.2
            jack   out    mono
            wire   neck.hot to vol.3 to voice.A0 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pot    vol    250k audio
            switch voice  spdt-on-off-on
            cap    warm   4.7n from voice.A1 to vol.case
            cap    dark   22n  from voice.A2 to vol.case
            jack   out    mono
            wire   neck.hot to vol.3 to voice.A0 white
            wire   neck.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Hang it where the others say that it belongs. A choice that is meant so is allowed, with the reason."
        );

    public IEnumerable<Finding> Find(StudyContext context) =>
        from row in CapacitorRow.Of(context.Circuit)
        let finding = EndsElsewhere(context, row)
            ?? SharesAThrow(context, row)
            ?? LiesOnTheCommon(context, row)
            ?? OutOfOrder(context, row)
        where finding is not null
        select finding;

    /// <summary>One whose other lead is on another net than those of all others; of two, the one that does not lead to ground.</summary>
    private Finding? EndsElsewhere(StudyContext context, CapacitorRow row)
    {
        var circuit = context.Circuit;
        var ends = row
            .Capacitors.GroupBy(one => circuit.Nets.OneNet[one.FarLead(circuit)])
            .OrderByDescending(end => end.Count())
            .ToList();
        if (ends is not [var usual, var other] || other.Count() > 1)
        {
            return null;
        }

        if (usual.Count() == 1)
        {
            (usual, other) = other.Key == context.Study.Network.Sleeve ? (other, usual) : (usual, other);
            if (usual.Key != context.Study.Network.Sleeve)
            {
                return null;
            }
        }

        var (odd, like) = (other.First(), usual.First());
        var (isAt, belongs) = (
            PartLines.LugUnder(context, odd.FarLead(circuit)),
            PartLines.LugUnder(context, like.FarLead(circuit))
        );
        return Report(
            context,
            odd.Capacitor,
            $"'{context.Circuit.Parts[odd.Capacitor.Part].Name}' ends at '{circuit.NameOf(isAt)}', the others of '{row.Control.Name}' at '{circuit.NameOf(belongs)}'",
            Hang(context, odd.Capacitor, odd.On.Lug, belongs)
        );
    }

    private Finding? SharesAThrow(StudyContext context, CapacitorRow row)
    {
        var circuit = context.Circuit;
        if (row.Throws.Where(one => one.Capacitors.Length > 1).ToList() is not [var shared])
        {
            return null;
        }

        var free = row
            .Throws.Where(one => one.Capacitors.IsEmpty && !context.IsJointed(one.Lug))
            .OrderBy(one => Math.Abs(row.Throws.IndexOf(one) - row.Throws.IndexOf(shared)))
            .Select(one => circuit.NameOf(one.Lug))
            .FirstOrDefault();
        return free is null
            ? null
            : Report(
                context,
                shared.Capacitors[^1],
                $"'{circuit.NameOf(shared.Lug)}' has {shared.Capacitors.Length} capacitors, and '{free}' has none",
                $"hang one of them on '{free}'"
            );
    }

    /// <summary>One of their kind on the common, where it is always in, and a throw between theirs without any.</summary>
    private Finding? LiesOnTheCommon(StudyContext context, CapacitorRow row)
    {
        var circuit = context.Circuit;
        var far = circuit.Nets.OneNet[row.Capacitors.First().FarLead(circuit)];
        var common = circuit.Nets.OneNet[row.Common];
        var last = row.Throws.ToList().FindLastIndex(one => one.Capacitors.Length > 0);
        var empty = row
            .Throws.SkipWhile(one => one.Capacitors.IsEmpty)
            .TakeWhile(one => one.Lug != row.Throws[last].Lug)
            .Where(one => one.Capacitors.IsEmpty)
            .ToList();
        var onCommon = circuit.Elements.OfType<Capacitor>().Where(one => Joins(one, common, far)).ToList();
        return empty is [var hole] && onCommon is [.., var capacitor]
            ? Report(
                context,
                capacitor,
                $"'{capacitor.Name}' lies on the common of '{row.Control.Name}', and '{circuit.NameOf(hole.Lug)}' has none",
                Hang(
                    context,
                    capacitor,
                    hole.Lug,
                    PartLines.LugUnder(context, circuit.Nets.OneNet[capacitor.A] == far ? capacitor.A : capacitor.B)
                )
            )
            : null;

        bool Joins(Capacitor one, int net, int other) =>
            (circuit.Nets.OneNet[one.A], circuit.Nets.OneNet[one.B]) is var (a, b)
            && ((a == net && b == other) || (a == other && b == net));
    }

    /// <summary>Two that stand in each other's place: exchanged, the values go up or down all along.</summary>
    private Finding? OutOfOrder(StudyContext context, CapacitorRow row)
    {
        var circuit = context.Circuit;
        ImmutableArray<CapacitorRow.Hanging> all = [.. row.Capacitors];
        ImmutableArray<double> farads = [.. all.Select(one => one.Capacitor.Farads)];
        if (all.Length < LeastInOrder || IsInOrder(farads))
        {
            return null;
        }

        var exchanged = ExchangedIn(farads).ToList();
        return exchanged.Count == 0
            ? null
            : Report(
                context,
                all[exchanged[0].First].Capacitor,
                exchanged is [var (first, second)]
                    ? $"'{Name(first)}' and '{Name(second)}' stand in each other's place on '{row.Control.Name}'"
                    : $"the capacitors of '{row.Control.Name}' go neither up nor down: two are exchanged",
                "exchange their leads: "
                    + string.Join(
                        " or ",
                        exchanged.Select(pair => $"'{Throw(pair.First)}' with '{Throw(pair.Second)}'")
                    )
            );

        string Name(int place) => circuit.Parts[all[place].Capacitor.Part].Name;

        string Throw(int place) => circuit.NameOf(all[place].On.Lug);
    }

    private static bool IsInOrder(ImmutableArray<double> values) =>
        Enumerable.Range(1, values.Length - 1).All(i => values[i] >= values[i - 1])
        || Enumerable.Range(1, values.Length - 1).All(i => values[i] <= values[i - 1]);

    /// <summary>The pairs each of whose exchange puts all in order.</summary>
    private static IEnumerable<(int First, int Second)> ExchangedIn(ImmutableArray<double> values) =>
        from first in Enumerable.Range(0, values.Length)
        from second in Enumerable.Range(first + 1, values.Length - first - 1)
        where IsInOrder(values.SetItem(first, values[second]).SetItem(second, values[first]))
        select (first, second);

    private static string Hang(StudyContext context, Capacitor capacitor, int from, int to) =>
        Advice.Hung(context, capacitor, from, to) is { } line
            ? $"hang it there: {line}"
            : $"see first to what else is on '{context.Circuit.NameOf(to)}' and where this lead is";

    private Finding Report(StudyContext context, Capacitor capacitor, string message, string help)
    {
        var part = context.Circuit.Parts[capacitor.Part];
        return Description.At(
            part.NameAt,
            message,
            $"{help}, or write: allow {Description.Id} at {part.Name} \"why\"",
            Subject.Part(part.Name)
        );
    }
}
