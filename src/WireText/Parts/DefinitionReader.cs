using System.Collections.Immutable;
using System.Globalization;
using WireText.Geometry;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Parts;

/// <summary>Turns one <c>define</c> with its indented lines into a part definition.</summary>
public sealed class DefinitionReader
{
    private readonly DefineSyntax define;
    private readonly FindingSink sink;
    private readonly List<Terminal> terminals = [];
    private readonly List<ContactGroup> joined = [];
    private readonly List<Inside> insides = [];
    private readonly List<(string Suffix, List<PositionDefinition> Positions, int AtRest)> controls = [];
    private BodyShape? body;
    private HoleShape? hole;
    private SwitchOver between = SwitchOver.BreakBeforeMake;
    private bool isEndless;
    private double? dialRest;

    private DefinitionReader(DefineSyntax define, FindingSink sink)
    {
        this.define = define;
        this.sink = sink;
    }

    /// <summary>The definition; what is wrong in it goes to the sink, and the rest is still read.</summary>
    /// <returns>Null when it has no lug or lead at all.</returns>
    public static PartDefinition? Read(DefineSyntax define, FindingSink sink) =>
        new DefinitionReader(define, sink).Read();

    private PartDefinition? Read()
    {
        foreach (var line in define.Lines.OfType<TerminalsSyntax>())
        {
            AddTerminals(line);
        }

        foreach (var line in define.Lines.OfType<NamesSyntax>())
        {
            AddNames(line);
        }

        if (terminals.Count == 0)
        {
            if (!define.IsBroken)
            {
                Report(define.Model, $"'{define.Model.Text}' has no lugs", "add a line: lugs NAME x,y NAME x,y");
            }

            return null;
        }

        foreach (var line in define.Lines)
        {
            ReadLine(line);
        }

        foreach (var line in define.Lines.OfType<RestInsideSyntax>())
        {
            ReadRest(line);
        }

        return new PartDefinition(
            define.Kind.Text,
            define.Model.Text,
            define.Remark?.Value,
            body,
            hole,
            [.. terminals],
            [.. joined],
            [.. insides],
            [.. controls.Select(c => new ControlDefinition(c.Suffix, [.. c.Positions], c.AtRest))],
            between,
            isEndless,
            dialRest,
            define.Model.Location
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
                hole = shape.Length is { } length
                    ? new HoleShape.Slot(shape.Width, length)
                    : new HoleShape.Round(shape.Width);
                break;
            case BetweenSyntax manner:
                ReadBetween(manner);
                break;
            case JoinedSyntax joints:
                joined.AddRange(joints.Joints.Select(ReadJoint).OfType<ContactGroup>());
                break;
            case PositionSyntax position:
                AddPosition(position);
                break;
            case CoilInsideSyntax coil:
                AddCoil(coil);
                break;
            case TrackInsideSyntax track:
                AddTrack(track);
                break;
            case AmpInsideSyntax amp:
                AddAmplifier(amp);
                break;
            case TwoLeadInsideSyntax element:
                AddTwoLead(element);
                break;
        }
    }

    private void AddTerminals(TerminalsSyntax line)
    {
        var kind = Is(line.Keyword, "leads") ? TerminalKind.Lead : TerminalKind.Lug;
        foreach (var (name, at) in line.Terminals)
        {
            AddTerminal(name, kind, at is null ? null : new Point(at.X, at.Y));
        }
    }

    private void AddTerminal(WordSyntax name, TerminalKind kind, Point? at)
    {
        if (Find(name.Text) is not null)
        {
            Report(name, $"'{name.Text}' is named twice in '{define.Model.Text}'", null);
            return;
        }

        terminals.Add(new Terminal(name.Text, kind, at, IsMetal: false, IsSpare: false));
    }

    private void AddNames(NamesSyntax line)
    {
        foreach (var name in line.Names)
        {
            if (Is(line.Keyword, "inner"))
            {
                AddTerminal(name, TerminalKind.Inner, at: null);
            }
            else if (Resolve(name) is { } terminal)
            {
                terminals[terminals.IndexOf(terminal)] = Is(line.Keyword, "metal")
                    ? terminal with
                    {
                        IsMetal = true,
                    }
                    : terminal with
                    {
                        IsSpare = true,
                    };
            }
        }
    }

    private void ReadBetween(BetweenSyntax manner)
    {
        between = Is(manner.Manner, "make-before-break") ? SwitchOver.MakeBeforeBreak : SwitchOver.BreakBeforeMake;
        isEndless = manner.Endless is not null;
    }

    private ContactGroup? ReadJoint(JointSyntax joint)
    {
        var names = joint.Words.Select(Resolve).ToList();
        return names.Contains(null) ? null : new ContactGroup([.. names.Select(t => t!.Name)]);
    }

    private void AddPosition(PositionSyntax line)
    {
        var suffix = line.Control?.Text ?? "";
        var index = controls.FindIndex(c => Is(c.Suffix, suffix));
        if (index < 0)
        {
            index = controls.Count;
            controls.Add((suffix, [], 0));
        }

        var positions = controls[index].Positions;
        if (positions.Exists(p => Is(p.Name, line.Position.Text)))
        {
            Report(
                line.Position,
                $"position '{line.Position.Text}' is said twice",
                "join its lugs with '+' on one line"
            );
            return;
        }

        positions.Add(
            new PositionDefinition(line.Position.Text, [.. line.Joints.Select(ReadJoint).OfType<ContactGroup>()])
        );
    }

    private void ReadRest(RestInsideSyntax line)
    {
        var suffix = line.Control?.Text ?? "";
        var index = controls.FindIndex(c => Is(c.Suffix, suffix));
        if (index >= 0)
        {
            var rest = controls[index].Positions.FindIndex(p => Is(p.Name, line.Position.Text));
            if (rest >= 0)
            {
                controls[index] = controls[index] with { AtRest = rest };
                return;
            }
        }

        if (TryNumber(line.Position.Text, out var travel) && travel is >= 0 and <= 10 && HasTrack)
        {
            dialRest = travel;
            return;
        }

        var names = index >= 0 ? controls[index].Positions.Select(p => $"'{p.Name}'") : [];
        Report(
            line.Position,
            $"'{define.Model.Text}' has no position '{line.Position.Text}' to rest in",
            names.Any() ? $"write one of {string.Join(", ", names)}" : null
        );
    }

    private bool HasTrack => insides.Exists(i => i is Inside.TrackInside);

    private void AddCoil(CoilInsideSyntax line)
    {
        var (start, finish) = (Resolve(line.Start), Resolve(line.Finish));
        Winding? winding = null;
        MagnetPole? magnet = null;
        var values = ImmutableArray.CreateBuilder<ValuePair>();
        foreach (var pair in line.Pairs)
        {
            switch (pair.Key.Text.ToUpperInvariant())
            {
                case "WIND":
                    winding = CoilWords.ReadWinding(pair.Value.Text);
                    ReportUnless(winding is not null, pair.Value, CoilWords.WindingProblem(pair.Value.Text));
                    break;
                case "MAGNET":
                    magnet = CoilWords.ReadMagnet(pair.Value.Text);
                    ReportUnless(magnet is not null, pair.Value, CoilWords.MagnetProblem(pair.Value.Text));
                    break;
                default:
                    values.Add(new ValuePair(pair.Key.Text, pair.Value.Text, pair.Value.Location));
                    break;
            }
        }

        if (start is not null && finish is not null)
        {
            insides.Add(
                new Inside.CoilInside(start.Name, finish.Name, line.Name?.Text, winding, magnet, values.ToImmutable())
            );
        }
    }

    private void AddTrack(TrackInsideSyntax line)
    {
        var (low, wiper, high) = (Resolve(line.Low), Resolve(line.Wiper), Resolve(line.High));
        Taper? taper = null;
        double? freeAt = null;
        foreach (var pair in line.Pairs)
        {
            if (Is(pair.Key, "taper"))
            {
                taper = TaperReader.Read(pair.Value.Text, out var problem);
                ReportUnless(taper is not null, pair.Value, problem ?? "");
            }
            else if (Is(pair.Key, "free-at") && TryNumber(pair.Value.Text, out var travel) && travel is >= 0 and <= 10)
            {
                freeAt = travel;
            }
            else
            {
                Report(
                    pair.Key,
                    $"a track has no '{pair.Key.Text}={pair.Value.Text}'",
                    "a track takes taper= and free-at="
                );
            }
        }

        if (low is not null && wiper is not null && high is not null)
        {
            insides.Add(new Inside.TrackInside(low.Name, wiper.Name, high.Name, line.Name?.Text, taper, freeAt));
        }
    }

    private void AddAmplifier(AmpInsideSyntax line)
    {
        var (input, output, common) = (Resolve(line.In), Resolve(line.Out), Resolve(line.Common));
        var (gain, inOhms, outOhms, idle, draw) = (1.0, 1e6, 0.0, 0.5, 0.0);
        string? supply = null;
        foreach (var pair in line.Pairs)
        {
            switch (pair.Key.Text.ToUpperInvariant())
            {
                case "GAIN" when TryNumber(pair.Value.Text, out var ratio):
                    gain = ratio;
                    break;
                case "IN":
                    inOhms = Value(pair, ValueUse.AmplifierInput) ?? inOhms;
                    break;
                case "OUT":
                    outOhms = Value(pair, ValueUse.AmplifierOutput) ?? outOhms;
                    break;
                case "SUPPLY":
                    supply = Resolve(pair.Value)?.Name;
                    break;
                case "IDLE" when TryPercent(pair.Value.Text, out var share):
                    idle = share;
                    break;
                case "DRAWS":
                    draw = Value(pair, ValueUse.SupplyCurrent) ?? draw;
                    break;
                default:
                    Report(
                        pair.Key,
                        $"an amplifier has no '{pair.Key.Text}={pair.Value.Text}'",
                        "it takes gain=1 in=1M out=470R supply=LUG idle=50% draws=0.4mA"
                    );
                    break;
            }
        }

        if (input is not null && output is not null && common is not null)
        {
            insides.Add(
                new Inside.AmplifierInside(
                    input.Name,
                    output.Name,
                    common.Name,
                    gain,
                    inOhms,
                    outOhms,
                    supply,
                    idle,
                    draw
                )
            );
        }
    }

    private void AddTwoLead(TwoLeadInsideSyntax line)
    {
        var (first, second) = (Resolve(line.First), Resolve(line.Second));
        if (first is null || second is null)
        {
            return;
        }

        insides.Add(
            line.Keyword.Text.ToUpperInvariant() switch
            {
                "RESISTOR" => new Inside.ResistorInside(first.Name, second.Name, Given(ValueUse.Resistor)),
                "CAP" => new Inside.CapacitorInside(first.Name, second.Name, Given(ValueUse.Capacitor)),
                "INDUCTOR" => new Inside.InductorInside(first.Name, second.Name, Given(ValueUse.Inductor)),
                _ => new Inside.BatteryInside(first.Name, second.Name, Given(ValueUse.Battery)),
            }
        );

        double? Given(ValueUse use) => line.Value is null ? null : Value(line.Value, use);
    }

    private double? Value(PairSyntax pair, ValueUse use) => Value(pair.Value, use);

    private double? Value(WordSyntax word, ValueUse use)
    {
        var reading = ValueReader.Read(word.Text, use);
        if (reading.Problem is { } problem)
        {
            sink.Add(
                ValueFindings.BadValue.At(word.Location, problem, reading.Suggestion is { } s ? $"write '{s}'" : null)
            );
        }

        return reading.Value;
    }

    private Terminal? Resolve(WordSyntax name)
    {
        if (Find(name.Text) is { } terminal)
        {
            return terminal;
        }

        var near = DidYouMean.Nearest(name.Text, terminals.Select(t => t.Name), allowed: 1);
        Report(
            name,
            $"'{define.Model.Text}' has no lug '{name.Text}'",
            near is null ? "name it under lugs, leads or inner" : $"did you mean '{near}'?"
        );
        return null;
    }

    private Terminal? Find(string name) => terminals.Find(t => Is(t.Name, name));

    private void ReportUnless(bool isRight, SyntaxNode at, string problem)
    {
        if (!isRight)
        {
            Report(at, problem, null);
        }
    }

    private void Report(SyntaxNode at, string message, string? help) =>
        sink.Add(DefinitionFindings.BadDefinition.At(at.Location, message, help));

    private static bool Is(WordSyntax word, string text) => Is(word.Text, text);

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static bool TryNumber(string text, out double number) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number);

    private static bool TryPercent(string text, out double share)
    {
        share = 0;
        var isPercent = text.EndsWith('%') && TryNumber(text[..^1], out share) && share <= 100;
        share /= 100;
        return isPercent;
    }
}
