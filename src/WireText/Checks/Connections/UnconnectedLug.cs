using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds lugs and leads that need a joint and have none.</summary>
public sealed class UnconnectedLug : ICheck
{
    public const string Id = "unconnected-lug";

    public CheckDescription Description { get; } =
        new(
            Id: Id,
            Title: "a lug or lead is not connected",
            Severity: Severity.Error,
            Group: FindingGroup.Connections,
            Why: """
            Current flows through a pickup, a capacitor or a battery only when both its ends are in the circuit. A pot needs
            its wiper and one end of its track, a pole of a switch its common and a throw. Lugs that may stay empty are
            known to the part; a lead that is meant to stay out of the circuit is taped back in a splice of its own.
            """,
            Bad: """
            pickup [|neck|] single-coil
            jack   out mono
            wire   neck.hot to out.tip white
            metal  saddle
            wire   saddle to out.sleeve black
            """,
            Good: """
            pickup neck single-coil
            jack   out mono
            wire   neck.hot to out.tip white
            wire   neck.ground to out.sleeve black
            """,
            Mend: """
            Solder it to a lug. A lead that stays out of the circuit: write a splice with that lead alone. A lug that is
            meant to stay empty: allow it, with the reason.
            """
        )
        {
            Silences =
            [
                new Silence("floating-ground", SilenceReach.SamePart),
                new Silence("mute-opens-hot", SilenceReach.SamePart),
                Silence.Everywhere("no-supply"),
                Silence.Everywhere("battery-drain"),
                Silence.Everywhere("dc-at-jack"),
                .. Silence.AllThatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(CheckContext context)
    {
        var faults = context
            .Circuit.Parts.Select(part => (Part: part, Missing: new JointRules(context, part).Missing()))
            .Where(fault => !fault.Missing.IsEmpty)
            .ToList();

        // Two loose ends in all: most likely one wire is missing between them.
        if (
            faults
            is [{ Missing: [{ Fault: JointFault.NoJoint } one] }, { Missing: [{ Fault: JointFault.NoJoint } other] }]
        )
        {
            return [ReportPair(context, one.Lug, other.Lug)];
        }

        return faults.Select(fault => Report(context, fault.Part, fault.Missing));
    }

    private Finding ReportPair(CheckContext context, int one, int other)
    {
        var circuit = context.Circuit;
        var isVital = new[] { one, other }.Any(lug => IsVital(circuit, circuit.PartOf(circuit.Lugs[lug])));
        var noun = circuit.Lugs[one].IsLead && circuit.Lugs[other].IsLead ? "leads" : "lugs";
        var line = WireLines.Line(circuit.NameOf(one), circuit.NameOf(other), WireLines.SignalColour);
        return Description.At(
            isVital ? Severity.Error : Severity.Warning,
            Places.Of(context, one),
            $"{noun} {Listing.Of([circuit.NameOf(one), circuit.NameOf(other)])} are not connected",
            $"join the two loose ends: {line}; or write: allow unconnected-lug at {circuit.NameOf(one)} \"why\"",
            context.Subject(one),
            context.Subject(other)
        );
    }

    private Finding Report(CheckContext context, Part part, ImmutableArray<MissingJoint> missing)
    {
        var lugs = missing.Select(one => one.Lug).ToList();
        return Description
            .At(
                IsVital(context.Circuit, part) ? Severity.Error : Severity.Warning,
                Places.Of(context, lugs[0]),
                Message(context, missing),
                Help(context, part, missing[0]),
                [
                    .. lugs.Concat(lugs.SelectMany(lug => OfItsPole(context, part, lug)))
                        .Distinct()
                        .Select(context.Subject),
                ]
            )
            .Seeking(Remedy.Join, Allow(context, lugs[0]));
    }

    private static string Message(CheckContext context, ImmutableArray<MissingJoint> missing)
    {
        var names = missing.Select(one => context.Circuit.NameOf(one.Lug)).ToList();
        var noun = missing.All(one => context.Circuit.Lugs[one.Lug].IsLead) ? "lead" : "lug";
        return missing switch
        {
            [{ Fault: JointFault.DeadEnd }, ..] when missing.All(one => one.Fault == JointFault.DeadEnd) =>
                $"{Listing.Of(names)} {(names.Count == 1 ? "leads" : "lead")} nowhere: no position joins it to another wire",
            [{ Fault: JointFault.EitherEnd }, { Fault: JointFault.EitherEnd }] =>
                $"neither '{names[0]}' nor '{names[1]}' is connected",
            [_] => $"{noun} '{names[0]}' is not connected",
            _ => $"{noun}s {Listing.Of(names)} are not connected",
        };
    }

    private static string Help(CheckContext context, Part part, MissingJoint first)
    {
        var name = context.Circuit.NameOf(first.Lug);
        var allow = Allow(context, first.Lug);
        return first.Fault == JointFault.DeadEnd
            ? $"wire one that a position joins to '{name}': {Listing.Of(OfItsPole(context, part, first.Lug).Select(context.Circuit.NameOf))}, {allow}"
            : $"solder '{name}' to a lug, {allow}";
    }

    private static string Allow(CheckContext context, int lug) =>
        $"or write: allow {Id} at {context.Circuit.NameOf(lug)} \"why\"";

    /// <summary>The lugs that some position joins with a lug: those with a joint, or all when none has.</summary>
    private static List<int> OfItsPole(CheckContext context, Part part, int lug)
    {
        var joined = part
            .Controls.SelectMany(control => context.Circuit.Controls[control].Positions)
            .SelectMany(position => position.Closed)
            .Where(group => group.Contains(lug))
            .SelectMany(group => group)
            .Where(other => other != lug)
            .Distinct()
            .ToList();
        return joined.Exists(context.IsJointed) ? joined.FindAll(context.IsJointed) : joined;
    }

    /// <summary>True for a coil, a two-lead part, a jack, a battery and an amplifier: nothing works without the lug.</summary>
    private static bool IsVital(Circuit circuit, Part part) =>
        circuit.Outputs.Any(output => output.Part == part.Index)
        || part.Elements.Any(e => circuit.Elements[e] is not Track);
}
