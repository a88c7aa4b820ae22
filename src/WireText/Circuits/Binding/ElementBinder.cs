using System.Collections.Immutable;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Gives the insides of one part their values: what the part's line says over what the model says over the usual.</summary>
internal sealed class ElementBinder(
    CircuitDraft draft,
    PartArguments arguments,
    PartKeys keys,
    WordSyntax name,
    int part,
    ImmutableArray<int> lugs,
    ImmutableArray<int> dials
)
{
    /// <summary>As it stands on the drawing.</summary>
    private const string UnknownTaper = "taper ?";

    private readonly List<string> valueLabels = [];
    private string? taperLabel;

    public (ImmutableArray<int> Indices, string? ValueLabel, string? TaperLabel) Bind()
    {
        var indices = ImmutableArray.CreateBuilder<int>();
        var coils = new CoilBinder(keys, [.. arguments.Definition.Insides.OfType<Inside.CoilInside>()]);
        foreach (var inside in arguments.Definition.Insides)
        {
            Element? element = inside switch
            {
                Inside.CoilInside coil => coils.Bind(coil, PlaceOf(coil)),
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

        var label = valueLabels.Count == 0 ? null : string.Join('/', valueLabels.Distinct(StringComparer.Ordinal));
        return (indices.ToImmutable(), label, taperLabel);
    }

    private CoilPlace PlaceOf(Inside.CoilInside coil) =>
        new(draft.Elements.Count, part, Sectioned(coil.Name), LugOf(coil.Start), LugOf(coil.Finish));

    private Track? BindTrack(Inside.TrackInside inside)
    {
        var word = inside.Taper is null ? TaperWordOf(inside) : null;
        var isTaperUnknown = word?.Text == ValueUse.Unknown;
        var taper = inside.Taper ?? (isTaperUnknown ? null : TaperOf(word)) ?? Taper.Linear;
        taperLabel ??=
            inside.Taper is not null ? null
            : isTaperUnknown ? UnknownTaper
            : taper.Name;
        if (ValueFor(inside.Name, null, ValueUse.Pot, allowsCode: false) is not { } stated)
        {
            return null;
        }

        return new Track(
            draft.Elements.Count,
            part,
            Sectioned(inside.Name),
            LugOf(inside.Low),
            LugOf(inside.Wiper),
            LugOf(inside.High),
            dials.Single(d => Naming.Alike(draft.Dials[d].Name, Sectioned(inside.Name))),
            stated.Value,
            taper,
            inside.FreeAt
        )
        {
            Tolerance = keys.ToleranceOf(inside.Name) ?? stated.Tolerance,
            Doubt = stated.Doubt,
            IsTaperUnknown = isTaperUnknown,
        };
    }

    private WordSyntax? TaperWordOf(Inside.TrackInside inside) =>
        keys.Of(inside.Name, "taper")?.Value ?? keys.Of("taper")?.Value ?? arguments.Taper;

    private Taper? TaperOf(WordSyntax? word)
    {
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
        keys.ReportUnless(taper is not null, word, problem ?? "");
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
        ValueFor(null, inside.Ohms, ValueUse.Resistor, allowsCode: true) is { } stated
            ? new Resistor(draft.Elements.Count, part, name.Text, LugOf(inside.A), LugOf(inside.B), stated.Value)
            {
                Tolerance = keys.ToleranceOf(null) ?? stated.Tolerance,
                Doubt = stated.Doubt,
            }
            : null;

    private Capacitor? BindCapacitor(Inside.CapacitorInside inside) =>
        ValueFor(null, inside.Farads, ValueUse.Capacitor, allowsCode: true) is { } stated
            ? new Capacitor(draft.Elements.Count, part, name.Text, LugOf(inside.A), LugOf(inside.B), stated.Value)
            {
                Tolerance = keys.ToleranceOf(null) ?? stated.Tolerance,
                Doubt = stated.Doubt,
            }
            : null;

    private Inductor? BindInductor(Inside.InductorInside inside)
    {
        var ohms = keys.Of("dcr") is { } pair ? keys.Read(pair.Value, ValueUse.InductorResistance) : null;
        return ValueFor(null, inside.Henries, ValueUse.Inductor, allowsCode: false) is { } stated
            ? new Inductor(
                draft.Elements.Count,
                part,
                name.Text,
                LugOf(inside.A),
                LugOf(inside.B),
                stated.Value,
                ohms ?? Inductor.UsualOhms
            )
            {
                Tolerance = keys.ToleranceOf(null),
                Doubt = stated.Doubt,
            }
            : null;
    }

    private Battery? BindBattery(Inside.BatteryInside inside) =>
        ValueFor(null, inside.Volts, ValueUse.Battery, allowsCode: false) is { } stated
            ? new Battery(
                draft.Elements.Count,
                part,
                name.Text,
                LugOf(inside.Plus),
                LugOf(inside.Minus),
                stated.Value,
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
    private StatedValue? ValueFor(string? section, double? byModel, ValueUse use, bool allowsCode)
    {
        if (byModel is { } fixedValue)
        {
            return StatedValue.Known(fixedValue, use.Unit);
        }

        var stated = Stated(section, use, allowsCode);
        if (stated is { } value)
        {
            valueLabels.Add(value.Label);
        }

        return stated;
    }

    private StatedValue? Stated(string? section, ValueUse use, bool allowsCode)
    {
        var measured = use.WhenUnknown is null
            ? null
            : (keys.Of(section, KnownKeys.Measured) ?? keys.Of(KnownKeys.Measured))?.Value ?? keys.BareMeasured();
        var code = allowsCode ? keys.Of("code")?.Value : null;
        var word = code ?? keys.Of(section, "value")?.Value ?? keys.Of("value")?.Value ?? keys.BareValue();
        var nominal =
            word is null ? null
            : word == code ? ReadCode(word, use)
            : keys.ReadStated(word, use);
        if (measured is not null)
        {
            return keys.Read(measured, use) is { } read
                ? StatedValue.Measured(read, nominal is { Doubt: null } printed ? printed.Value : null, use.Unit)
                : null;
        }

        if (word is null)
        {
            draft.Sink.Add(
                PartFindings.MissingValue.At(
                    name.Location,
                    $"'{name.Text}' has no value",
                    use.WhenUnknown is null
                        ? $"write its value behind its name, such as {use.Usual}"
                        : $"write its value behind its name, such as {use.Usual}, or {ValueUse.Unknown} where nobody knows it"
                )
            );
        }

        return nominal;
    }

    private StatedValue? ReadCode(WordSyntax word, ValueUse use)
    {
        if (MarkingCode.Read(word.Text, use.Unit) is { } value)
        {
            return StatedValue.Known(value, use.Unit);
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

    private int LugOf(string terminal) => lugs[arguments.Definition.IndexOf(terminal)];

    private string Sectioned(string? section) => string.IsNullOrEmpty(section) ? name.Text : $"{name.Text}.{section}";
}
