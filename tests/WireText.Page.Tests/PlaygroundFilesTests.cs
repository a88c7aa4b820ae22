using WireText.Pages;
using WireText.Testing;

namespace WireText.Page.Tests;

/// <summary>What the playground shares with the other pages.</summary>
public class PlaygroundFilesTests
{
    /// <summary>Its colours are those of the page beside a text.</summary>
    [Fact]
    public void Colours_AreThoseOfThePages() =>
        AcceptedFile.Check("src/WireText.Playground/site/colours.css", LivePage.Colours);
}
