using System.Xml.Linq;
using WireText.Circuits;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Drawing;

/// <summary>No wire is told by its colour alone: its code stands on it, there or where its part is shown larger, or its ends and colour stand in words under the drawing.</summary>
public class ToldWireTests
{
    public static TheoryData<string, string> Pictures =>
        Rows.Of(
            from example in Repository.ExampleNames
            from theme in new[] { "light", "dark", "print" }
            select (example, theme)
        );

    [Theory, MemberData(nameof(Pictures))]
    public void Wire_WithAColour_HasATagOrARow(string example, string theme)
    {
        var drawn = Drawn.Of(
            new SourceText(example, File.ReadAllText(Repository.PathOf("examples", example))),
            new DrawOptions(LayoutEffort.Quick, Theme.Find(theme)!, example)
        );

        AssertEachIsTold(drawn.Compiled.Circuit!, XDocument.Parse(drawn.Svg!), bareToo: theme == "print");
    }

    [Theory, MemberData(nameof(ExampleDrawingTests.Examples), MemberType = typeof(ExampleDrawingTests))]
    public void Wire_OfACommittedDrawing_HasATagOrARow(string example)
    {
        var drawn = FullDrawings.Of(example);

        AssertEachIsTold(drawn.Compiled.Circuit!, XDocument.Parse(drawn.Svg!), bareToo: false);
    }

    /// <param name="bareToo">Bare wire is told by being thinner; on a print it stands in the table too.</param>
    private static void AssertEachIsTold(Circuit circuit, XDocument svg, bool bareToo)
    {
        var tags = OfClass(svg, "tag")
            .ToLookup(tag => (string)tag.Attribute("data-wire")!, tag => tag.Value.Trim(), StringComparer.Ordinal);
        var rows = string.Join(' ', OfClass(svg, "wire-row").Select(row => row.Value)) + " ";

        foreach (var wire in circuit.Wires.Where(wire => wire.Kind is WireKind.Wire or WireKind.Core))
        {
            if (wire.Colour is not { } colour || (colour.IsBare && !bareToo))
            {
                continue;
            }

            var row = $"{circuit.NameOf(wire.From)} to {circuit.NameOf(wire.To)} {colour.Name}";
            Assert.True(
                (tags[wire.Id].Any() && tags[wire.Id].All(tag => tag == colour.Tag))
                    || rows.Contains($"{row} ", StringComparison.Ordinal),
                $"{wire.Id}, {colour.Name}: no tag and no row"
            );
        }
    }

    private static IEnumerable<XElement> OfClass(XDocument svg, string name) =>
        svg.Descendants().Where(element => (string?)element.Attribute("class") == name);
}
