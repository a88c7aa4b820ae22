using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds lugs and leads that need a joint and have none.</summary>
public sealed class UnconnectedLug : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "unconnected-lug",
            Title: "a lug or lead is not connected",
            Severity: Severity.Error,
            Group: CheckGroup.Connections,
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
                .. Silence.WhatIsRead(),
            ],
        };

    public IEnumerable<Finding> Find(CheckContext context)
    {
        var faults = context
            .Circuit.Parts.Select(part => (Part: part, Missing: new JointRules(context, part).Missing()))
            .Where(fault => !fault.Missing.IsEmpty)
            .ToList();
        foreach (var (part, missing) in faults)
        {
            // Two loose ends in all: most likely one wire is missing between them.
            var partner = faults is [{ Missing: [_] }, { Missing: [_] }]
                ? faults.Find(fault => fault.Part != part).Missing[0]
                : (MissingJoint?)null;
            yield return Report(context, part, missing, partner);
        }
    }

    private Finding Report(CheckContext context, Part part, ImmutableArray<MissingJoint> missing, MissingJoint? partner)
    {
        var lugs = missing.Select(one => one.Lug).ToList();
        return Description.At(
            IsVital(context.Circuit, part) ? Severity.Error : Severity.Warning,
            Places.Of(context, lugs[0]),
            Message(context, missing),
            Help(context, part, missing[0], partner),
            [.. lugs.Select(context.Subject)]
        );
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

    private static string Help(CheckContext context, Part part, MissingJoint first, MissingJoint? partner)
    {
        var name = context.Circuit.NameOf(first.Lug);
        var allow = $"or write: allow unconnected-lug at {name} \"why\"";
        return first.Fault switch
        {
            JointFault.DeadEnd => $"wire a lug of '{part.Name}' that a position joins to '{name}', {allow}",
            _ when LooseEnd(context, partner) is { } other =>
                $"join it with the other loose end: {WireLines.Line(name, other, WireLines.SignalColour)}; {allow}",
            _ => $"solder '{name}' to a lug, {allow}",
        };
    }

    /// <summary>The name of a lug that nothing is soldered to.</summary>
    private static string? LooseEnd(CheckContext context, MissingJoint? partner) =>
        partner is { Fault: JointFault.NoJoint } loose ? context.Circuit.NameOf(loose.Lug) : null;

    /// <summary>True for a coil, a two-lead part, a jack, a battery and an amplifier: nothing works without the lug.</summary>
    private static bool IsVital(Circuit circuit, Part part) =>
        circuit.Outputs.Any(output => output.Part == part.Index)
        || part.Elements.Any(e => circuit.Elements[e] is not Track);
}
