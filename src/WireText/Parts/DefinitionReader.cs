using System.Globalization;
using WireText.Geometry;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Parts;

/// <summary>Turns one <c>define</c> with its indented lines into a part definition.</summary>
public sealed class DefinitionReader
{
    private readonly DefineSyntax define;
    private readonly FindingSink sink;
    private readonly DefinitionLugs lugs;
    private readonly DefinitionControls controls;
    private readonly InsideReader insides;
    private readonly List<ContactGroup> joined = [];
    private readonly List<PartHole> holes = [];
    private BodyShape? body;
    private SwitchOver between = SwitchOver.BreakBeforeMake;
    private bool isEndless;

    private DefinitionReader(DefineSyntax define, FindingSink sink)
    {
        this.define = define;
        this.sink = sink;
        lugs = new DefinitionLugs(define, sink);
        controls = new DefinitionControls(define, lugs, sink);
        insides = new InsideReader(lugs, sink);
    }

    /// <summary>The definition; what is wrong in it goes to the sink, and the rest is still read.</summary>
    /// <returns>Null when it has no lug or lead at all.</returns>
    public static PartDefinition? Read(DefineSyntax define, FindingSink sink) =>
        new DefinitionReader(define, sink).Read();

    private PartDefinition? Read()
    {
        foreach (var line in define.Lines.OfType<TerminalsSyntax>())
        {
            lugs.Add(line);
        }

        foreach (var line in define.Lines.OfType<NamesSyntax>())
        {
            lugs.Add(line);
        }

        if (lugs.All.Count == 0)
        {
            ReportNoLugs();
            return null;
        }

        foreach (var line in define.Lines)
        {
            ReadLine(line);
        }

        foreach (var line in define.Lines.OfType<RestInsideSyntax>())
        {
            controls.Rest(line, insides.HasTrack);
        }

        return new PartDefinition(
            define.Kind.Text,
            define.Model.Text,
            define.Remark?.Value,
            body,
            [.. holes],
            [.. lugs.All],
            [.. joined],
            [.. insides.All],
            [.. controls.All],
            between,
            isEndless,
            controls.DialRest,
            define.Model.Location
        );
    }

    private void ReportNoLugs()
    {
        if (!define.IsBroken)
        {
            sink.Add(
                DefinitionFindings.BadDefinition.At(
                    define.Model.Location,
                    $"'{define.Model.Text}' has no lugs",
                    "add a line: lugs NAME x,y NAME x,y"
                )
            );
        }
    }

    private void Add(HoleSyntax line)
    {
        HoleShape shape = line.Height is { } height
            ? new HoleShape.Slot(line.Width, height)
            : new HoleShape.Round(line.Width);
        if (shape.IsPossible)
        {
            holes.Add(new PartHole(shape, line.At is { } at ? new Point(at.X, at.Y) : new Point(0, 0)));
            return;
        }

        sink.Add(
            DefinitionFindings.BadDefinition.At(
                line.Location,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a hole of '{define.Model.Text}' is not from 0 to {HoleShape.Largest} mm large"
                ),
                "write its diameter, hole round 9.5, or its width and height, hole slot 26,2.5"
            )
        );
    }

    private void ReadLine(InsideSyntax line)
    {
        switch (line)
        {
            case BodySyntax shape:
                body = shape.Height is { } height
                    ? new BodyShape.Box(shape.Width, height)
                    : new BodyShape.Round(shape.Width);
                break;
            case HoleSyntax shape:
                Add(shape);
                break;
            case BetweenSyntax manner:
                between = Naming.Alike(manner.Manner.Text, "make-before-break")
                    ? SwitchOver.MakeBeforeBreak
                    : SwitchOver.BreakBeforeMake;
                isEndless = manner.Endless is not null;
                break;
            case JoinedSyntax joints:
                joined.AddRange(joints.Joints.Select(lugs.Resolve).OfType<ContactGroup>());
                break;
            case PositionSyntax position:
                controls.Add(position);
                break;
            case CoilInsideSyntax coil:
                insides.Add(coil);
                break;
            case TrackInsideSyntax track:
                insides.Add(track);
                break;
            case AmpInsideSyntax amp:
                insides.Add(amp);
                break;
            case TwoLeadInsideSyntax element:
                insides.Add(element);
                break;
        }
    }
}
