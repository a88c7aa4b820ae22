using WireText.Quantities;

namespace WireText.Circuits.Binding;

/// <summary>A value as a part's line says it: known, measured, or between what it lies.</summary>
/// <param name="Value">What is computed with, in SI units.</param>
/// <param name="Label">As it stands on the drawing.</param>
/// <param name="Doubt">Null where it is known.</param>
internal readonly record struct StatedValue(double Value, string Label, ValueDoubt? Doubt)
{
    /// <summary>How far a reading on a usual handheld meter may be off: 1 % of it. Common practice; not measured.</summary>
    private const double MeterTolerance = 0.01;

    /// <summary>How far it may be off when the line does not say; null for what is usual.</summary>
    public double? Tolerance { get; private init; }

    public static StatedValue Known(double value, Unit unit) => new(value, ValueText.Label(value, unit), null);

    /// <summary>What a meter read of this very part.</summary>
    /// <param name="nominal">What is printed on it; null where nobody says.</param>
    public static StatedValue Measured(double value, double? nominal, Unit unit) =>
        new(
            value,
            nominal is { } printed
                ? $"{ValueText.Label(printed, unit)} ({ValueText.Label(value, unit)})"
                : ValueText.Label(value, unit),
            null
        )
        {
            Tolerance = MeterTolerance,
        };

    /// <summary>Nobody knows it; computed with what is usual.</summary>
    public static StatedValue Unknown((double Least, double Usual, double Most) usual) =>
        new(usual.Usual, ValueUse.Unknown, new ValueDoubt(usual.Least, usual.Most));

    /// <summary>It lies between two values; computed with the one as far from either.</summary>
    public static StatedValue Between(double least, double most, Unit unit) =>
        new(
            Math.Sqrt(least * most),
            $"{ValueText.Label(least, unit)}..{ValueText.Label(most, unit)}",
            new ValueDoubt(least, most)
        );
}
