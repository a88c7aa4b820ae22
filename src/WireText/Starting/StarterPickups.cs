using System.Collections.Immutable;

namespace WireText.Starting;

/// <summary>Which pickups a new wiring has.</summary>
/// <param name="Pickups">From the neck to the bridge.</param>
public sealed record StarterPickups(string Word, string Meaning, ImmutableArray<StarterPickup> Pickups) : IStarterAnswer
{
    private const string Single = "single-coil";
    private const string Humbucker = "humbucker";

    /// <summary>The first is taken where nothing is said.</summary>
    public static ImmutableArray<StarterPickups> All { get; } =
    [
        new("two-singles", "two single coils", [Neck(Single), Bridge(Single)]),
        new("single", "one single coil", [Bridge(Single)]),
        new("humbucker", "one humbucker", [Bridge(Humbucker)]),
        new("two-humbuckers", "two humbuckers", [Neck(Humbucker), Bridge(Humbucker)]),
        new("single-humbucker", "a single coil and a humbucker", [Neck(Single), Bridge(Humbucker)]),
        new("three-singles", "three single coils", [Neck(Single), new("middle", Single, "green"), Bridge(Single)]),
    ];

    /// <summary>The value of its pots. Common practice: 250k beside single coils, 500k where there is a humbucker.</summary>
    internal string PotValue => HasHumbucker ? "500k" : "250k";

    /// <summary>The value of its tone capacitor. Common practice: the smaller one beside the larger pot.</summary>
    internal string CapacitorValue => HasHumbucker ? "22n" : "47n";

    private bool HasHumbucker => Pickups.Any(pickup => pickup.IsBraided);

    private static StarterPickup Neck(string model) => new("neck", model, "white");

    private static StarterPickup Bridge(string model) => new("bridge", model, "yellow");
}

/// <summary>A pickup of a new wiring.</summary>
/// <param name="Model">Of the standard parts.</param>
/// <param name="Colour">Of its hot wire.</param>
public sealed record StarterPickup(string Name, string Model, string Colour)
{
    /// <summary>True where its leads are one core in a braid.</summary>
    internal bool IsBraided => Model == "humbucker";

    /// <summary>The name of its own volume.</summary>
    internal string Volume => $"vol-{Name}";
}
