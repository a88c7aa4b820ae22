using System.Xml.Linq;
using WireText.Measuring;
using WireText.Testing;

namespace WireText.Tests.Drawing.Random;

/// <summary>All that is wrong with a finished drawing. A wire that found no way is no fault where the sheet says so.</summary>
internal static class DrawingFaults
{
    private const string NotDrawn = "Not drawn: no free way was found for these wires";

    public static IReadOnlyList<PictureFault> Of(Drawn drawn, PictureMeasure measure)
    {
        var told = Told(drawn).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. measure.Faults.Where(fault =>
                fault.Kind is not (FaultKind.MissingWire or FaultKind.WrongEnd) || !told.Contains(fault.First.Id)
            ),
        ];
    }

    /// <summary>Wires that found no way and that a row under the drawing names, below the reason.</summary>
    private static IEnumerable<string> Told(Drawn drawn)
    {
        var circuit = drawn.Compiled.Circuit!;
        var texts = XDocument.Parse(drawn.Svg!).Descendants().Where(e => e.Name.LocalName == "text").ToList();
        var hasReason = texts.Exists(text => text.Value == NotDrawn);
        var rows = string.Join(
            ' ',
            texts.Where(text => (string?)text.Attribute("class") == "unrouted-row").Select(text => text.Value)
        );
        return drawn
            .Layout!.Unrouted.Select(id => circuit.Wires.Single(wire => wire.Id == id))
            .Where(wire => hasReason && rows.Contains($"{End(wire.From)} to {End(wire.To)}", StringComparison.Ordinal))
            .Select(wire => wire.Id);

        string End(int lug) => lug < 0 ? "cut" : circuit.NameOf(lug);
    }
}
