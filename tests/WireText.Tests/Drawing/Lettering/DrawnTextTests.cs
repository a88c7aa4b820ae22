using CsCheck;
using WireText.Drawing.Lettering;
using WireText.Testing;

namespace WireText.Tests.Drawing.Lettering;

public class DrawnTextTests
{
    [Theory]
    [InlineData("plain", "plain")]
    [InlineData("a\tb\nc", "a b c")]
    [InlineData("nul\0bell\a", "nul\uFFFDbell\uFFFD")]
    [InlineData("\uFFFE\uFFFF", "\uFFFD\uFFFD")]
    [InlineData("left\u202Eright\u202C", "leftright")]
    [InlineData("\U0001F3B8", "\U0001F3B8")]
    public void Clean_OfAnyText_IsOneLineOfValidXml(string text, string expected) =>
        Assert.Equal(expected, DrawnText.Clean(text));

    [Fact]
    public void Width_OfTextInParts_AddsUp() =>
        Samples.Each(
            Gen.Select(Gen.String[Gen.Char[' ', 'ž'], 0, 20], Gen.String[Gen.Char[' ', 'ž'], 0, 20]),
            100,
            (a, b) =>
                Assert.Equal(
                    DrawnText.Width(a + b, TextWeight.Medium, 2),
                    DrawnText.Width(a, TextWeight.Medium, 2) + DrawnText.Width(b, TextWeight.Medium, 2),
                    1e-9
                )
        );

    [Fact]
    public void Width_OfACharacterOutsideTheTable_IsAFullSquare() =>
        Assert.Equal(3, DrawnText.Width("漢", TextWeight.Regular, 3), 1e-9);

    [Fact]
    public void Fit_OfAnyText_IsNeverWider() =>
        Samples.Each(
            Gen.Select(Gen.String, Gen.Double[4, 40]),
            100,
            (text, width) =>
            {
                var fit = DrawnText.Fit(text, TextWeight.SemiBold, 3, width);
                Assert.True(DrawnText.Width(fit, TextWeight.SemiBold, 3) <= width);
                Assert.Equal(fit, DrawnText.Clean(fit));
            }
        );

    [Fact]
    public void Fit_OfALongText_EndsWithAnEllipsis() =>
        Assert.Matches("^a very.*…$", DrawnText.Fit("a very long name", TextWeight.SemiBold, 3, 16));

    [Fact]
    public void Clean_OfHalfACharacter_ReplacesIt() =>
        Assert.Equal("\uFFFDlone", DrawnText.Clean(new string(['\uD800', 'l', 'o', 'n', 'e'])));

    [Fact]
    public void Wrap_OfAnyText_KeepsEveryShortWordAndEveryLineInside() =>
        Samples.Each(
            Gen.String[Gen.Char['a', 'e'], 1, 5].Array[1, 30],
            100,
            words =>
            {
                var lines = DrawnText.Wrap(string.Join(' ', words), TextWeight.Regular, 2.6, 30);
                Every.Item(lines, line => Assert.True(DrawnText.Width(line, TextWeight.Regular, 2.6) <= 30));
                Assert.Equal(words, string.Join(' ', lines).Split(' '));
            }
        );
}
