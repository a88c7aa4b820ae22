using WireText.Circuits;
using WireText.Electrical.Situations;
using WireText.Text;

namespace WireText.Checks.Connections;

/// <summary>Finds a coil whose ends are joined in every position.</summary>
public sealed class CoilShorted : ICheck
{
    public CheckDescription Description { get; } =
        new(
            Id: "coil-shorted",
            Title: "both ends of a coil are joined",
            Severity: Severity.Error,
            Group: FindingGroup.Connections,
            Why: """
            A coil with both ends on one net is silent. Shorting a coil in some positions is how a pickup is cut to one coil
            and no mistake; shorted by solder, or in every position, it can never be heard.
            """,
            Bad: """
            pickup neck   single-coil
            pickup [|bridge|] single-coil
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   bridge.hot to vol.case white
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Good: """
            pickup neck   single-coil
            pickup bridge single-coil
            pot    vol    250k audio
            jack   out    mono
            wire   neck.hot to vol.3 white
            wire   neck.ground to vol.case black
            wire   bridge.hot to vol.3 white
            wire   bridge.ground to vol.case black
            wire   vol.1 to vol.case bare
            wire   vol.2 to out.tip white
            wire   vol.case to out.sleeve black
            """,
            Mend: "Move one of its leads: the hot end belongs on the signal, the other on ground or on the next coil."
        )
        {
            Silences =
            [
                new Silence("floating-ground", SilenceReach.SamePart),
                new Silence("hot-case", SilenceReach.SamePart),
                new Silence("unconnected-lug", SilenceReach.SamePart),
                new Silence("part-shorted", SilenceReach.SamePart),
                Silence.Of("shorted-output"),
                .. Silence.AllThatIsRead(),
            ],
        };

    /// <summary>True when the net is both tip and sleeve: the short at the jack is the cause then.</summary>
    internal static bool IsTheShortedOutput(CheckContext context, int lug) =>
        context.Study?.Network is { } network
        && network.Tip == network.Sleeve
        && context.Circuit.Nets.OneNet[lug] == network.Tip;

    public IEnumerable<Finding> Find(CheckContext context)
    {
        foreach (var part in context.Circuit.Parts)
        {
            var shorted = part
                .Elements.Select(e => context.Circuit.Elements[e])
                .OfType<Coil>()
                .Where(coil => IsShorted(context, coil) && !IsTheShortedOutput(context, coil.Start))
                .ToList();
            if (shorted.Count > 0)
            {
                yield return Report(context, part, shorted);
            }
        }
    }

    private Finding Report(CheckContext context, Part part, List<Coil> shorted)
    {
        var coil = shorted[0];
        var blamed = JoinBlame.Between(context, coil.Finish, coil.Start, state: null);
        return Description
            .At(
                part.NameAt,
                $"both ends of {Listing.Of(shorted.Select(one => one.Name))} are joined",
                blamed is [var wire]
                    ? $"move one end of: {WireLines.Line(context.Circuit, wire)}"
                    : $"move one of its leads: '{context.Circuit.NameOf(coil.Start)}' and '{context.Circuit.NameOf(coil.Finish)}' are one net",
                [
                    Subject.Part(part.Name),
                    .. shorted
                        .SelectMany(one => one.Ends)
                        .Where(lug => !context.Circuit.Lugs[lug].IsInner)
                        .Concat(blamed.SelectMany(wire => new[] { wire.From, wire.To }))
                        .Distinct()
                        .Select(context.Subject),
                    .. SwitchesOf(context, coil),
                ]
            )
            .Seeking(Remedy.Part);
    }

    /// <summary>The switches whose contacts join the ends, where no solder does.</summary>
    private static IEnumerable<Subject> SwitchesOf(CheckContext context, Coil coil)
    {
        var (circuit, nets) = (context.Circuit, context.Circuit.Nets.OneNet);
        return context.Study?.Network is not { } network
            ? []
            : ContactReport
                .Between(network, nets[coil.Start], nets[coil.Finish])
                .Controls.Select(control => Subject.Part(circuit.Parts[circuit.Controls[control].Part].Name))
                .Distinct();
    }

    private static bool IsShorted(CheckContext context, Coil coil)
    {
        var nets = context.Circuit.Nets;
        return nets.SameNet(coil.Start, coil.Finish)
            || (
                context.Study?.Network is { } network
                && ContactReport.Between(network, nets.OneNet[coil.Start], nets.OneNet[coil.Finish]).Relation
                    == ContactRelation.Always
                // The plain plug that everything is looked at with joins ring and sleeve; one with a ring does not.
                && !(context is StudyContext studied && RingSignal.CoilsOn(studied).Contains(coil.Index))
            );
    }
}
