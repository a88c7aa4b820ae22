using System.Globalization;
using System.Text;
using WireText.Drawing.Lettering;
using WireText.Quantities;
using WireText.Testing;
using static WireText.Tests.Drawing.Lettering.ColourDifference;

namespace WireText.Tests.Drawing.Lettering;

public class ThemeTests
{
    private const double ToldApart = 10;

    // Pairs of the table of test data in Sharma, Wu and Dalal 2005, with its four decimals. From memory.
    [Theory]
    [InlineData(50.0, 2.6772, -79.7751, 50.0, 0.0, -82.7485, 2.0425)]
    [InlineData(50.0, 3.1571, -77.2803, 50.0, 0.0, -82.7485, 2.8615)]
    [InlineData(50.0, 2.8361, -74.0200, 50.0, 0.0, -82.7485, 3.4412)]
    [InlineData(50.0, -1.3802, -84.2814, 50.0, 0.0, -82.7485, 1.0000)]
    [InlineData(50.0, 0.0, 0.0, 50.0, -1.0, 2.0, 2.3669)]
    [InlineData(50.0, 2.49, -0.001, 50.0, -2.49, 0.0009, 7.1792)]
    [InlineData(50.0, 2.49, -0.001, 50.0, -2.49, 0.0011, 7.2195)]
    [InlineData(50.0, 2.5, 0.0, 73.0, 25.0, -18.0, 27.1492)]
    [InlineData(50.0, 2.5, 0.0, 61.0, -5.0, 29.0, 22.8977)]
    [InlineData(60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644)]
    [InlineData(22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373)]
    [InlineData(2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082)]
    public void Ciede2000_OfPublishedPairs_IsThePublishedDifference(
        double l1,
        double a1,
        double b1,
        double l2,
        double a2,
        double b2,
        double expected
    ) => Assert.Equal(expected, Ciede2000((l1, a1, b1), (l2, a2, b2)), 0.00006);

    [Fact]
    public void Lab_OfPureRed_IsThePublishedValue()
    {
        // sRGB red under D65: L* 53.24, a* 80.09, b* 67.20 (commonly printed; from memory).
        var (l, a, b) = Lab(new Colour(255, 0, 0), Sight.Normal);

        Assert.Equal(53.24, l, 0.02);
        Assert.Equal(80.09, a, 0.02);
        Assert.Equal(67.20, b, 0.02);
    }

    [Fact]
    public void Dichromacies_OfGrey_LeaveItGrey() => Every.Item(RowSums(), sum => Assert.Equal(1, sum, 0.00001));

    [Fact]
    public void Insulation_OfAnyTwoColours_IsToldApartWithNormalSight() =>
        Every.Item(Pairs(), pair => Assert.True(Distance(pair, Sight.Normal) >= ToldApart, $"{pair}"));

    [Fact]
    public void Casings_OnEveryPaper_KeepTheWireOffThePaper()
    {
        foreach (var theme in Every.Of(Theme.All))
        {
            foreach (var code in Enum.GetValues<ColourCode>())
            {
                var core = Between(Theme.Insulation(code), theme.Paper, Sight.Normal);
                var casing = Between(theme.CasingOf(code), theme.Paper, Sight.Normal);
                Assert.True(Math.Max(core, casing) >= 25, $"{theme.Name} {code}: {core:F1}, {casing:F1}");
            }
        }
    }

    // WCAG 2.1: black on white is 21:1. #767676 is known as the lightest grey that has 4.5:1 on white, #949494 as the lightest
    // with 3:1 (common practice, from memory).
    [Theory]
    [InlineData(0x00, 21, 21)]
    [InlineData(0x76, 4.5, 4.56)]
    [InlineData(0x77, 4.4, 4.5)]
    [InlineData(0x94, 3, 3.04)]
    [InlineData(0x95, 2.9, 3)]
    public void Contrast_OfAGreyOnWhite_IsThePublishedValue(byte grey, double least, double most) =>
        Assert.InRange(Contrast.Between((grey, grey, grey), (255, 255, 255)), least - 1e-9, most + 1e-9);

    /// <summary>Luminance alone, as on a grey print: the core or its casing stands out from the paper. The dark theme's misses are on the page.</summary>
    [Theory, InlineData("light"), InlineData("print")]
    public void Wires_InGrey_StandOutFromThePaper(string name)
    {
        var theme = Theme.Find(name)!;

        Assert.Empty(LostInGrey(theme));
        Assert.True(Ratio(theme.UnstatedCasing, theme.Paper) >= Contrast.OfGraphics);
        Assert.True(Ratio(theme.MetalLine, theme.Paper) >= Contrast.OfGraphics);
    }

    [Fact]
    public void Colours_AsMeasured_AreWrittenDown() => AcceptedFile.Check("docs/colours.md", Page());

    /// <summary>Colours of which neither the core nor the casing has the contrast that is asked for.</summary>
    private static IEnumerable<ColourCode> LostInGrey(Theme theme) =>
        Enum.GetValues<ColourCode>().Where(code => EdgeContrast(code, theme) < Contrast.OfGraphics);

    private static double EdgeContrast(ColourCode code, Theme theme) =>
        Math.Max(Ratio(Theme.Insulation(code), theme.Paper), Ratio(theme.CasingOf(code), theme.Paper));

    /// <summary>The contrast ratio of luminances.</summary>
    private static double Ratio(Colour one, Colour other) => Contrast.Between(Bytes(one), Bytes(other));

    private static (byte, byte, byte) Bytes(Colour colour) => (colour.Red, colour.Green, colour.Blue);

    private static IEnumerable<(ColourCode A, ColourCode B)> Pairs() =>
        from a in Enum.GetValues<ColourCode>()
        from b in Enum.GetValues<ColourCode>()
        where a < b
        select (a, b);

    private static double Distance((ColourCode A, ColourCode B) pair, Sight sight) =>
        Between(Theme.Insulation(pair.A), Theme.Insulation(pair.B), sight);

    private static string Page()
    {
        var page = new StringBuilder(
            """
            # The colours of wires, measured

            Written by `ThemeTests`; it measures the program's own colours.

            Insulation colours and their codes (IEC 60757) as drawn, each on a darker casing. In grey, on white paper, a wire is seen by
            its core or by its casing: the contrast of luminance (WCAG 2.1, "contrast ratio") of one of them is at least 3, which is what
            WCAG asks of the parts of a picture that are needed to understand it. Grey is the lightness L* of CIELAB, 0 to 100.

            A colour that a file names for itself is drawn in its own paint, on a casing half as bright; where dark paper would swallow both
            the casing is light. `OwnColourTests` holds the core or the casing of any paint to a contrast of 3, on every paper.

            | code | colour | casing on light paper | grey | contrast of the core | of the casing |
            | --- | --- | --- | --- | --- | --- |

            """
        );
        foreach (var code in Enum.GetValues<ColourCode>())
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"| {code} | `{Theme.Insulation(code)}` | `{Theme.Light.CasingOf(code)}` | {Lab(Theme.Insulation(code), Sight.Grey).L:F0} | {Ratio(Theme.Insulation(code), Theme.Print.Paper):F1} | {Ratio(Theme.Print.CasingOf(code), Theme.Print.Paper):F1} |\n"
            );
        }

        page.Append("\nOn dark paper, which nobody prints, these stay below 3: ")
            .AppendJoin(
                ", ",
                LostInGrey(Theme.Dark)
                    .Select(code =>
                        string.Create(CultureInfo.InvariantCulture, $"{code} {EdgeContrast(code, Theme.Dark):F1}")
                    )
                    .DefaultIfEmpty("none")
            )
            .Append(".\n");
        page.Append(
            """

            The difference between two colours is CIEDE2000 on CIELAB under D65. Sight without one sort of cone is simulated on linear
            RGB with the matrices of Machado, Oliveira and Fernandes (2009) for full severity; the real eye of a person may differ. Grey is
            the luminance alone, as on a grey print.

            | sight | smallest difference | between |
            | --- | --- | --- |

            """
        );
        foreach (var sight in Enum.GetValues<Sight>())
        {
            var (a, b) = Pairs().MinBy(pair => Distance(pair, sight));
            page.Append(CultureInfo.InvariantCulture, $"| {sight} | {Distance((a, b), sight):F1} | {a} and {b} |\n");
        }

        page.Append(
            """

            ## Told apart by their tags

            These pairs differ by less than 10 in some sight. A wire carries its code on a tag, and one too short for a tag is in the table
            of wires: `ToldWireTests` holds every coloured wire of every example to that, in every theme. Bare wire has no tag and is told
            by being thinner; in the theme `print` it is in the table too.

            | pair | normal | protanopia | deuteranopia | tritanopia | grey |
            | --- | --- | --- | --- | --- | --- |

            """
        );
        foreach (var pair in Pairs().Where(pair => Enum.GetValues<Sight>().Any(s => Distance(pair, s) < ToldApart)))
        {
            page.Append(CultureInfo.InvariantCulture, $"| {pair.A} and {pair.B} |");
            foreach (var sight in Enum.GetValues<Sight>())
            {
                page.Append(CultureInfo.InvariantCulture, $" {Distance(pair, sight):F1} |");
            }

            page.Append('\n');
        }

        return page.ToString();
    }
}
