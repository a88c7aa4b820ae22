using System.Collections.Immutable;
using System.Globalization;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Gives the insides of one part their values: what the part's line says over what the model says over the usual.</summary>
internal sealed class ElementBinder(
    CircuitDraft draft,
    PartArguments arguments,
    WordSyntax name,
    int part,
    ImmutableArray<int> lugs,
    ImmutableArray<int> dials
)
{
    // What a pickup is taken for when its line does not say: a single coil, and two coils in series (assumed; inside
    // the ranges of Paiva, Pakarinen and Välimäki, JAES 60(10), 2012).
    private static readonly (double Ohms, double Henries, double Farads) UsualSingle = (6e3, 2.5, 100e-12);
    private static readonly (double Ohms, double Henries, double Farads) UsualPair = (8e3, 4.5, 100e-12);

    private readonly HashSet<PairSyntax> used = [];
    private readonly List<string> valueLabels = [];
    private string? taperLabel;

    public (ImmutableArray<int> Indices, string? ValueLabel, string? TaperLabel) Bind()
    {
        var indices = ImmutableArray.CreateBuilder<int>();
        var coils = arguments.Definition.Insides.OfType<Inside.CoilInside>().ToList();
        foreach (var inside in arguments.Definition.Insides)
        {
            Element? element = inside switch
            {
                Inside.CoilInside coil => BindCoil(coil, coils),
                Inside.TrackInside track => BindTrack(track),
                Inside.ResistorInside resistor => BindResistor(resistor),
                Inside.CapacitorInside cap => BindCapacitor(cap),
                Inside.InductorInside inductor => BindInductor(inductor),
                Inside.BatteryInside battery => BindBattery(battery),
                Inside.AmplifierInside amplifier => BindAmplifier(amplifier),
                _ => null,
            };
            if (element is not null)
            {
                indices.Add(draft.Elements.Count);
                draft.Elements.Add(element);
            }
        }

        ReportUnused(coils);
        var label = valueLabels.Count == 0 ? null : string.Join('/', valueLabels.Distinct(StringComparer.Ordinal));
        return (indices.ToImmutable(), label, taperLabel);
    }

    private Coil BindCoil(Inside.CoilInside inside, List<Inside.CoilInside> coils)
    {
        var usual = coils.Count == 1 ? UsualSingle : UsualPair;
        var count = coils.Count;
        var wire = WireOf(inside, count);
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
            draft.Elements.Count,
            part,
            Sectioned(inside.Name),
            LugOf(inside.Start),
            LugOf(inside.Finish),
            ohms ?? usual.Ohms / count,
            henries ?? usual.Henries / count,
            farads ?? usual.Farads * count,
            CoilValue(inside, "eddy", ValueUse.EddyLoss, total => total / count).Value,
            winding,
            magnet
        )
        {
            Tolerance = ToleranceOf(inside.Name),
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
        if (SectionPair(inside.Name, key) is { } own)
        {
            return Said(Read(own.Value, use), ValueOrigin.Given);
        }

        if (inside.Values.FirstOrDefault(v => Is(v.Key, key)) is { } given)
        {
            return Said(Read(given.Value, given.Location, use), ValueOrigin.ByModel);
        }

        var isOnly = arguments.Definition.Insides.OfType<Inside.CoilInside>().Count() == 1;
        return PlainPair(key) is { } whole && Read(whole.Value, use) is { } total
            ? (share(total), isOnly ? ValueOrigin.Given : ValueOrigin.Shared)
            : (null, ValueOrigin.Assumed);
    }

    private static (T? Value, ValueOrigin Origin) Said<T>(T? value, ValueOrigin origin)
        where T : struct => (value, value is null ? ValueOrigin.Assumed : origin);

    private CoilWire? WireOf(Inside.CoilInside inside, int count)
    {
        var turns = TurnsOf(inside, count);
        var gauge = CoilCount(inside, "awg", 60);
        var metres = CoilValue(inside, "turn-length", ValueUse.TurnLength, each => each).Value;
        return turns is null && gauge is null && metres is null ? null : new CoilWire(turns, gauge, metres);
    }

    /// <summary>The turns of one coil: its own, or its share of the whole pickup's.</summary>
    private double? TurnsOf(Inside.CoilInside inside, int count)
    {
        var isWhole = SectionPair(inside.Name, "turns") is null && inside.Values.All(v => !Is(v.Key, "turns"));
        return CoilCount(inside, "turns", 1e6) is { } turns ? (isWhole ? turns / count : turns) : null;
    }

    private double? CoilCount(Inside.CoilInside inside, string key, double most)
    {
        var pair = SectionPair(inside.Name, key) ?? PlainPair(key);
        var given = inside.Values.FirstOrDefault(v => Is(v.Key, key));
        var (text, at) =
            pair is not null ? (pair.Value.Text, pair.Value.Location)
            : given is not null ? (given.Value, given.Location)
            : ("", default);
        if (text.Length == 0)
        {
            return null;
        }

        if (
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && number > 0
            && number <= most
        )
        {
            return number;
        }

        if (reported.Add(at))
        {
            draft.Sink.Add(ValueFindings.BadValue.At(at, $"'{text}' is no count for '{key}'", "write a plain number"));
        }

        return null;
    }

    private (Winding? Value, ValueOrigin Origin) WindingOf(Inside.CoilInside inside)
    {
        if (Word(inside, "wind", inside.Winding is not null) is not { } word)
        {
            return Said(inside.Winding, ValueOrigin.ByModel);
        }

        var winding = CoilWords.ReadWinding(word.Text);
        ReportUnless(winding is not null, word, CoilWords.WindingProblem(word.Text));
        return winding is null ? Said(inside.Winding, ValueOrigin.ByModel) : (winding, ValueOrigin.Given);
    }

    private (MagnetPole? Value, ValueOrigin Origin) MagnetOf(Inside.CoilInside inside)
    {
        if (Word(inside, "magnet", inside.Magnet is not null) is not { } word)
        {
            return Said(inside.Magnet, ValueOrigin.ByModel);
        }

        var magnet = CoilWords.ReadMagnet(word.Text);
        ReportUnless(magnet is not null, word, CoilWords.MagnetProblem(word.Text));
        return magnet is null ? Said(inside.Magnet, ValueOrigin.ByModel) : (magnet, ValueOrigin.Given);
    }

    private WordSyntax? Word(Inside.CoilInside inside, string key, bool isSaidByModel) =>
        SectionPair(inside.Name, key)?.Value ?? (isSaidByModel ? null : PlainPair(key)?.Value);

    private Track? BindTrack(Inside.TrackInside inside)
    {
        var taper = inside.Taper ?? TaperOf(inside) ?? Taper.Linear;
        taperLabel ??= inside.Taper is null ? taper.Name : null;
        if (ValueFor(inside.Name, null, ValueUse.Pot, allowsCode: false) is not { } ohms)
        {
            return null;
        }

        valueLabels.Add(ValueText.Label(ohms, Unit.Ohm));
        return new Track(
            draft.Elements.Count,
            part,
            Sectioned(inside.Name),
            LugOf(inside.Low),
            LugOf(inside.Wiper),
            LugOf(inside.High),
            dials.Single(d => Is(draft.Dials[d].Name, Sectioned(inside.Name))),
            ohms,
            taper,
            inside.FreeAt
        )
        {
            Tolerance = ToleranceOf(inside.Name),
        };
    }

    private Taper? TaperOf(Inside.TrackInside inside)
    {
        var word = SectionPair(inside.Name, "taper")?.Value ?? PlainPair("taper")?.Value ?? arguments.Taper;
        if (word is null)
        {
            return null;
        }

        if (BareTaper.IsLetter(word.Text))
        {
            AskAboutLetter(word);
            return BareTaper.Of(word.Text[0]);
        }

        var taper = TaperReader.Read(word.Text, out var problem);
        ReportUnless(taper is not null, word, problem ?? "");
        return taper;
    }

    private void AskAboutLetter(WordSyntax word)
    {
        var at = word.Location;
        if (taperLabel is null)
        {
            draft.Sink.Add(
                PartFindings.BareTaperLetter.At(
                    at,
                    $"'{word.Text}' alone: A and B swap meaning between schemes; read as {BareTaper.Of(word.Text[0])!.Name}",
                    "write audio or linear"
                )
            );
        }
    }

    private Resistor? BindResistor(Inside.ResistorInside inside) =>
        ValueFor(null, inside.Ohms, ValueUse.Resistor, allowsCode: true) is { } ohms
            ? new Resistor(draft.Elements.Count, part, name.Text, LugOf(inside.A), LugOf(inside.B), ohms)
            {
                Tolerance = ToleranceOf(null),
            }
            : null;

    private Capacitor? BindCapacitor(Inside.CapacitorInside inside) =>
        ValueFor(null, inside.Farads, ValueUse.Capacitor, allowsCode: true) is { } farads
            ? new Capacitor(draft.Elements.Count, part, name.Text, LugOf(inside.A), LugOf(inside.B), farads)
            {
                Tolerance = ToleranceOf(null),
            }
            : null;

    private Inductor? BindInductor(Inside.InductorInside inside)
    {
        var ohms = PlainPair("dcr") is { } pair ? Read(pair.Value, ValueUse.InductorResistance) : null;
        return ValueFor(null, inside.Henries, ValueUse.Inductor, allowsCode: false) is { } henries
            ? new Inductor(
                draft.Elements.Count,
                part,
                name.Text,
                LugOf(inside.A),
                LugOf(inside.B),
                henries,
                ohms ?? Inductor.UsualOhms
            )
            {
                Tolerance = ToleranceOf(null),
            }
            : null;
    }

    private Battery? BindBattery(Inside.BatteryInside inside) =>
        ValueFor(null, inside.Volts, ValueUse.Battery, allowsCode: false) is { } volts
            ? new Battery(
                draft.Elements.Count,
                part,
                name.Text,
                LugOf(inside.Plus),
                LugOf(inside.Minus),
                volts,
                Battery.UsualOhms
            )
            : null;

    private Amplifier BindAmplifier(Inside.AmplifierInside inside) =>
        new(
            draft.Elements.Count,
            part,
            name.Text,
            LugOf(inside.In),
            LugOf(inside.Out),
            LugOf(inside.Common),
            inside.Gain,
            inside.InputOhms,
            inside.OutputOhms,
            inside.Supply is { } supply ? LugOf(supply) : null,
            inside.IdleFraction,
            inside.DrawAmperes
        );

    /// <summary>The value of a track or a two-lead inside; a finding when nothing says it.</summary>
    private double? ValueFor(string? section, double? byModel, ValueUse use, bool allowsCode)
    {
        if (byModel is not null)
        {
            return byModel;
        }

        if (allowsCode && PlainPair("code") is { } code)
        {
            return ReadCode(code.Value, use);
        }

        var word = SectionPair(section, "value")?.Value ?? PlainPair("value")?.Value ?? arguments.Value;
        if (word is null)
        {
            draft.Sink.Add(
                PartFindings.MissingValue.At(
                    name.Location,
                    $"'{name.Text}' has no value",
                    $"write its value behind its name, such as {use.Usual}"
                )
            );
            return null;
        }

        isValueUsed |= word == arguments.Value;
        var value = Read(word, use);
        if (value is { } number && section is null && use != ValueUse.Pot)
        {
            valueLabels.Add(ValueText.Label(number, use.Unit));
        }

        return value;
    }

    private double? ReadCode(WordSyntax word, ValueUse use)
    {
        if (MarkingCode.Read(word.Text, use.Unit) is { } value)
        {
            valueLabels.Add(ValueText.Label(value, use.Unit));
            return value;
        }

        draft.Sink.Add(
            ValueFindings.BadValue.At(
                word.Location,
                $"'{word.Text}' is no three-figure marking",
                use.Unit == Unit.Farad ? "473 is 47 nF: two figures and a power of ten in pF" : "473 is 47 kΩ"
            )
        );
        return null;
    }

    private double? ToleranceOf(string? section)
    {
        if ((SectionPair(section, "tol") ?? PlainPair("tol"))?.Value is not { } word)
        {
            return null;
        }

        var text = word.Text.TrimStart('±').Replace("+-", "", StringComparison.Ordinal);
        if (
            text.EndsWith('%')
            && double.TryParse(
                text[..^1],
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var percent
            )
            && percent < 100
        )
        {
            return percent / 100;
        }

        draft.Sink.Add(
            ValueFindings.BadValue.At(word.Location, $"'{word.Text}' is no tolerance", "write it as tol=10%")
        );
        return null;
    }

    private bool isValueUsed;

    private double? Read(WordSyntax word, ValueUse use) => Read(word.Text, word.Location, use);

    private double? Read(string text, SourceLocation at, ValueUse use)
    {
        var reading = ValueReader.Read(text, use);
        if (reading.Problem is { } problem)
        {
            // Coils of one pickup share a plain key: it is reported once.
            if (reported.Add(at))
            {
                var help = reading.Suggestion is { } suggestion ? $"write '{suggestion}'" : null;
                draft.Sink.Add(ValueFindings.BadValue.At(at, problem, help));
            }
        }

        return reading.Value;
    }

    private readonly HashSet<SourceLocation> reported = [];

    /// <summary>A key of one section: <c>n.dcr</c> is the key of section n.</summary>
    private PairSyntax? SectionPair(string? section, string key) =>
        section is null ? null : Use(arguments.Pairs.Find(p => Is(p.Key.Text, $"{section}.{key}")));

    private PairSyntax? PlainPair(string key) => Use(arguments.Pairs.Find(p => Is(p.Key.Text, key)));

    private PairSyntax? Use(PairSyntax? pair)
    {
        if (pair is not null)
        {
            used.Add(pair);
        }

        return pair;
    }

    private void ReportUnused(List<Inside.CoilInside> coils)
    {
        var known = KnownKeys(coils).ToList();
        foreach (var pair in arguments.Pairs.Where(p => !used.Contains(p)))
        {
            if (known.Contains(pair.Key.Text, StringComparer.OrdinalIgnoreCase))
            {
                // Known and not asked for: another key or the model itself said it already.
                draft.Sink.Add(
                    StatementFindings.SaidTwice.At(
                        pair.Location,
                        $"'{pair.Key.Text}' of '{name.Text}' is said already, by '{arguments.Definition.Model}' or by another key",
                        SectionHelp(coils, pair)
                    )
                );
                continue;
            }

            var near = DidYouMean.Nearest(pair.Key.Text, known);
            draft.Sink.Add(
                PartFindings.UnknownKey.At(
                    pair.Key.Location,
                    $"a {arguments.Definition.Kind} has no '{pair.Key.Text}='",
                    near is not null ? $"did you mean '{near}='?"
                        : known.Count > 0 ? $"it takes {string.Join(", ", known.Select(k => k + "="))}"
                        : $"a {arguments.Definition.Model} takes no keys"
                )
            );
        }

        if (arguments.Value is { } value && !isValueUsed)
        {
            draft.Sink.Add(
                PartFindings.UnknownWord.At(
                    value.Location,
                    $"'{value.Text}': a {arguments.Definition.Kind} has no one value",
                    coils.Count > 0 ? $"say what it is: dcr={value.Text}" : null
                )
            );
        }
    }

    private static string? SectionHelp(List<Inside.CoilInside> coils, PairSyntax pair) =>
        coils.Count > 1 && coils[0].Name is { } section
            ? $"to set one coil, write {section}.{pair.Key.Text}={pair.Value.Text}"
            : null;

    private IEnumerable<string> KnownKeys(List<Inside.CoilInside> coils)
    {
        string[] coilKeys = ["dcr", "l", "c", "eddy", "turns", "awg", "turn-length", "wind", "magnet", "tol"];
        foreach (var coil in coils.Where(c => c.Name is not null))
        {
            foreach (var key in coilKeys)
            {
                yield return $"{coil.Name}.{key}";
            }
        }

        string[] trackKeys = ["value", "taper", "tol"];
        var tracks = arguments.Definition.Insides.OfType<Inside.TrackInside>().ToList();
        foreach (var track in tracks.Where(t => t.Name is not null))
        {
            foreach (var key in trackKeys)
            {
                yield return $"{track.Name}.{key}";
            }
        }

        string[] plain =
        [
            .. coils.Count > 0 ? coilKeys : [],
            .. tracks.Count > 0 ? trackKeys : [],
            .. arguments.Definition.Insides.Any(IsOpenTwoLead) ? ["value", "tol"] : Array.Empty<string>(),
            .. arguments.Definition.Insides.Any(i =>
                i is Inside.CapacitorInside { Farads: null } or Inside.ResistorInside { Ohms: null }
            )
                ? ["code"]
                : Array.Empty<string>(),
            .. arguments.Definition.Insides.Any(i => i is Inside.InductorInside) ? ["dcr"] : Array.Empty<string>(),
        ];
        foreach (var key in plain.Distinct(StringComparer.Ordinal))
        {
            yield return key;
        }
    }

    private static bool IsOpenTwoLead(Inside inside) =>
        inside
            is Inside.ResistorInside { Ohms: null }
                or Inside.CapacitorInside { Farads: null }
                or Inside.InductorInside { Henries: null }
                or Inside.BatteryInside { Volts: null };

    private void ReportUnless(bool isRight, SyntaxNode at, string problem)
    {
        if (!isRight && reported.Add(at.Location))
        {
            draft.Sink.Add(ValueFindings.BadValue.At(at.Location, problem));
        }
    }

    private int LugOf(string terminal) => lugs[arguments.Definition.IndexOf(terminal)];

    private string Sectioned(string? section) => string.IsNullOrEmpty(section) ? name.Text : $"{name.Text}.{section}";

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
