namespace WireText.Parts;

/// <summary>The kinds of part that the tool knows by name: it draws them, counts them or asks of them more than their definition says.</summary>
public static class PartKinds
{
    public const string Pickup = "pickup";
    public const string Pot = "pot";

    /// <summary>Its models differ too much for one to be taken when none is named.</summary>
    public const string Switch = "switch";

    public const string Button = "button";

    /// <summary>The outputs of a circuit are these; their positions say which plug is in.</summary>
    public const string Jack = "jack";

    public const string Cap = "cap";
    public const string Resistor = "resistor";
    public const string Inductor = "inductor";
    public const string Battery = "battery";
    public const string Preamp = "preamp";

    /// <summary>Anything bare that must be grounded: it is its own lug.</summary>
    public const string Metal = "metal";

    /// <summary>Leads soldered together in the air: it is its own lug.</summary>
    public const string Splice = "splice";

    /// <summary>True for a kind that a hole is drilled for; one of the user's own is taken for such a kind.</summary>
    public static bool SitsInAHole(string kind) => MayHaveAHole(kind) && kind is not (Battery or Preamp);

    /// <summary>False for what hangs by its leads, is there already, or lies in a route.</summary>
    public static bool MayHaveAHole(string kind) =>
        kind is not (Pickup or Cap or Resistor or Inductor or Metal or Splice);
}
