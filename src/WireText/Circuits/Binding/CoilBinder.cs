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

/// <summary>Gives the coils of one pickup their values: a coil's own key over the model's over its share of the whole pickup's over the usual.</summary>
/// <param name="count">How many coils the pickup has.</param>
internal sealed class CoilBinder(PartKeys keys, int count)
{
    // What a pickup is taken for when its line does not say: a single coil, and two coils in series (assumed; inside
    // the ranges of Paiva, Pakarinen and Välimäki, JAES 60(10), 2012).
    private static readonly (double Ohms, double Henries, double Farads) UsualSingle = (6e3, 2.5, 100e-12);
    private static readonly (double Ohms, double Henries, double Farads) UsualPair = (8e3, 4.5, 100e-12);

    /// <param name="place">Where the coil is: its number, its part, its full name and its two lugs.</param>
    public Coil Bind(Inside.CoilInside inside, CoilPlace place)
    {
        var usual = count == 1 ? UsualSingle : UsualPair;
        var wire = WireOf(inside);
        var (ohms, ohmsFrom) = CoilValue(inside, "dcr", ValueUse.CoilResistance, total => total / count);
        var (henries, henriesFrom) = CoilValue(inside, "l", ValueUse.CoilInductance, total => total / count);
        var (farads, faradsFrom) = CoilValue(inside, "c", ValueUse.CoilCapacitance, total => total * count);
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
            CoilValue(inside, "eddy", ValueUse.EddyLoss, total => total / count).Value,
            winding,
            magnet
        )
        {
            Tolerance = keys.ToleranceOf(inside.Name),
            Turns = wire?.Turns,
            Wire = wire,
            Origins = new CoilOrigins(ohmsFrom, henriesFrom, faradsFrom, windingFrom, magnetFrom),
        };
    }

    /// <summary>The coil's own key, else the model's value, else its share of the whole pickup's.</summary>
    private (double? Value, ValueOrigin Origin) CoilValue(
        Inside.CoilInside inside,
        string key,
        ValueUse use,
        Func<double, double> share
    )
    {
        if (keys.Of(inside.Name, key) is { } own)
        {
            return Said(keys.Read(own.Value, use), ValueOrigin.Given);
        }

        if (ByModel(inside, key) is { } given)
        {
            return Said(keys.Read(given.Value, given.Location, use), ValueOrigin.ByModel);
        }

        return keys.Of(key) is { } whole && keys.Read(whole.Value, use) is { } total
            ? (share(total), count == 1 ? ValueOrigin.Given : ValueOrigin.Shared)
            : (null, ValueOrigin.Assumed);
    }

    private static (T? Value, ValueOrigin Origin) Said<T>(T? value, ValueOrigin origin)
        where T : struct => (value, value is null ? ValueOrigin.Assumed : origin);

    private CoilWire? WireOf(Inside.CoilInside inside)
    {
        var turns = TurnsOf(inside);
        var gauge = CoilCount(inside, "awg", 60);
        var metres = CoilValue(inside, "turn-length", ValueUse.TurnLength, each => each).Value;
        return turns is null && gauge is null && metres is null ? null : new CoilWire(turns, gauge, metres);
    }

    /// <summary>The turns of one coil: its own, or its share of the whole pickup's.</summary>
    private double? TurnsOf(Inside.CoilInside inside)
    {
        var isWhole = keys.Of(inside.Name, "turns") is null && ByModel(inside, "turns") is null;
        return CoilCount(inside, "turns", 1e6) is { } turns ? (isWhole ? turns / count : turns) : null;
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
