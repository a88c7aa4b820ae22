using System.Collections.Immutable;
using WireText.Building;
using WireText.Circuits;
using WireText.Documents;
using WireText.Drawing.Layout;
using WireText.Drawing.Shapes;

namespace WireText.Sheets;

/// <summary>What a build sheet is made from.</summary>
/// <param name="Diagram">With the numbers of the joints; null for a circuit that is too large to draw.</param>
/// <param name="Layout">Where the diagram's wires run; null without one.</param>
/// <param name="FileName">Null for standard input.</param>
/// <param name="Count">How many are built.</param>
public sealed record SheetContents(
    Circuit Circuit,
    WorkOrder Order,
    Picture? Diagram,
    LayoutResult? Layout,
    string? FileName,
    int Count
)
{
    /// <summary>What is to be measured when all is soldered; empty for a circuit without an output jack.</summary>
    public ImmutableArray<Block> BenchTest { get; init; } = [];

    /// <summary>True for a mod: the order of work changes the circuit below it and builds nothing else.</summary>
    public bool IsMod { get; init; }

    public string Title => $"Build sheet: {Circuit.Title ?? "untitled wiring"}";

    /// <summary>What stands at the foot of each page.</summary>
    public string Foot => CircuitMark.Foot(FileName, Circuit);

    /// <summary>Those that the work lays: of a mod what lies there already is not on the list.</summary>
    public ImmutableArray<WireRow> Wires => WireRow.ListOf(Circuit, Order, Layout).RemoveAll(wire => !wire.IsLaid);

    /// <summary>The parts to have: those that the work mounts, and those whose own leads it solders.</summary>
    public ImmutableArray<Part> Parts
    {
        get
        {
            var mounted = Order.Steps.OfType<WorkStep.Mount>().Select(step => step.Part);
            var laid = Order.Steps.OfType<WorkStep.Lay>().SelectMany(step => step.Wires).ToHashSet();
            var hung = Circuit.Parts.Where(WorkOrder.HangsByItsLeads).Where(IsHung).Select(part => part.Index);
            return [.. mounted.Concat(hung).Distinct().Order().Select(part => Circuit.Parts[part])];

            // One that is there already has a lead that stays where it is.
            bool IsHung(Part part)
            {
                int[] leads = [.. Circuit.Wires.Where(wire => part.Lugs.Any(wire.Touches)).Select(wire => wire.Index)];
                return leads.Length > 0 && Array.TrueForAll(leads, laid.Contains);
            }
        }
    }
}
