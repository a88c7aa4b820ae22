using System.Collections.Immutable;
using WireText.Drawing.Lettering;
using WireText.Drawing.Shapes;
using WireText.Electrical.Responses;

namespace WireText.Drawing.Charts;

/// <summary>How curves are told apart: by colour, by dashes for who sees no colour, and by their labels.</summary>
internal static class CurveStyles
{
    /// <summary>Dash and gap in turn, in millimetres of paper.</summary>
    private static readonly ImmutableArray<ImmutableArray<double>> Dashes =
    [
        [],
        [2.8, 1.2],
        [0.9, 0.9],
        [4.2, 1, 0.9, 1],
        [6, 1.2],
        [2.8, 0.9, 0.9, 0.9, 0.9, 0.9],
    ];

    /// <summary>How much of the paper is mixed into the paler of two curves of one colour. Chosen by eye.</summary>
    private const double PaleShare = 0.4;

    /// <summary>One paint for each curve of a study, in its order.</summary>
    public static ImmutableArray<Paint> Of(ResponseStudy study, Theme theme)
    {
        var wirings = study.Curves.Select(curve => curve.Change).Distinct().ToList();
        var states = study.Curves.Length / wirings.Count;
        var paints = ImmutableArray.CreateBuilder<Paint>(study.Curves.Length);
        for (var i = 0; i < study.Curves.Length; i++)
        {
            var (state, wiring) = (i / wirings.Count, i % wirings.Count);
            var isBefore = wirings.Count > 1 && wiring == 0;
            var colour =
                study.IsOrdered ? OnRamp(theme, i, study.Curves.Length)
                : states == 1 && wirings.Count > 1 ? (isBefore ? theme.QuietInk : Nth(theme.Curves, wiring - 1))
                : Nth(theme.Curves, wirings.Count > 1 ? state : i);
            if (isBefore && states > 1)
            {
                // Paler than what it turns into, so that it is seen where both lie on each other.
                colour = Between(colour, theme.Paper, PaleShare);
            }

            var dashes =
                study.IsOrdered ? Dashes[i % 3]
                : wirings.Count == 1 ? Nth(Dashes, i)
                : isBefore ? Dashes[1]
                : Nth(Dashes, wiring == 1 ? 0 : wiring);
            paints.Add(Paint.Stroked(colour, Tokens.CurveWidth) with { Dashes = dashes });
        }

        return paints.MoveToImmutable();
    }

    /// <summary>How much of a line is there: 1 without dashes.</summary>
    public static double Fullness(Paint paint) =>
        paint.Dashes.IsEmpty ? 1 : paint.Dashes.Where((_, i) => i % 2 == 0).Sum() / paint.Dashes.Sum();

    private static T Nth<T>(ImmutableArray<T> items, int index) => items[index % items.Length];

    private static Colour OnRamp(Theme theme, int index, int count)
    {
        var place = (double)index / Math.Max(1, count - 1) * (theme.Ramp.Length - 1);
        var stop = Math.Min((int)place, theme.Ramp.Length - 2);
        return Between(theme.Ramp[stop], theme.Ramp[stop + 1], place - stop);
    }

    private static Colour Between(Colour a, Colour b, double share)
    {
        return new Colour(Mix(a.Red, b.Red), Mix(a.Green, b.Green), Mix(a.Blue, b.Blue));

        byte Mix(byte from, byte to) => (byte)Math.Round(from + ((to - from) * share), MidpointRounding.AwayFromZero);
    }
}
