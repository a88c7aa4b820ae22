using System.Collections.Immutable;

namespace WireText.Listening;

/// <summary>What is played at each position: every open string by itself, then a chord. Times are whole milliseconds, so that they fall on samples alike at every rate.</summary>
/// <param name="Notes">In the order in which they begin.</param>
/// <param name="Milliseconds">How long it is.</param>
public sealed record Phrase(ImmutableArray<Note> Notes, int Milliseconds)
{
    /// <summary>Each string by itself. Chosen.</summary>
    public const int StringMilliseconds = 500;

    /// <summary>The chord. Chosen.</summary>
    public const int ChordMilliseconds = 2500;

    /// <summary>From one string of the chord to the next. Chosen.</summary>
    public const int StrumMilliseconds = 20;

    /// <summary>How far from the bridge a string is plucked, as a share of the scale, where nobody says. Assumed; not measured.</summary>
    public const double UsualPluckShare = 0.2;

    /// <summary>A semitone: the twelfth root of 2.</summary>
    private const double Semitone = 1.0594630943592953;

    /// <param name="pluckMetres">From the bridge to the pluck point, below the length of every string that is played.</param>
    public static Phrase Of(Instrument instrument, double pluckMetres)
    {
        var notes = ImmutableArray.CreateBuilder<Note>();
        var open = instrument.Open;
        for (var i = 0; i < open.Length; i++)
        {
            var start = i * StringMilliseconds;
            notes.Add(
                new Note(
                    new PluckedString(open[i].Hertz, instrument.ScaleMetres, pluckMetres),
                    start,
                    start + StringMilliseconds
                )
            );
        }

        var chord = open.Length * StringMilliseconds;
        for (var i = 0; i < open.Length; i++)
        {
            var (hertz, metres) = (open[i].Hertz, instrument.ScaleMetres);
            for (var fret = 0; fret < instrument.ChordFrets[i]; fret++)
            {
                (hertz, metres) = (hertz * Semitone, metres / Semitone);
            }

            notes.Add(
                new Note(
                    new PluckedString(hertz, metres, pluckMetres),
                    chord + (i * StrumMilliseconds),
                    chord + ChordMilliseconds
                )
            );
        }

        return new Phrase(notes.ToImmutable(), chord + ChordMilliseconds);
    }
}

/// <summary>A string, plucked and later damped.</summary>
/// <param name="Start">When it is let go, in milliseconds.</param>
/// <param name="End">When it is silent again, in milliseconds.</param>
public sealed record Note(PluckedString String, int Start, int End);
