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
                Silence.Everywhere("no-sound") with
                {
                    OnlyByErrors = true,
                },
            ],
        };

    public IEnumerable<Finding> Find(CheckContext context)
    {
        foreach (var part in context.Circuit.Parts)
        {
            var missing = new JointRules(context, part).Missing();
            if (!missing.IsEmpty)
            {
                yield return Report(context, part, missing);
            }
        }
    }

    private Finding Report(CheckContext context, Part part, ImmutableArray<int> missing)
    {
        var names = missing.Select(context.Circuit.NameOf).ToList();
        var isDeadEnd = missing.All(context.IsJointed);
        var message =
            isDeadEnd ? $"{Listing.Of(names)} leads nowhere: no position joins it to another wire"
            : names.Count == 1 ? $"{Noun(context, missing)} {Listing.Of(names)} is not connected"
            : $"{Noun(context, missing)}s {Listing.Of(names)} are not connected";
        var help = isDeadEnd
            ? $"wire a lug of '{part.Name}' that a position joins to '{names[0]}'"
            : $"solder '{names[0]}' to a lug, or write: allow unconnected-lug at {names[0]} \"why\"";
        return Description.At(
            IsVital(context.Circuit, part) ? Severity.Error : Severity.Warning,
            isDeadEnd ? Places.Of(context, missing[0]) : part.NameAt,
            message,
            help,
            [.. missing.Select(context.Subject)]
        );
    }

    private static string Noun(CheckContext context, ImmutableArray<int> lugs) =>
        lugs.All(lug => context.Circuit.Lugs[lug].IsLead) ? "lead" : "lug";

    /// <summary>True for a coil, a two-lead part, a jack, a battery and an amplifier: nothing works without the lug.</summary>
    private static bool IsVital(Circuit circuit, Part part) =>
        circuit.Outputs.Any(output => output.Part == part.Index)
        || part.Elements.Any(e => circuit.Elements[e] is not Track);
}
