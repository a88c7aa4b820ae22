using System.Collections.Immutable;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Parts;

/// <summary>What a <c>define</c> says is inside: coils, tracks, amplifiers and elements with two leads.</summary>
internal sealed class InsideReader(DefinitionLugs lugs, FindingSink sink)
{
    private readonly List<Inside> insides = [];

    public IReadOnlyList<Inside> All => insides;

    public bool HasTrack => insides.Exists(inside => inside is Inside.TrackInside);

    public void Add(CoilInsideSyntax line)
    {
        var (start, finish) = (lugs.Resolve(line.Start), lugs.Resolve(line.Finish));
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

    public void Add(TrackInsideSyntax line)
    {
        var (low, wiper, high) = (lugs.Resolve(line.Low), lugs.Resolve(line.Wiper), lugs.Resolve(line.High));
        Taper? taper = null;
        double? freeAt = null;
        foreach (var pair in line.Pairs)
        {
            if (Naming.Alike(pair.Key.Text, "taper"))
            {
                taper = TaperReader.Read(pair.Value.Text, out var problem);
                ReportUnless(taper is not null, pair.Value, problem ?? "");
            }
            else if (
                Naming.Alike(pair.Key.Text, "free-at") && DefinitionNumbers.TryTravel(pair.Value.Text, out var travel)
            )
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

    public void Add(AmpInsideSyntax line)
    {
        var (input, output, common) = (lugs.Resolve(line.In), lugs.Resolve(line.Out), lugs.Resolve(line.Common));
        var (gain, inOhms, outOhms, idle, draw) = (1.0, 1e6, 0.0, 0.5, 0.0);
        string? supply = null;
        foreach (var pair in line.Pairs)
        {
            switch (pair.Key.Text.ToUpperInvariant())
            {
                case "GAIN" when DefinitionNumbers.TryNumber(pair.Value.Text, out var ratio):
                    gain = ratio;
                    break;
                case "IN":
                    inOhms = Value(pair, ValueUse.AmplifierInput) ?? inOhms;
                    break;
                case "OUT":
                    outOhms = Value(pair, ValueUse.AmplifierOutput) ?? outOhms;
                    break;
                case "SUPPLY":
                    supply = lugs.Resolve(pair.Value)?.Name;
                    break;
                case "IDLE" when DefinitionNumbers.TryPercent(pair.Value.Text, out var share):
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

    public void Add(TwoLeadInsideSyntax line)
    {
        var (first, second) = (lugs.Resolve(line.First), lugs.Resolve(line.Second));
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

    private void ReportUnless(bool isRight, SyntaxNode at, string problem)
    {
        if (!isRight)
        {
            Report(at, problem, null);
        }
    }

    private void Report(SyntaxNode at, string message, string? help) =>
        sink.Add(DefinitionFindings.BadDefinition.At(at.Location, message, help));
}
