using System.Collections.Concurrent;
using WireText.Building;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Frames;
using WireText.Output;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Frames;

/// <summary>The frames of a circuit, with the circuit and its order of work.</summary>
internal sealed record Framed(Compilation Compiled, WorkOrder Order, FrameSequence Sequence)
{
    private static readonly ConcurrentDictionary<string, Lazy<Framed>> Examples = new(StringComparer.Ordinal);

    public LayoutResult Layout => Compiled.PlanFor(LayoutEffort.Quick)!.Layout;

    /// <summary>The steps of an example, worked out once for all tests.</summary>
    public static Framed Example(string name) =>
        Examples
            .GetOrAdd(
                name,
                n => new Lazy<Framed>(() => Steps(File.ReadAllText(Repository.PathOf("examples", n)), FrameSize.FullHd))
            )
            .Value;

    public static Framed Steps(string text, FrameSize size) =>
        Steps(Compilation.Of(new SourceText("test.wiring", text), NoSources.Instance), size);

    public static Framed Steps(Compilation compiled, FrameSize size)
    {
        var circuit = compiled.Circuit!;
        var order = compiled.BaseCircuit is { } stock ? WorkOrder.Between(stock, circuit) : WorkOrder.Of(circuit);
        var plan = compiled.PlanFor(LayoutEffort.Quick)!;
        return new Framed(
            compiled,
            order,
            FrameSequence.OfSteps(circuit, order, plan.Faces, plan.Layout, Theme.Light, size)
        );
    }

    public static Framed Positions(string text, FrameSize size)
    {
        var compiled = Compilation.Of(new SourceText("test.wiring", text), NoSources.Instance);
        var circuit = compiled.Circuit!;
        var plan = compiled.PlanFor(LayoutEffort.Quick)!;
        var views = PositionViews.Of(circuit, compiled.Study!);
        return new Framed(
            compiled,
            WorkOrder.Of(circuit),
            FrameSequence.OfPositions(circuit, views, plan.Faces, plan.Layout, Theme.Light, size)
        );
    }
}
