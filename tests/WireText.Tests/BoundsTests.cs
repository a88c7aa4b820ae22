using System.Globalization;
using WireText.Testing;

namespace WireText.Tests;

/// <summary>Holds the page on bounds to the bounds.</summary>
public class BoundsTests
{
    private const string Heading = """
        # Bounds

        What is read, and what a search looks at, is counted, and the count has an end. It is a count and not a clock, so that
        every machine stops at the same place and says the same. Each is far above what a harness takes.

        This page is written by `BoundsTests` from the constants themselves.

        | stage | what is counted | most | past it |
        | --- | --- | ---: | --- |

        """;

    [Fact]
    public void BoundsPage_IsWhatTheProgramKeeps() => AcceptedFile.Check("docs/bounds.md", Page());

    [Fact]
    public void Bounds_AreEachToldOnce() =>
        Every.Item(Bounds.All.CountBy(bound => (bound.Stage, bound.Counted)), told => Assert.Equal(1, told.Value));

    private static string Page() =>
        Heading
        + string.Concat(
            Bounds.All.Select(bound =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {bound.Stage} | {bound.Counted} | {bound.Most:N0} | {bound.Beyond} |\n"
                )
            )
        );
}
