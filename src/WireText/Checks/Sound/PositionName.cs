using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Sound;

/// <summary>Finds positions that are named after other pickups than those heard there.</summary>
public sealed class PositionName : IStudyCheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "position-name",
            Title: "a position is named after another pickup",
            Severity: Severity.Warning,
            Group: FindingGroup.Sound,
            Why: """
            The name says which pickup is meant, and the wires let another be heard. Either the throws are exchanged or the
            names were given in the wrong order: levers count from either end. A name with other words, as bridge-cut, asks
            for the pickups that it has; both asks for two; cut, split and tap for one coil of a pickup that has several,
            which then is whole where its name stands without these words.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            positions [|sel|] bridge neck
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            switch sel    spdt
            positions sel neck bridge
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to sel.A1 white
            wire   bridge.hot to sel.A2 yellow
            wire   sel.A0 to vol.3 red
            wire   vol.2 to out.tip blue
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case to out.sleeve bare
            """,
            Mend: "Exchange the wires of the throws, or put the names in the order of what is heard."
        )
        {
            Silences = [.. Silence.WhatDialsDo()],
        };

    public IEnumerable<Finding> Find(StudyContext context)
    {
        foreach (var control in context.Circuit.Controls.Where(control => !control.IsPlug))
        {
            var named = control
                .Positions.Select(position => PositionMeaning.Of(context.Circuit, position.Name))
                .ToList();
            if (context.Study.MuteOf(control.Index) is not null || named.TrueForAll(name => name is null))
            {
                continue;
            }

            var cut = named
                .OfType<PositionMeaning>()
                .Where(name => name.IsCut)
                .SelectMany(name => name.Pickups)
                .ToHashSet();
            var heard = Enumerable
                .Range(0, control.Positions.Length)
                .Select(position => HeardAt(context, control, position, named[position], cut))
                .ToList();

            // A filter's mid-cut is no cut of the middle pickup: other words count where the control chooses what is heard.
            var chooses = heard.OfType<HeardPickups>().Select(there => there.Key).Distinct().Count() > 1;
            var wrong = Enumerable
                .Range(0, named.Count)
                .Where(p =>
                    named[p] is { } name && heard[p] is { } there && (name.IsExact || chooses) && !name.Fits(there, cut)
                )
                .ToList();
            if (wrong.Count > 0)
            {
                yield return Report(context, control, named, heard, wrong, cut);
            }
        }
    }

    /// <summary>
    /// The pickups heard with a control there and the others at rest: those of all jacks together, or of the jack that the name
    /// fits; null when there are none, or it was not worked out.
    /// </summary>
    private static HeardPickups? HeardAt(
        StudyContext context,
        Control control,
        int position,
        PositionMeaning? name,
        HashSet<int> cut
    )
    {
        var state = State.Rest(context.Circuit).At(control.Index, position);
        List<ImmutableArray<Coil>> heard =
        [
            .. context
                .Jacks.Select(jack => jack.Study.Heard.Unmuted.FirstOrDefault(one => one.State.Holds(state)))
                .Where(one => one is { Sounds: true } && one.Sound.Heard.Any())
                .Select(one => one!.Sound.Heard.Select(coil => coil.Coil).ToImmutableArray()),
        ];
        if (heard.Count == 0)
        {
            return null;
        }

        var together = HeardPickups.Of(
            context.Circuit,
            heard.SelectMany(coils => coils).DistinctBy(coil => coil.Index)
        );
        return
            heard
                .Select(coils => HeardPickups.Of(context.Circuit, coils))
                .FirstOrDefault(there => name is not null && name.Fits(there, cut))
                is { } fitting
            && name?.Fits(together, cut) != true
            ? fitting
            : together;
    }

    private Finding Report(
        StudyContext context,
        Control control,
        List<PositionMeaning?> named,
        List<HeardPickups?> heard,
        List<int> wrong,
        HashSet<int> cut
    )
    {
        var first = wrong[0];
        return Description
            .At(
                control.NamedAt ?? context.PlaceOf(control),
                $"at {context.PositionName(control.Index, first)} {Names(context.Circuit, heard[first]!)} is heard",
                Ordered(control, named, heard, cut) is { } names
                    ? $"exchange the throws, or name them in the order of what is heard: positions {control.Name} {string.Join(' ', names)}"
                    : "wire that throw to the pickup it is named after, or name it after what is heard",
                [.. wrong.Select(position => Subject.Position(control.Name, control.Positions[position].Name))]
            )
            .Seeking(Remedy.Part);
    }

    /// <summary>Pickups in the order of declaration; one of several coils is told whole or in part.</summary>
    private static string Names(Circuit circuit, HeardPickups heard) =>
        string.Join(
            " with ",
            heard
                .Parts.Order()
                .Select(part =>
                    !heard.Divided.Contains(part) ? $"'{circuit.Parts[part].Name}'"
                    : heard.Whole.Contains(part) ? $"all of '{circuit.Parts[part].Name}'"
                    : $"one coil of '{circuit.Parts[part].Name}'"
                )
        );

    /// <summary>The same names so that each fits what is heard; null when they do not.</summary>
    private static ImmutableArray<string>? Ordered(
        Control control,
        List<PositionMeaning?> named,
        List<HeardPickups?> heard,
        HashSet<int> cut
    )
    {
        var left = Enumerable.Range(0, named.Count).ToList();
        var names = new string[named.Count];
        for (var position = 0; position < names.Length; position++)
        {
            var fitting = left.FindIndex(other =>
                named[other] is { } name ? heard[position] is { } there && name.Fits(there, cut) : other == position
            );
            if (fitting < 0)
            {
                return null;
            }

            names[position] = control.Positions[left[fitting]].Name;
            left.RemoveAt(fitting);
        }

        return [.. names];
    }
}
