using System.Collections.Immutable;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Where a coil is in the circuit.</summary>
/// <param name="Element">Its number among the elements.</param>
/// <param name="Part">The number of its pickup.</param>
/// <param name="Name">Its full name.</param>
/// <param name="Start">The lug of its start.</param>
/// <param name="Finish">The lug of its finish.</param>
internal readonly record struct CoilPlace(int Element, int Part, string Name, int Start, int Finish);

/// <summary>
/// Gives the coils of one pickup their values: a coil's own key over the model's over its share of the whole pickup's over the
/// usual. Coils without a value of their own share what the others leave of the whole.
/// </summary>
/// <param name="all">The coils of the pickup.</param>
internal sealed class CoilBinder(PartKeys keys, ImmutableArray<Inside.CoilInside> all)
{
    private readonly int count = all.Length;

    // What a pickup is taken for when its line does not say: a single coil, and two coils in series (assumed; inside
    // the ranges of Paiva, Pakarinen and Välimäki, JAES 60(10), 2012).
    private static readonly (double Ohms, double Henries, double Farads) UsualSingle = (6e3, 2.5, 100e-12);
    private static readonly (double Ohms, double Henries, double Farads) UsualPair = (8e3, 4.5, 100e-12);

    /// <param name="place">Where the coil is: its number, its part, its full name and its two lugs.</param>
    public Coil Bind(Inside.CoilInside inside, CoilPlace place)
    {
        var usual = count == 1 ? UsualSingle : UsualPair;
        var wire = WireOf(inside);
        var (ohms, ohmsFrom) = CoilValue(inside, "dcr", ValueUse.CoilResistance);
        var (henries, henriesFrom) = CoilValue(inside, "l", ValueUse.CoilInductance);
        var (farads, faradsFrom) = CoilValue(inside, "c", ValueUse.CoilCapacitance, areInverse: true);
        var (winding, windingFrom) = WindingOf(inside);
        var (magnet, magnetFrom) = MagnetOf(inside);
        if (ohms is null && wire?.Ohms is not null)
        {
            (ohms, ohmsFrom) = (wire.Ohms, ValueOrigin.ByWinding);
        }

        return new Coil(
            place.Element,
            place.Part,
            place.Name,
            place.Start,
            place.Finish,
            ohms ?? usual.Ohms / count,
            henries ?? usual.Henries / count,
            farads ?? usual.Farads * count,
            CoilValue(inside, "eddy", ValueUse.EddyLoss).Value,
            winding,
            magnet
        )
        {
            Tolerance = keys.ToleranceOf(inside.Name),
            Turns = wire?.Turns,
            Wire = wire,
            Spot = SpotOf(inside),
            Origins = new CoilOrigins(ohmsFrom, henriesFrom, faradsFrom, windingFrom, magnetFrom),
        };
    }

    /// <summary>The coil's own key, else the model's value, else its share of the whole pickup's.</summary>
    /// <param name="areInverse">True when the inverses of the coils' values make that of the whole: capacitances in series.</param>
    private (double? Value, ValueOrigin Origin) CoilValue(
        Inside.CoilInside inside,
        string key,
        ValueUse use,
        bool areInverse = false
    )
    {
        if (OwnValue(inside, key, use) is { } own)
        {
            return own;
        }

        if (keys.Of(key) is not { } whole || keys.Read(whole.Value, use) is not { } total)
        {
            return (null, ValueOrigin.Assumed);
        }

        var share = Share(total, coil => IsOwn(coil, key), coil => OwnValue(coil, key, use)?.Value, areInverse);
        return IsLeft(share, whole, inside)
            ? (share, count == 1 ? ValueOrigin.Given : ValueOrigin.Shared)
            : (null, ValueOrigin.Assumed);
    }

    private bool IsOwn(Inside.CoilInside inside, string key) =>
        keys.Of(inside.Name, key) is not null || ByModel(inside, key) is not null;

    /// <summary>True when the other coils leave something of the whole; reported where they do not.</summary>
    private bool IsLeft(double share, PairSyntax whole, Inside.CoilInside inside)
    {
        keys.ReportUnless(
            share > 0,
            whole.Value,
            $"'{whole.Key.Text}={whole.Value.Text}' is the whole pickup's and leaves nothing for coil '{inside.Name}'"
        );
        return share > 0;
    }

    /// <summary>What a coil has by its own key or by the model; null where neither says any.</summary>
    private (double? Value, ValueOrigin Origin)? OwnValue(Inside.CoilInside inside, string key, ValueUse use) =>
        keys.Of(inside.Name, key) is { } own ? Said(keys.Read(own.Value, use), ValueOrigin.Given)
        : ByModel(inside, key) is { } given ? Said(keys.Read(given.Value, given.Location, use), ValueOrigin.ByModel)
        : null;

    /// <summary>What each coil without a value of its own has of the whole pickup's; not above 0 when the others have it all.</summary>
    /// <param name="isOwn">True for a coil that has a value of its own.</param>
    /// <param name="own">That value; null where it cannot be read.</param>
    private double Share(
        double whole,
        Func<Inside.CoilInside, bool> isOwn,
        Func<Inside.CoilInside, double?> own,
        bool areInverse
    )
    {
        var known = all.Where(isOwn).Select(own).OfType<double>().ToList();
        var sharing = all.Count(coil => !isOwn(coil));
        if (areInverse)
        {
            // As it is written where all share: an inverse of an inverse is off by its last digit.
            return known.Count == 0 ? whole * sharing : sharing / ((1 / whole) - known.Sum(value => 1 / value));
        }

        return (whole - known.Sum()) / sharing;
    }

    private static (T? Value, ValueOrigin Origin) Said<T>(T? value, ValueOrigin origin)
        where T : struct => (value, value is null ? ValueOrigin.Assumed : origin);

    private CoilWire? WireOf(Inside.CoilInside inside)
    {
        var turns = TurnsOf(inside);
        var gauge = CoilCount(inside, "awg", 60);
        var metres = LengthOf(inside);
        return turns is null && gauge is null && metres is null ? null : new CoilWire(turns, gauge, metres);
    }

    /// <summary>Where the coil lies under the strings: what is said of all coils is said of their middle.</summary>
    private StringSpot SpotOf(Inside.CoilInside inside)
    {
        var own = OwnValue(inside, "at", ValueUse.StringPlace)?.Value;
        var whole = own is null && keys.Of("at") is { } at ? keys.Read(at.Value, ValueUse.StringPlace) : null;
        return new StringSpot(
            own ?? (count == 1 ? whole : null),
            count == 1 ? null : whole,
            Common(inside, "aperture", ValueUse.Aperture)
        );
    }

    /// <summary>The mean length of a turn, in metres: the coil's own, or that of all coils.</summary>
    private double? LengthOf(Inside.CoilInside inside) => Common(inside, "turn-length", ValueUse.TurnLength);

    /// <summary>A value that each coil of a pickup has alike, unless its own is said.</summary>
    private double? Common(Inside.CoilInside inside, string key, ValueUse use) =>
        OwnValue(inside, key, use) is { } own ? own.Value
        : keys.Of(key) is { } all ? keys.Read(all.Value, use)
        : null;

    /// <summary>The turns of one coil: its own, or its share of the whole pickup's.</summary>
    private double? TurnsOf(Inside.CoilInside inside)
    {
        if (IsOwn(inside, "turns") || keys.Of("turns") is not { } whole)
        {
            return CoilCount(inside, "turns", 1e6);
        }

        return
            CoilCount(inside, "turns", 1e6) is { } turns
            && Share(turns, coil => IsOwn(coil, "turns"), coil => CoilCount(coil, "turns", 1e6), areInverse: false)
                is var share
            && IsLeft(share, whole, inside)
            ? share
            : null;
    }

    private double? CoilCount(Inside.CoilInside inside, string key, double most)
    {
        if ((keys.Of(inside.Name, key) ?? keys.Of(key))?.Value is { } word)
        {
            return keys.ReadCount(word.Text, word.Location, key, most);
        }

        return ByModel(inside, key) is { } given ? keys.ReadCount(given.Value, given.Location, key, most) : null;
    }

    private (Winding? Value, ValueOrigin Origin) WindingOf(Inside.CoilInside inside)
    {
        if (Word(inside, "wind", inside.Winding is not null) is not { } word)
        {
            return Said(inside.Winding, ValueOrigin.ByModel);
        }

        var winding = CoilWords.ReadWinding(word.Text);
        keys.ReportUnless(winding is not null, word, CoilWords.WindingProblem(word.Text));
        return winding is null ? Said(inside.Winding, ValueOrigin.ByModel) : (winding, ValueOrigin.Given);
    }

    private (MagnetPole? Value, ValueOrigin Origin) MagnetOf(Inside.CoilInside inside)
    {
        if (Word(inside, "magnet", inside.Magnet is not null) is not { } word)
        {
            return Said(inside.Magnet, ValueOrigin.ByModel);
        }

        var magnet = CoilWords.ReadMagnet(word.Text);
        keys.ReportUnless(magnet is not null, word, CoilWords.MagnetProblem(word.Text));
        return magnet is null ? Said(inside.Magnet, ValueOrigin.ByModel) : (magnet, ValueOrigin.Given);
    }

    private WordSyntax? Word(Inside.CoilInside inside, string key, bool isSaidByModel) =>
        keys.Of(inside.Name, key)?.Value ?? (isSaidByModel ? null : keys.Of(key)?.Value);

    private static ValuePair? ByModel(Inside.CoilInside inside, string key) =>
        inside.Values.FirstOrDefault(v => Naming.Alike(v.Key, key));
}
