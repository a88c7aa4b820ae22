using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Diagnosing;
using WireText.Electrical.Faults;
using WireText.Testing;
using WireText.Tests.Checks.Mutants.Harnesses;
using WireText.Text;

namespace WireText.Tests.Diagnosing;

/// <summary>Where a fault shows first, by what it takes to look there.</summary>
internal enum ShowsAt
{
    Position,
    Outside,
    Ear,
    Inside,
    Nowhere,
}

/// <summary>A circuit whose faults are injected one by one.</summary>
internal sealed class DiagnosisCase
{
    private readonly Forecast forecast;
    private readonly ImmutableArray<Measurement> positions;

    public DiagnosisCase(string name, string text)
    {
        Name = name;
        Circuit = Compilation.Of(new SourceText(name, text), NoSources.Instance).Circuit!;
        Instrument = Instrument.Of(Circuit);
        Faults = FaultList.Of(Instrument);
        forecast = Forecast.Of(Instrument);
        positions =
        [
            .. MeasurementList
                .Positions(Circuit)
                .Select(state => new Measurement(
                    new FoundAtPlug(Circuit.Outputs[0].Part, state, Turning: null),
                    IsByEar: false
                )),
        ];
    }

    /// <summary>The examples.</summary>
    public static ImmutableArray<DiagnosisCase> Examples =>
        [.. Repository.Examples.Select(path => new DiagnosisCase(Path.GetFileName(path), File.ReadAllText(path)))];

    /// <summary>Generated circuits that no weight and no threshold was chosen by.</summary>
    public static ImmutableArray<DiagnosisCase> Generated =>
        [.. UsualHarnesses.All.Take(25).Select(one => new DiagnosisCase($"generated {one.Number}", one.Text))];

    public string Name { get; }

    public Circuit Circuit { get; }

    public Instrument Instrument { get; }

    public ImmutableArray<Fault> Faults { get; }

    /// <summary>A fault at one of its sizes, the sizes going round.</summary>
    public FaultSize SizeOf(Fault fault) => fault.Sizes[fault.Index % fault.Sizes.Length];

    public ShowsAt WhereShown(Fault fault)
    {
        // A forecast keeps what it has worked out: one at a time asks it.
        List<Measurement> showing;
        lock (forecast)
        {
            showing = [.. forecast.Showing(fault, SizeOf(fault), MeasurementList.Of(Instrument, [fault]))];
        }

        return showing.Exists(positions.Contains) ? ShowsAt.Position
            : showing.Exists(one => one is { IsByEar: false, IsInside: false }) ? ShowsAt.Outside
            : showing.Exists(one => one.IsByEar) ? ShowsAt.Ear
            : showing.Count > 0 ? ShowsAt.Inside
            : ShowsAt.Nowhere;
    }

    /// <summary>True when an explanation shows at the plug's positions what the fault shows there.</summary>
    public bool IsAlikeAtThePlug(Explanation one, Fault fault) =>
        one.Faults.Any(other =>
            other.Index == fault.Index
            || positions.All(at => forecast.With(other, other.Sizes[0], at) == forecast.With(fault, SizeOf(fault), at))
        )
        || (
            one.Kind == ExplanationKind.NothingWrong
            && positions.All(at => forecast.Right(at) == forecast.With(fault, SizeOf(fault), at))
        );

    public BrokenInstrument Break(Fault fault) => new(Instrument, [(fault, SizeOf(fault))], $"{Name}: {fault.Words}");

    public Repair Diagnose(Fault fault) =>
        Repair.Of(Circuit, Break(fault), explanation => explanation.Faults.Any(one => one.Index == fault.Index));
}
