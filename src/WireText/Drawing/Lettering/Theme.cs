using System.Collections.Immutable;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Drawing.Lettering;

/// <summary>Every colour on a picture. Insulation keeps its own colour in every theme; what surrounds it changes.</summary>
public sealed record Theme
{
    public static readonly Theme Light = new()
    {
        Name = "light",
        Paper = Colour.Hex(0xFCFBF8),
        Ink = Colour.Hex(0x1D2126),
        QuietInk = Colour.Hex(0x5C636B),
        PartFill = Colour.Hex(0xECEBE6),
        PartLine = Colour.Hex(0x8A8F96),
        Detail = Colour.Hex(0xB4B7BA),
        Pole = Colour.Hex(0xDFDED8),
        Shell = Colour.Hex(0xDDE0E4),
        Wafer = Colour.Hex(0xE3DCC8),
        Tin = Colour.Hex(0xC3C8CE),
        Solder = Colour.Hex(0xAEB4BB),
        MetalLine = Colour.Hex(0x6B7178),
        Error = Colour.Hex(0xB3261E),
        Warning = Colour.Hex(0xB26A00),
        Note = Colour.Hex(0x3A5A8C),
        Curves = Hexes(0x1B4F9C, 0xC8500A, 0x12805C, 0xC062A8, 0x5FB0DC, 0x5A3A06, 0x24272B, 0xD9A21B),
        Ramp = Hexes(0x14204F, 0x1C6F8C, 0xD58A00),
        HasFills = true,
    };

    public static readonly Theme Dark = new()
    {
        Name = "dark",
        Paper = Colour.Hex(0x15181C),
        Ink = Colour.Hex(0xE8E6E1),
        QuietInk = Colour.Hex(0xA3A8AE),
        PartFill = Colour.Hex(0x23272C),
        PartLine = Colour.Hex(0x6A7077),
        Detail = Colour.Hex(0x454B52),
        Pole = Colour.Hex(0x2D3238),
        Shell = Colour.Hex(0x2B3036),
        Wafer = Colour.Hex(0x36332B),
        Tin = Colour.Hex(0x8D949C),
        Solder = Colour.Hex(0xA4ABB3),
        MetalLine = Colour.Hex(0xC9CED4),
        Error = Colour.Hex(0xFF8A80),
        Warning = Colour.Hex(0xF5B04C),
        Note = Colour.Hex(0x8FB4EA),
        Curves = Hexes(0x5C97F5, 0xFF8A3D, 0x35B98A, 0xC766AE, 0xBDE8FF, 0x9A7420, 0xF5F2EC, 0xFFDD66),
        Ramp = Hexes(0x4E7BE0, 0x4FC0B5, 0xFFDC7A),
        HasFills = true,
        HasLightBlackCasing = true,
    };

    public static readonly Theme Print = Light with
    {
        Name = "print",
        Paper = Colour.Hex(0xFFFFFF),
        PartFill = Colour.Hex(0xFFFFFF),
        Pole = Colour.Hex(0xF1F1F1),
        Shell = Colour.Hex(0xFFFFFF),
        Wafer = Colour.Hex(0xFFFFFF),
        PartLine = Colour.Hex(0x5C636B),
        HasFills = false,
        HasTagsOnAll = true,
    };

    public required string Name { get; init; }

    public required Colour Paper { get; init; }

    public required Colour Ink { get; init; }

    /// <summary>For what is read second: lug labels, the small print of the title block.</summary>
    public required Colour QuietInk { get; init; }

    public required Colour PartFill { get; init; }

    public required Colour PartLine { get; init; }

    /// <summary>The poles of a pickup: words lie on them.</summary>
    public required Colour Pole { get; init; }

    /// <summary>Lines inside a part.</summary>
    public required Colour Detail { get; init; }

    /// <summary>A pot's case, a switch's frame.</summary>
    public required Colour Shell { get; init; }

    /// <summary>The board that lugs are riveted to.</summary>
    public required Colour Wafer { get; init; }

    public required Colour Tin { get; init; }

    public required Colour Solder { get; init; }

    /// <summary>Round lugs and joints.</summary>
    public required Colour MetalLine { get; init; }

    public required Colour Error { get; init; }

    public required Colour Warning { get; init; }

    public required Colour Note { get; init; }

    /// <summary>Colours of curves that are of different kinds, told apart by everyone; their dashes differ too.</summary>
    public required ImmutableArray<Colour> Curves { get; init; }

    /// <summary>Colours that curves in a sequence pass through; their lightness goes one way, so that they read in grey.</summary>
    public required ImmutableArray<Colour> Ramp { get; init; }

    public required bool HasFills { get; init; }

    /// <summary>On dark paper black insulation has a light casing.</summary>
    public bool HasLightBlackCasing { get; init; }

    /// <summary>Wires without room for a tag go to the table of wires, bare ones too.</summary>
    public bool HasTagsOnAll { get; init; }

    /// <summary>Every theme; the first is taken when none is named.</summary>
    public static ImmutableArray<Theme> All { get; } = [Light, Dark, Print];

    /// <summary>The theme of that name, or null.</summary>
    public static Theme? Find(string name) => All.FirstOrDefault(theme => Naming.Alike(theme.Name, name));

    /// <summary>The colour of insulation, or of bare copper.</summary>
    public static Colour Insulation(ColourCode code) =>
        code switch
        {
            ColourCode.BK => Colour.Hex(0x1B1B1D),
            ColourCode.BN => Colour.Hex(0x7B4A22),
            ColourCode.RD => Colour.Hex(0xCF2A2A),
            ColourCode.OG => Colour.Hex(0xEC7C14),
            ColourCode.YE => Colour.Hex(0xF0BF00),
            ColourCode.GN => Colour.Hex(0x2C9247),
            ColourCode.BU => Colour.Hex(0x1F5FCC),
            ColourCode.VT => Colour.Hex(0x7A3DBE),
            ColourCode.GY => Colour.Hex(0x868C93),
            ColourCode.WH => Colour.Hex(0xFFFFFF),
            ColourCode.PK => Colour.Hex(0xEE86AC),
            ColourCode.GD => Colour.Hex(0xB8912F),
            ColourCode.TQ => Colour.Hex(0x18AFA9),
            ColourCode.SR => Colour.Hex(0xB9BEC4),
            _ => Colour.Hex(0xB97450),
        };

    /// <summary>The thin dark edge that keeps a wire's colour off the paper.</summary>
    public Colour CasingOf(ColourCode code) =>
        code switch
        {
            ColourCode.BK => HasLightBlackCasing ? Colour.Hex(0x8C9299) : Colour.Hex(0x000000),
            ColourCode.BN => Colour.Hex(0x452811),
            ColourCode.RD => Colour.Hex(0x7C1414),
            ColourCode.OG => Colour.Hex(0x8F4607),
            ColourCode.YE => Colour.Hex(0x7F6400),
            ColourCode.GN => Colour.Hex(0x14522A),
            ColourCode.BU => Colour.Hex(0x0F3577),
            ColourCode.VT => Colour.Hex(0x452070),
            ColourCode.GY => Colour.Hex(0x4A4F55),
            ColourCode.WH => Colour.Hex(0x5A6068),
            ColourCode.PK => Colour.Hex(0x93405F),
            ColourCode.GD => Colour.Hex(0x654D12),
            ColourCode.TQ => Colour.Hex(0x0B5F5C),
            ColourCode.SR => Colour.Hex(0x62676D),
            _ => Colour.Hex(0x643A22),
        };

    /// <summary>How a wire of that colour is painted.</summary>
    public static Colour Insulation(PlainColour colour) =>
        colour is OwnColour own ? Colour.Hex(own.Paint) : Insulation(((StandardColour)colour).Colour);

    /// <summary>The edge of a wire of that colour.</summary>
    public Colour CasingOf(PlainColour colour) =>
        colour is OwnColour own
            ? OwnCasing.Of(Colour.Hex(own.Paint), Paper)
            : CasingOf(((StandardColour)colour).Colour);

    /// <summary>A lead whose colour the text does not say.</summary>
    public Colour UnstatedCore => Tin;

    public Colour UnstatedCasing => PartLine;

    public Colour Of(Severity severity) =>
        severity switch
        {
            Severity.Error => Error,
            Severity.Warning => Warning,
            _ => Note,
        };

    private static ImmutableArray<Colour> Hexes(params ReadOnlySpan<int> values)
    {
        var colours = ImmutableArray.CreateBuilder<Colour>(values.Length);
        foreach (var value in values)
        {
            colours.Add(Colour.Hex(value));
        }

        return colours.MoveToImmutable();
    }
}
