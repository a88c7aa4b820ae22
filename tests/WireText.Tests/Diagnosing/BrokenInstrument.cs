using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Diagnosing;
using WireText.Electrical.Faults;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Parts;
using WireText.Quantities;

namespace WireText.Tests.Diagnosing;

/// <summary>An instrument with values drawn within their tolerances and a fault in it, and what a technician finds there.</summary>
/// <remarks>
/// What the meter shows is worked out by the ohmmeter of the positions, which knows nothing of diagnoses, and what is heard by
/// the table of positions' own solver; the ear errs half as often as is assumed.
/// </remarks>
internal sealed class BrokenInstrument
{
    private readonly Instrument instrument;
    private readonly Circuit circuit;
    private readonly ImmutableArray<(Fault Fault, FaultSize Size)> faults;
    private readonly Draw draw;
    private readonly double scale;
    private readonly Circuit nominal;

    /// <param name="seed">Words that everything drawn follows from.</param>
    public BrokenInstrument(
        Instrument instrument,
        ImmutableArray<(Fault Fault, FaultSize Size)> faults,
        string seed,
        Func<Circuit, Circuit>? also = null
    )
    {
        (this.instrument, this.faults, draw) = (instrument, faults, new Draw(seed));
        nominal = instrument.With(faults.Select(one => one.Size));
        scale = 1 + (BenchOdds.MeterScale * draw.Normal());
        var copper = 1 + (CopperWire.TemperatureCoefficient * BenchOdds.Kelvin * draw.Normal());
        var made = (also ?? (one => one))(nominal);
        circuit = made with { Elements = [.. made.Elements.Select(element => Drawn(element, copper))] };
    }

    /// <summary>What a technician writes down of one measurement.</summary>
    public Found Find(FoundPlace place, bool isByEar) =>
        new(place, isByEar ? Heard((FoundAtPlug)place) : [Fact(place)], default)
        {
            Where = FoundLines.Where(instrument.Circuit, place),
        };

    private Element Drawn(Element element, double copper)
    {
        var sized = faults.Select(one => one.Size).FirstOrDefault(size => size.Sized == element.Index);
        var within = sized is null ? 1 : Math.Exp(draw.Between(-sized.HalfWidth, sized.HalfWidth));
        var isFree = sized is not null && element is not Coil;
        return element switch
        {
            Coil coil => coil with { Ohms = coil.Ohms * within * copper * Off(element, Ohmmeter.CoilTolerance) },
            Inductor choke => choke with { Ohms = choke.Ohms * copper * Off(element, Ohmmeter.CoilTolerance) },
            Track track => track with
            {
                Ohms = track.Ohms * (isFree ? within : Off(element, Ohmmeter.PotTolerance)),
                Taper = SetByHand(track.Taper),
            },
            Resistor resistor => resistor with
            {
                Ohms = resistor.Ohms * (isFree ? within : Off(element, Ohmmeter.ResistorTolerance)),
            },
            _ => element,
        };
    }

    private double Off(Element element, double usual)
    {
        var tolerance = element.Tolerance ?? usual;
        return 1 + draw.Between(-tolerance, tolerance);
    }

    /// <summary>A dial at 5 stands where the hand leaves it.</summary>
    private Taper SetByHand(Taper taper)
    {
        var share = taper.FractionAt(5);
        var logit = Math.Log(share / (1 - share)) + (BenchOdds.Hand * draw.Normal());
        return new Taper(
            "by hand",
            [new TaperPoint(0, 0), new TaperPoint(5, 1 / (1 + Math.Exp(-logit))), new TaperPoint(10, 1)],
            null,
            false
        );
    }

    private FoundFact Fact(FoundPlace place) =>
        place switch
        {
            FoundAtLead => Label(
                Has(FaultKind.LeadOpen) ? FoundSign.Open
                : Has(FaultKind.LeadShorted) ? FoundSign.Shorted
                : FoundSign.Good
            ),
            FoundAtCell cell => new FoundVolts(Has(FaultKind.BatteryFlat, cell.Element) ? 4 : 8.9) { Text = "volts" },
            FoundAlone alone when instrument.Right.Elements[alone.Element] is Capacitor => Label(
                Has(FaultKind.CapacitorOpen, alone.Element) ? FoundSign.Open
                : Has(FaultKind.CapacitorShorted, alone.Element) ? FoundSign.Shorted
                : Has(FaultKind.CapacitorLeaky, alone.Element) ? FoundSign.Leaky
                : FoundSign.Good
            ),
            FoundAlone alone => Read(Alone(alone.Element)),
            FoundAtPlug { Turning: { } dial } plug => Read(Turned(plug, dial)),
            FoundAtPlug plug => Between(Plug(plug).Tip, Plug(plug).Sleeve, plug.State),
            FoundAtMetal metal => Between(instrument.Jacks[0].Sleeve, metal.Metal, metal.State),
            FoundBetween between => Between(between.From, between.To, between.State),
            FoundAtJoint joint => Between(
                joint.Lug,
                instrument.JointAt(joint.Lug, joint.Wire) is { } at ? instrument.Runs[at.Run].Node : joint.Lug,
                State.Rest(instrument.Right).AtAll(5)
            ),
            _ => throw new ArgumentOutOfRangeException(nameof(place)),
        };

    private PluggedJack Plug(FoundAtPlug plug) => instrument.Jacks.First(jack => jack.Jack.Part == plug.Jack);

    private bool Has(FaultKind kind, int? element = null) =>
        faults.Any(one => one.Fault.Kind == kind && (element is null || one.Fault.Element == element));

    private static FoundWord Label(FoundSign sign) => new(sign) { Text = sign.ToString().ToLowerInvariant() };

    private double Alone(int element)
    {
        var own = faults.Where(one => one.Fault.Element == element).Select(one => one.Fault.Kind).ToList();
        return own.Exists(kind => kind is FaultKind.CoilOpen or FaultKind.ResistorOpen or FaultKind.TrackOpen)
                ? double.PositiveInfinity
            : own.Exists(kind => kind is FaultKind.CoilShorted or FaultKind.ResistorShorted) ? 0
            : circuit.Elements[element] switch
            {
                Coil coil => coil.Ohms,
                Track track => track.Ohms,
                Resistor resistor => resistor.Ohms,
                Inductor choke => choke.Ohms,
                _ => double.PositiveInfinity,
            };
    }

    private double Turned(FoundAtPlug plug, int dial)
    {
        var highest = 0.0;
        for (var stop = 0; stop <= 60; stop++)
        {
            var ohms = Ohms(Plug(plug).Tip, Plug(plug).Sleeve, plug.State.At(instrument.Right.Dials[dial], stop / 6.0));
            highest = Math.Max(highest, ohms);
        }

        return highest;
    }

    /// <summary>What is joined over the end of a track may read some ohms.</summary>
    private FoundReading Between(int one, int other, State state)
    {
        var ohms = Ohms(one, other, state);
        var isOverATrack = ohms == 0 && !IsJoinedByMetal(one, other, state);
        return Read(isOverATrack && draw.Happens(0.5) ? draw.Between(1.6, BenchOdds.TrackEndOhms) : ohms);
    }

    private double Ohms(int one, int other, State state) =>
        Ohmmeter.Read(NetworkBetween(one, other), state) is { } reading ? reading.Ohms : double.PositiveInfinity;

    private bool IsJoinedByMetal(int one, int other, State state)
    {
        var nodes = NetworkBetween(one, other).InContact(state);
        return nodes[circuit.Nets.OneNet[one]] == nodes[circuit.Nets.OneNet[other]];
    }

    private Network NetworkBetween(int one, int other) =>
        Network.Of(circuit with { Outputs = [new OutputJack(0, one, other, Ring: null)] })!;

    /// <summary>A meter of 4000 counts.</summary>
    private FoundReading Read(double ohms)
    {
        if (ohms > BenchOdds.OpenOhms)
        {
            return new FoundReading(double.PositiveInfinity, 0) { Text = "reads open" };
        }

        if (ohms <= BenchOdds.ZeroOhms)
        {
            return new FoundReading(0, 0) { Text = "reads 0" };
        }

        var shown = Math.Max(
            (ohms * scale * (1 + (BenchOdds.OwnFraction * draw.Normal()))) + (BenchOdds.OwnOhms * draw.Normal()),
            1.6
        );
        var step = Math.Pow(10, Math.Ceiling(Math.Log10(shown / 4000)));
        var rounded = Math.Max(Math.Round(shown / step) * step, step);
        return new FoundReading(rounded, step) { Text = $"reads {ValueText.Label(rounded, Unit.Ohm)}" };
    }

    private ImmutableArray<FoundFact> Heard(FoundAtPlug plug)
    {
        var jack = instrument.Jacks.IndexOf(Plug(plug));
        var (sound, should) = (SoundOf(nominal, jack, plug.State), SoundOf(instrument.Right, jack, plug.State));
        var facts = ImmutableArray.CreateBuilder<FoundFact>();
        if (sound.Outcome == Outcome.Sound)
        {
            AddCoils(facts, [.. sound.Heard.Select(heard => heard.Coil.Index)]);
            var isThin = Math.Pow(10, (sound.LevelDecibels - sound.Gains!.PowerDecibels) / 20) < 0.35;
            facts.Add(Label(Sign(isThin, BenchOdds.ThinWrong) ? FoundSign.Thin : FoundSign.Full));
            var hums = Math.Pow(10, sound.Hum!.ResidueDecibels / 20) > 0.30;
            facts.Add(Label(Sign(hums, BenchOdds.HumWrong) ? FoundSign.Hums : FoundSign.Quiet));
            AddShade(facts, sound, should);
        }
        else
        {
            var isSilent = sound.Outcome is Outcome.Short or Outcome.Quiet;
            facts.Add(Label(Sign(isSilent, BenchOdds.SilenceWrong) ? FoundSign.Silence : FoundSign.Dead));
        }

        if (Buzzes(jack) && !draw.Happens(BenchOdds.BuzzWrong / 2))
        {
            facts.Add(Label(FoundSign.Buzzes));
        }

        return facts.ToImmutable();
    }

    private static JackSound SoundOf(Circuit of, int jack, State state) =>
        JackSound.Of(Network.Of(of.SeenFrom(of.Outputs[jack]))!, state);

    /// <summary>Metal outside that should be on the sleeve and is not.</summary>
    private bool Buzzes(int jack) =>
        instrument
            .Circuit.Parts.Where(part => part.Kind == PartKinds.Metal)
            .SelectMany(part => part.Lugs)
            .Any(lug =>
                instrument.Right.Nets.SameNet(lug, instrument.Right.Outputs[jack].Sleeve)
                && !nominal.Nets.SameNet(lug, nominal.Outputs[jack].Sleeve)
            );

    private void AddCoils(ImmutableArray<FoundFact>.Builder facts, ImmutableArray<int> coils)
    {
        var all = instrument.Right.Elements.OfType<Coil>().Where(coil => coil.HearsStrings).ToList();
        if (draw.Happens(BenchOdds.CoilsWrong / 2))
        {
            var turned = all[draw.Below(all.Count)].Index;
            coils = coils.Contains(turned) ? coils.Remove(turned) : coils.Add(turned);
        }

        if (!coils.IsEmpty)
        {
            facts.Add(new FoundCoils([.. coils.Order()]) { Text = "heard" });
        }
    }

    /// <summary>Dark, bright and weak are said against what it should be.</summary>
    private void AddShade(ImmutableArray<FoundFact>.Builder facts, JackSound sound, JackSound should)
    {
        if (should.Outcome != Outcome.Sound)
        {
            return;
        }

        var moved =
            sound.Gains!.TrebleDecibels
            - sound.Gains.PowerDecibels
            - (should.Gains!.TrebleDecibels - should.Gains.PowerDecibels);
        if (Math.Abs(moved) > 6 && !draw.Happens(BenchOdds.DarkWrong / 2))
        {
            facts.Add(Label(moved < 0 ? FoundSign.Dark : FoundSign.Bright));
        }

        if (sound.LevelDecibels - should.LevelDecibels < -8 && !draw.Happens(BenchOdds.WeakWrong / 2))
        {
            facts.Add(Label(FoundSign.Weak));
        }
    }

    private bool Sign(bool isSo, double wrong) => draw.Happens(wrong / 2) ? !isSo : isSo;
}
