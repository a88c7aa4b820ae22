using WireText.Text;

namespace WireText.Circuits;

/// <summary>How much one circuit may hold. What is larger was made by a program, or by mistake.</summary>
public static class CircuitLimits
{
    /// <summary>Parts and splices. Chosen: far more than a harness that anybody solders.</summary>
    public const int MaxParts = 10_000;

    /// <summary>Stretches of wire: ten for each part.</summary>
    public const int MaxWires = 100_000;

    /// <summary>Lugs, leads and points inside of all parts: ten for each part.</summary>
    public const int MaxLugs = 100_000;

    /// <summary>Coils, tracks and all else that the solver sees: five for each part.</summary>
    public const int MaxElements = 50_000;

    /// <summary>Lugs that are closed, counted in each position: twenty for each part.</summary>
    public const int MaxContacts = 200_000;

    /// <summary>Colours that a circuit names for itself. Chosen: nobody tells more of them apart.</summary>
    public const int MaxColours = 100;

    /// <summary>Stretches of wire in one drawing: past that it can be made but not read.</summary>
    public const int MaxDrawnWires = 2_000;

    internal static FindingDescription TooLargeToDraw { get; } =
        new(
            Id: "too-large-to-draw",
            Title: "there are more wires than one drawing holds",
            Severity: Severity.Error,
            Group: FindingGroup.Text,
            Why: """
            Past 2,000 stretches of wire a drawing can be made but not read. The circuit is checked all the same.
            """,
            Bad: "",
            Good: "",
            Mend: "Divide the circuit into several files."
        );
}
