namespace WireText.Drawing.Layout.Routing;

/// <summary>On which terms a path is looked for among the other wires.</summary>
/// <param name="Present">What each other user of a lane costs, or <see cref="Hard"/>.</param>
/// <param name="CrossingCost">What a perpendicular crossing costs.</param>
/// <param name="Haste">Quarters by which the distance ahead counts: 4 finds the cheapest path, more finds a good one sooner.</param>
internal readonly record struct SearchTerms(int Present, int CrossingCost, int Haste)
{
    /// <summary>The price at which a used lane is no lane at all.</summary>
    public const int Hard = -1;

    /// <summary>Only a path that costs less than this is of use; nothing dearer is looked at.</summary>
    public int Below { get; init; } = RouteCosts.Impossible;

    /// <summary>A node that no path may enter; -1 for none.</summary>
    public int ClosedNode { get; init; } = -1;

    /// <summary>True for the nodes beside the wires that a path should run along; null when it may go where it likes.</summary>
    public bool[]? Company { get; init; }
}
