using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Sound;
using WireText.Electrical.Studies;

namespace WireText.Output;

/// <summary>Writes lines that pin what a circuit does now, ready to be pasted below it.</summary>
/// <remarks>Each is true of the circuit that it is written from, and no state is told in two lines.</remarks>
public static class ExpectLines
{
    /// <summary>Where each dial is looked at alone, save where it rests: its middle and both ends.</summary>
    private static readonly double[] Alone = [5, 0, 10];

    /// <summary>Where all dials are looked at together.</summary>
    private static readonly double[] Together = [5, 2];

    /// <summary>
    /// At each jack: for each row of the table a line at rest, and lines for dials that change it, each with its level; then what the jack
    /// does with another plug or none, and when batteries are drawn from.
    /// </summary>
    public static string Write(Study study)
    {
        var jacks = study.Jacks;
        var lists = jacks.Select(jack => AtJack(jack)).ToList();
        lists[0].Add(BatteryStates.Of(study.Network));
        return string.Concat(lists) + AssumptionOf(jacks);
    }

    private static ExpectLineList AtJack(Study study)
    {
        var list = new ExpectLineList(study.Circuit);
        foreach (var row in PositionSheet.RowsOf(study.Positions))
        {
            AddRow(list, study, row.State);
        }

        list.Add(PlugStates.Of(study));
        return list;
    }

    /// <summary>A comment on the coils whose values nobody gave: what the lines pin by them is no measurement.</summary>
    private static string AssumptionOf(ImmutableArray<Study> jacks)
    {
        var coils = jacks
            .SelectMany(study => PositionSheet.RowsOf(study.Positions))
            .SelectMany(row => AssumedValues.BehindResponse(row.Analysis))
            .Select(coil => coil.Name)
            .Distinct(StringComparer.Ordinal)
            .ToList();
        var unknown = DoubtVariants.InDoubt(jacks[0].Circuit).Select(DoubtText.Of).ToList();
        return (
                coils.Count == 0
                    ? ""
                    : $"# by assumed values of {string.Join(", ", coils)}: dcr= l= c= wind= magnet= on a pickup's line give them\n"
            )
            + (
                unknown.Count == 0
                    ? ""
                    : $"# no figure is claimed that rests on what is not known: {string.Join(", ", unknown)}\n"
            );
    }

    private static void AddRow(ExpectLineList list, Study study, State row)
    {
        list.Add(ToldState.Of(study, row));
        var idle = row.Travels;
        foreach (var dial in study.Circuit.Dials)
        {
            var turned = Alone
                .Where(travel => travel != dial.Rest)
                .SelectMany(travel => Changed(row.At(dial, travel)))
                .ToList();
            list.Add(turned);
            idle = turned.Count > 0 ? idle : idle.SetItem(dial.Index, 0);
        }

        if (study.Circuit.Dials.Length > 1)
        {
            list.Add(Together.SelectMany(travel => Changed(row.AtAll(travel))));
        }

        // Dials that change nothing: a slip may make them do something.
        if (!idle.SequenceEqual(row.Travels) && study.Analyse(row.Settled(study.Circuit)).Outcome == Outcome.Sound)
        {
            list.Add(ToldState.Of(study, row.At(idle)));
        }

        // All sets of states where one of them changes: in the others the dial may not begin to do something.
        ImmutableArray<ToldState> Changed(State turned) =>
            ToldState.Of(study, turned) is var told && told.Any(one => one.IsChanged) ? told : [];
    }
}
