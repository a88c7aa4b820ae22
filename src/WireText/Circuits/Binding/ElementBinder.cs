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
            dials.Single(d => Naming.Alike(draft.Dials[d].Name, Sectioned(inside.Name))),
            ohms,
            taper,
            inside.FreeAt
        )
        {
            Tolerance = keys.ToleranceOf(inside.Name),
        };
    }

    private Taper? TaperOf(Inside.TrackInside inside)
    {
        var word = keys.Of(inside.Name, "taper")?.Value ?? keys.Of("taper")?.Value ?? arguments.Taper;
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
        ValueFor(null, inside.Ohms, ValueUse.Resistor, allowsCode: true) is { } ohms
            ? new Resistor(draft.Elements.Count, part, name.Text, LugOf(inside.A), LugOf(inside.B), ohms)
            {
                Tolerance = keys.ToleranceOf(null),
            }
            : null;

    private Capacitor? BindCapacitor(Inside.CapacitorInside inside) =>
        ValueFor(null, inside.Farads, ValueUse.Capacitor, allowsCode: true) is { } farads
            ? new Capacitor(draft.Elements.Count, part, name.Text, LugOf(inside.A), LugOf(inside.B), farads)
            {
                Tolerance = keys.ToleranceOf(null),
            }
            : null;

    private Inductor? BindInductor(Inside.InductorInside inside)
    {
        var ohms = keys.Of("dcr") is { } pair ? keys.Read(pair.Value, ValueUse.InductorResistance) : null;
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
                Tolerance = keys.ToleranceOf(null),
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

        if (allowsCode && keys.Of("code") is { } code)
        {
            return ReadCode(code.Value, use);
        }

        var word = keys.Of(section, "value")?.Value ?? keys.Of("value")?.Value ?? keys.BareValue();
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

        var value = keys.Read(word, use);
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

    private int LugOf(string terminal) => lugs[arguments.Definition.IndexOf(terminal)];

    private string Sectioned(string? section) => string.IsNullOrEmpty(section) ? name.Text : $"{name.Text}.{section}";
}
