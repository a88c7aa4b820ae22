using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Listening;

namespace WireText.Output;

/// <summary>What was written, for people: what is heard when, and what that rests on.</summary>
public static class ListenText
{
    private static readonly ImmutableArray<string> Heading = ["from", "view", "heard", "level"];

    /// <param name="pluckMetres">From the bridge to the pluck point; null for a recording.</param>
    /// <param name="isPluckAssumed">True when nobody said where.</param>
    public static string Write(HeardSound sound, Circuit circuit, double? pluckMetres, bool isPluckAssumed)
    {
        var text = new StringBuilder();
        TextTable.Write(text, Heading, [.. sound.Passages.Select(passage => Row(sound, passage))], broken: 2, []);
        TextTable.WriteRemarks(text, [.. Remarks(sound, circuit, pluckMetres, isPluckAssumed)]);
        return text.ToString();
    }

    private static ImmutableArray<string> Row(HeardSound sound, HeardPassage passage)
    {
        var curve = passage.Curve;
        return
        [
            Seconds(passage.Start, sound.Recording.Rate),
            curve.Label,
            curve.Heard + (curve.IsAssumed ? AssumedValues.Mark : ""),
            sound.LevelOf(passage) is { } level ? $"{Signed(level)} dB" : "-",
        ];
    }

    private static IEnumerable<string> Remarks(
        HeardSound sound,
        Circuit circuit,
        double? pluckMetres,
        bool isPluckAssumed
    )
    {
        yield return "a model, not a recording of an instrument; turn the volume down before you listen";
        yield return "level of the whole passage against the loudest";
        if (pluckMetres is { } metres)
        {
            foreach (var remark in OfStrings(circuit, metres, isPluckAssumed))
            {
                yield return remark;
            }
        }
        else
        {
            yield return "the recording is taken for the voltage of each coil: where a pickup lies is not in it";
        }

        var coils = sound
            .Passages.SelectMany(passage => passage.Curve.AssumedCoils)
            .Distinct(StringComparer.Ordinal)
            .ToList();
        if (coils.Count > 0)
        {
            yield return $"* with assumed values of {string.Join(", ", coils)}: dcr= l= c= wind= magnet= on a pickup's line give them";
        }

        if (DoubtText.Remark(sound.Passages.SelectMany(passage => passage.Curve.InDoubt)) is { } unknown)
        {
            yield return unknown;
        }
    }

    private static IEnumerable<string> OfStrings(Circuit circuit, double pluckMetres, bool isPluckAssumed)
    {
        var instrument = Instrument.Of(circuit);
        var spots = CoilSpot.Of(circuit).Where(spot => spot.Coil.HearsStrings).ToList();
        yield return $"each: the open strings {string.Join(' ', instrument.Open.Select(one => one.Name))}{Star(instrument.AreStringsAssumed)} by themselves, then a chord of E major";
        yield return $"scale {Length(instrument.ScaleMetres, instrument.IsScaleAssumed)}, plucked {Length(pluckMetres, isPluckAssumed)} from the bridge";
        yield return $"from the bridge: {string.Join(", ", spots.Select(spot => $"{spot.Coil.Name} {Length(spot.Metres, spot.IsPlaceAssumed)} over {Length(spot.ApertureMetres, spot.IsApertureAssumed)}"))}";
        var isPlaceAssumed = spots.Exists(spot => spot.IsPlaceAssumed);
        var onLine = isPlaceAssumed ? "there" : "on a pickup's line";
        string?[] missing =
        [
            isPlaceAssumed ? "at= on a pickup's line" : null,
            spots.Exists(spot => spot.IsApertureAssumed) ? $"aperture= {onLine}" : null,
            instrument.IsScaleAssumed ? "load scale=" : null,
            instrument.AreStringsAssumed ? "load strings=" : null,
            isPluckAssumed ? "--pluck" : null,
        ];
        if (missing.OfType<string>().ToList() is { Count: > 0 } keys)
        {
            yield return $"* a length or a word that is assumed: {string.Join(", ", keys)} {(keys.Count > 1 ? "give" : "gives")} it";
        }
    }

    private static string Length(double metres, bool isAssumed) =>
        $"{(1000 * metres).ToString("0.#", CultureInfo.InvariantCulture)} mm{Star(isAssumed)}";

    private static string Star(bool isAssumed) => isAssumed ? AssumedValues.Mark : "";

    private static string Seconds(int samples, int rate) =>
        ((double)samples / rate).ToString("0.0 s", CultureInfo.InvariantCulture);

    private static string Signed(double decibels)
    {
        var text = decibels.ToString("0.0", CultureInfo.InvariantCulture);
        return text == "-0.0" ? "0.0" : text.Replace('-', '−');
    }
}
