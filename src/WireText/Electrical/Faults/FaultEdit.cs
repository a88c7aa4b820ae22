using WireText.Circuits;
using WireText.Parts;

namespace WireText.Electrical.Faults;

/// <summary>One change of an instrument that is otherwise right. Several make a fault, one after the other.</summary>
public abstract record FaultEdit
{
    private FaultEdit() { }

    /// <summary>A join that does not hold.</summary>
    public sealed record LeaveOut(int Join) : FaultEdit;

    /// <summary>A run soldered to another lug.</summary>
    public sealed record MoveTo(int Join, int Lug) : FaultEdit;

    /// <summary>Two runs that have changed places at every lug where they are soldered.</summary>
    public sealed record ExchangeNodes(int One, int Other) : FaultEdit;

    /// <summary>Two lugs that have changed places for whatever is soldered there.</summary>
    public sealed record ExchangeLugs(int One, int Other) : FaultEdit;

    /// <summary>Two nodes that touch, or that something leaks between.</summary>
    /// <param name="Ohms">Null where nothing lies between.</param>
    public sealed record Bridge(int One, int Other, double? Ohms = null) : FaultEdit;

    /// <summary>A coil or a track of another value.</summary>
    public sealed record Scale(int Element, double Factor) : FaultEdit;

    /// <summary>A track of another law.</summary>
    public sealed record Law(int Element, Taper Taper) : FaultEdit;

    /// <summary>An end of an element that reaches its lug no more.</summary>
    /// <param name="End">Its place in <see cref="Element.Ends"/>.</param>
    public sealed record LiftEnd(int Element, int End) : FaultEdit;

    /// <summary>A leaf that closes in no position.</summary>
    public sealed record NeverCloses(int Leaf) : FaultEdit;

    /// <summary>A leaf that is closed in every position.</summary>
    public sealed record NeverOpens(int Leaf) : FaultEdit;

    /// <summary>A leaf with resistance in it.</summary>
    public sealed record Resists(int Leaf, double Ohms) : FaultEdit;
}
