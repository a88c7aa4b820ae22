using System.Collections.Immutable;
using System.Globalization;

namespace WireText.Quantities;

/// <summary>The colour bands of IEC 60062 on a resistor: figures, then the power of ten, then the tolerance where it is known.</summary>
public static class ColourBands
{
    /// <summary>How many figures have a colour; <see cref="ColourCode"/> lists these first, in their order.</summary>
    private const int Figures = 10;

    /// <summary>The powers of ten below one, from −1 downwards.</summary>
    private static readonly ImmutableArray<ColourCode> Fractions = [ColourCode.GD, ColourCode.SR, ColourCode.PK];

    /// <summary>The bands of a value without its tolerance: two figures where they are enough, else three, and the power of ten.</summary>
    /// <param name="ohms">In ohms.</param>
    /// <returns>Empty for a value that three figures cannot say; a single black band for a link of 0 Ω.</returns>
    public static ImmutableArray<ColourCode> Of(double ohms)
    {
        if (ohms == 0)
        {
            return [ColourCode.BK];
        }

        foreach (var figures in new[] { 2, 3 })
        {
            for (var power = -Fractions.Length; power < Figures; power++)
            {
                var whole = Math.Round(ohms / Math.Pow(10, power));
                if (HasFigures(whole, figures) && IsSame(whole * Math.Pow(10, power), ohms))
                {
                    return
                    [
                        .. whole
                            .ToString("0", CultureInfo.InvariantCulture)
                            .Select(figure => (ColourCode)(figure - '0')),
                        power < 0 ? Fractions[-power - 1] : (ColourCode)power,
                    ];
                }
            }
        }

        return [];
    }

    private static bool HasFigures(double whole, int figures) =>
        whole >= Math.Pow(10, figures - 1) && whole < Math.Pow(10, figures);

    private static bool IsSame(double one, double other) => Math.Abs(one - other) <= 1e-9 * Math.Abs(other);
}
