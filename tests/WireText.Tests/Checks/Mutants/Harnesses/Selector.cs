using System.Collections.Immutable;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>How pickups come to the common output.</summary>
/// <param name="Model">The switch; empty for none: all pickups are always on.</param>
/// <param name="Pickups">How many there are.</param>
/// <param name="Lugs">
/// Each lug of it and what it is joined with: <c>0</c> the output of the first pickup's own controls, <c>0-</c> its low end,
/// <c>out</c>, <c>ground</c>.
/// </param>
/// <param name="Positions">For each position its name and the pickups that are heard; with <c>s</c> in series.</param>
internal sealed record Selector(string Model, int Pickups, string Lugs, string Positions)
{
    /// <summary>Of the standard switches those that choose pickups, each in a usual way.</summary>
    public static ImmutableArray<Selector> All { get; } =
    [
        new("", 1, "", ""),
        new("lever-3way", 2, "A1=1 A2=1 B3=0 B2=0 A0=out B0=out", "bridge:1 both:01 neck:0"),
        new("toggle-3way", 2, "A1=0 B1=1 A0=out B0=out case=ground", "neck:0 both:01 bridge:1"),
        new("lever-5way", 3, "A1=2 A2=1 A3=0 A0=out", "bridge:2 bridge-middle:12 middle:1 middle-neck:01 neck:0"),
        new("spdt", 2, "A1=0 A2=1 A0=out", "neck:0 bridge:1"),
        new("", 2, "", ""),
        new(
            "lever-5way-4pole",
            3,
            "A1=2 A2=2 B2=1 B3=1 B4=1 C4=0 C5=0 A0=out B0=out C0=out",
            "bridge:2 bridge-middle:12 middle:1 middle-neck:01 neck:0"
        ),
        new("dpdt-on-on-on-a-first", 2, "A0=out A2=1 B1=0 B0=out", "neck:0 both:01 bridge:1"),
        new(
            "lever-4way",
            2,
            "A0=out A1=1 A2=1 B0=0- B1=out B2=ground B3=ground B4=1",
            "bridge:1 both:01 neck:0 series:0s1"
        ),
        new("slide-dpdt", 2, "A1=0 A2=1 A0=out", "neck:0 bridge:1"),
        new(
            "rotary-2x6",
            3,
            "A1=2 A2=2 A3=1 A4=1 A5=0 A6=2 B2=1 B4=0 B6=0 A0=out B0=out",
            "bridge:2 bridge-middle:12 middle:1 middle-neck:01 neck:0 outer:02"
        ),
        new("dpdt-on-on-on-b-first", 2, "A1=0 A0=out B2=1 B0=out", "neck:0 both:01 bridge:1"),
        new("dpdt", 2, "A1=0 A2=1 A0=out", "neck:0 bridge:1"),
        new("dpdt-on-on-on-bridging", 2, "A1=0 A2=1 A0=out", "neck:0 both:01 bridge:1"),
        new("blend", 2, "", ""),
    ];

    /// <summary>True where the low end of the first pickup is a lug of the switch, and its hot end always on the output.</summary>
    public bool LiftsGround => Lugs.Contains("0-", StringComparison.Ordinal);

    public bool IsBlend => Model == "blend";

    public IEnumerable<(string Lug, string Net)> Joints =>
        Lugs.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(joint => (joint.Split('=')[0], joint.Split('=')[1]));

    public IEnumerable<(string Name, string Heard)> Stops =>
        Positions
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(stop => (stop.Split(':')[0], stop.Split(':')[1]));
}
