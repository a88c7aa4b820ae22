using System.Globalization;
using WireText.Checks.Connections;
using WireText.Checks.Grounding;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Checks.Building;

/// <summary>Finds lugs that more is soldered to than they hold.</summary>
public sealed class CrowdedLug : ICheck
{
    /// <summary>Conductors that fit through a lug's eye and round it. Common practice.</summary>
    internal const int MostOnALug = 3;

    public CheckDescription Description { get; } =
        new(
            Id: "crowded-lug",
            Title: "too many wires share a lug",
            Severity: Severity.Warning,
            Group: FindingGroup.Building,
            Why: """
            Three conductors fill the eye of a lug. A fourth lies on solder alone, heats the others until they move, and is
            the cold joint found a year later. A case is no lug: there each joint has a place of its own.
            """,
            Bad: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   bridge.hot to vol.3 yellow
            wire   vol.2 to out.tip white
            wire   vol.case to [|out.sleeve|] black
            wire   vol.1 to out.sleeve black
            wire   neck.ground to out.sleeve black
            wire   bridge.ground to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   bridge.hot to vol.3 yellow
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            wire   vol.1 to vol.case bare
            wire   neck.ground to vol.case black
            wire   bridge.ground to vol.case black
            """,
            Mend: """
            Bring grounds together on a case and take one wire on from there. Elsewhere solder some of the wires to another
            lug of the same net, let one run pass instead of two that end, or join them in a splice.
            """
        );

    /// <summary>True when more comes to a lug than it holds; a splice has no eye, and a case many places.</summary>
    internal static bool IsCrowded(CheckContext context, Lug lug) =>
        !Conductors.TakesManyJoints(lug)
        && !JointRules.IsSplice(context.Circuit.PartOf(lug))
        && Conductors.At(context, lug.Index).Count > MostOnALug;

    public IEnumerable<Finding> Find(CheckContext context)
    {
        var withRoom = context
            .Circuit.Lugs.Where(lug => HasRoom(context, lug))
            .ToLookup(lug => context.Circuit.Nets.Soldered[lug.Index]);
        return context.Circuit.Lugs.Where(lug => IsCrowded(context, lug)).Select(lug => Report(context, lug, withRoom));
    }

    private static bool HasRoom(CheckContext context, Lug lug) =>
        lug is { IsLead: false, IsInner: false }
        && (Conductors.TakesManyJoints(lug) || Conductors.At(context, lug.Index).Count < MostOnALug);

    /// <param name="withRoom">The lugs that hold another wire, by what is soldered together.</param>
    private Finding Report(CheckContext context, Lug lug, ILookup<int, Lug> withRoom)
    {
        var conductors = Conductors.At(context, lug.Index);
        return Description.At(
            Places.Of(context, lug.Index),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{conductors.Count} wires share '{lug.Name}': a lug holds {MostOnALug}"
            ),
            Help(context, lug, [.. conductors.Skip(MostOnALug)]) ?? Elsewhere(context.Circuit, lug, withRoom),
            context.Subject(lug.Index)
        );
    }

    /// <summary>The wires that are too many, on a grounded case; null where they cannot all be moved there.</summary>
    private static string? Help(CheckContext context, Lug lug, List<Wire> tooMany)
    {
        var circuit = context.Circuit;
        if (
            circuit.Outputs.IsEmpty
            || !circuit.Nets.SameSolder(lug.Index, circuit.Outputs[0].Sleeve)
            || GroundPlaces.Nearest(context, lug.Index) is var metal && circuit.FindLug(metal) is not { IsMetal: true }
            || !tooMany.TrueForAll(wire => IsFreeToMove(context, wire, lug.Index))
        )
        {
            return null;
        }

        var lines = tooMany.Select(wire =>
            WireLines.Line(
                circuit.NameOf(Conductors.OtherEnd(wire, lug.Index)),
                metal,
                WireLines.ColourOf(wire, WireLines.GroundColour)
            )
        );
        return $"bring grounds together on a case: {string.Join("; ", lines)}";
    }

    /// <summary>True for a wire that ends there and whose other end is no metal: what grounds the case itself stays.</summary>
    private static bool IsFreeToMove(CheckContext context, Wire wire, int lug) =>
        wire.Kind == WireKind.Wire
        && context.WiresAt(lug).Count(other => other.Run == wire.Run) == 1
        && !context.Circuit.Lugs[Conductors.OtherEnd(wire, lug)].IsMetal;

    private static string Elsewhere(Circuit circuit, Lug lug, ILookup<int, Lug> withRoom)
    {
        var other = withRoom[circuit.Nets.Soldered[lug.Index]].FirstOrDefault(one => one.Index != lug.Index);
        return other is null ? "join some of them in a splice" : $"solder some of them to '{other.Name}' instead";
    }
}
