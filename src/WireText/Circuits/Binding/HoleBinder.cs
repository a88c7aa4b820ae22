using System.Collections.Immutable;
using System.Globalization;
using WireText.Geometry;
using WireText.Parts;

namespace WireText.Circuits.Binding;

/// <summary>What is drilled for one part: what its line says over what its definition says.</summary>
internal static class HoleBinder
{
    /// <summary>The key of a part's line: a diameter, or <c>none</c>.</summary>
    public const string Key = "hole";

    private const string Unit = "mm";
    private const string NoHole = "none";

    public static (ImmutableArray<PartHole> Holes, HoleSource From) Bind(PartKeys keys, PartDefinition definition)
    {
        if (PartKinds.MayHaveAHole(definition.Kind) && keys.Of(Key) is { } pair)
        {
            if (string.Equals(pair.Value.Text, NoHole, StringComparison.OrdinalIgnoreCase))
            {
                return ([], HoleSource.Line);
            }

            var shape = new HoleShape.Round(Read(pair.Value.Text));
            keys.ReportUnless(
                shape.IsPossible,
                pair.Value,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"'{pair.Value.Text}' is no size of a hole; write its diameter up to {HoleShape.Largest} mm, such as hole=9.5mm, or hole=none"
                )
            );
            if (shape.IsPossible)
            {
                return (WithMain(definition.Holes, shape), HoleSource.Line);
            }
        }

        return definition.Holes.IsEmpty
            ? ([], PartKinds.SitsInAHole(definition.Kind) ? HoleSource.Unknown : HoleSource.Nobody)
            : (definition.Holes, HoleSource.Definition);
    }

    /// <summary>The main hole is another one; those for screws stay.</summary>
    private static ImmutableArray<PartHole> WithMain(ImmutableArray<PartHole> holes, HoleShape shape) =>
        holes.IsEmpty ? [new PartHole(shape, new Point(0, 0))] : holes.SetItem(0, holes[0] with { Shape = shape });

    /// <summary>In millimetres; 0 for what is no number.</summary>
    private static double Read(string text)
    {
        var number = text.EndsWith(Unit, StringComparison.OrdinalIgnoreCase) ? text[..^Unit.Length] : text;
        return double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var size)
            ? size
            : 0;
    }
}
