namespace WireText.Drawing.Layout.Routing;

/// <summary>What a wire pays, in whole numbers. A lane step is 10; the rest is worth so many steps of detour.</summary>
/// <remarks>Readers lose the most by crossings, then by bends, so a crossing is worth 16 steps and a bend 6; see docs/layout.md.</remarks>
internal static class RouteCosts
{
    /// <summary>The price of what cannot be: more than any path costs.</summary>
    public const int Impossible = int.MaxValue;

    /// <summary>The measure of all others: one pitch of lane.</summary>
    public const int Step = 10;

    /// <summary>Six steps: a wire goes that far round to be straight. Chosen by eye.</summary>
    public const int Bend = 60;

    /// <summary>Sixteen steps: a wire goes that far round before it crosses another. Chosen by eye.</summary>
    public const int Crossing = 160;

    /// <summary>A bend one step after a bend, away from a lug: a jog.</summary>
    public const int Jog = 60;

    /// <summary>A crossing one step from a bend: the hop has little room.</summary>
    public const int CrampedCrossing = 120;

    /// <summary>What a crossing one step from an own lug costs besides: the wire should be seen to end there.</summary>
    public const int CrossingBesideLug = 100;

    /// <summary>A crossing at which both wires have a corner beside it.</summary>
    public const int NoRoomToHop = 600;

    /// <summary>A step beside a lug that is not its own: a wire there could be read as soldered to it.</summary>
    public const int NearForeignLug = 30;

    /// <summary>A step close along a body: of equal ways the one with air beside it.</summary>
    public const int NearBody = 4;

    /// <summary>A step outside of where the parts lie: half a step, so that the page does not grow for nothing.</summary>
    public const int OutsideParts = 5;

    /// <summary>A step where the name of a lug would best stand, or across the tab of one. Chosen: see docs/layout.md.</summary>
    public const int OnName = 60;

    /// <summary>A step inside a part's outline: wires take the short way out.</summary>
    public const int InsidePart = 6;

    /// <summary>A step on the line of a body, which every wire crosses that ends inside it and none should run along.</summary>
    public const int OnOutline = 80;

    /// <summary>What a wire that joins two lugs of one part pays for each time that it crosses an outline: it should cut no corner of its own part.</summary>
    public const int EdgeOfOwnPart = 160;

    /// <summary>Leaving a lug by a side that is not one of its exits.</summary>
    public const int UnnaturalExit = 90;

    /// <summary>Landing beside another joint on the same surface.</summary>
    public const int CloseLanding = 400;

    /// <summary>Sharing the last step before a lug with another wire of that lug: they meet at the lug itself, slanted.</summary>
    public const int SharedStub = 250;

    /// <summary>A step of a cable's core that is not beside another core of it.</summary>
    public const int AwayFromCable = 30;

    /// <summary>What a lane that another wire has costs at most; see <see cref="Negotiation"/>.</summary>
    public const int MostPresent = 20_000;

    /// <summary>What each round adds to the price of a contested lane for good.</summary>
    public const int History = 12;
}
