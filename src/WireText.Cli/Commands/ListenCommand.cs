using System.CommandLine;
using System.Globalization;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Storage;
using WireText.Electrical.Responses;
using WireText.Listening;
using WireText.Output;
using WireText.Quantities;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext listen</c></summary>
internal sealed class ListenCommand : Command
{
    private const double UsualPeak = -12;
    private const double LowestPeak = -60;

    private readonly Argument<string> file = CommonOptions.OneFile();
    private readonly Option<string> output = new("--output", "-o")
    {
        Description = "Where the sound goes: a WAV file; - is standard output",
        HelpName = "OUT.wav",
        Required = true,
    };
    private readonly Option<string[]> at = CommonOptions.At<string[]>("given again: played after it");
    private readonly Option<string[]> sweep = new("--sweep")
    {
        Description = "A dial at N travels, or each position of a switch, one after another: tone=0..10:3, or sel",
        HelpName = "CONTROL[=A..B:N]",
    };
    private readonly Option<string?> views = new Option<string?>("--views")
    {
        Description = "Every position that makes a difference, one after another",
        HelpName = "positions",
    }.AcceptOnlyFromAmong("positions");
    private readonly Option<string[]> whatIf = new("--what-if")
    {
        Description = "Other values after those that are wired, such as dark=22n or cable=700p; may be given again",
        HelpName = "NAME=VALUE,...",
    };
    private readonly Option<string?> input = new("--input")
    {
        Description = "A recording of one channel to send through the circuit, in place of strings",
        HelpName = "IN.wav",
    };
    private readonly Option<string?> pluck = new("--pluck")
    {
        Description = "Where strings are plucked, from the bridge, such as 130mm",
        HelpName = "LENGTH",
    };
    private readonly ChoiceOption<int> bits = new("--bits", "Bits of a sample", ("16", 16), ("24", 24));
    private readonly ChoiceOption<int> rate = new(
        "--rate",
        "Samples a second, of strings; a recording keeps its own",
        ("48000", 48_000),
        ("44100", 44_100),
        ("96000", 96_000)
    );
    private readonly DecibelOption peak = new(
        "--peak",
        LowestPeak,
        0,
        UsualPeak,
        "How high the highest sample of all is, below the most that a file can hold"
    );
    private readonly JackOption jack = new();
    private readonly PartsOption parts = new();

    public ListenCommand(CliContext context)
        : base(
            "listen",
            """
            Writes what each position sounds like as a WAV file. It is a model, of plucked strings or with a recording of
            your own. Turn the volume down before you listen.

            Example: wiretext listen guitar.wiring -o guitar.wav
            """
        )
    {
        Add(file);
        Add(output);
        Add(at);
        Add(sweep);
        Add(views);
        Add(whatIf);
        Add(input);
        Add(pluck);
        Add(bits);
        Add(rate);
        Add(peak);
        Add(jack);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var read = ReadCircuit
            .From(parsed.GetRequiredValue(file), parts.In(parsed, context.Sources), context)
            .At(jack, parsed);
        var request = RequestIn(parsed, context);
        var sequence = SequenceOf(read, request);
        var (sound, plucked) = SoundOf(sequence, read.Circuit, request);
        context.Results.Write(request.Target, WaveWriter.Write(sound.Recording, request.Bits));
        var told = request.Target == StandardStream.Name ? context.Error : context.Output;
        told.WriteLine(Summary(sound, request));
        told.WriteLine("");
        told.Write(ListenText.Write(sound, read.Circuit, plucked, request.PluckMetres is null));
        return read.Code;
    }

    private ListenRequest RequestIn(ParseResult parsed, CliContext context)
    {
        var recording = RecordingIn(parsed, context);
        Refuse(recording is not null && IsGiven(parsed, rate), "--rate is for strings; a recording keeps its own");
        Refuse(recording is not null && IsGiven(parsed, pluck), "--pluck is for strings; leave it or --input out");
        var hasViews = parsed.GetValue(views) is not null;
        Refuse(hasViews && IsGiven(parsed, at), "--views is every position; leave it or --at out");
        return new ListenRequest(
            parsed.GetRequiredValue(output),
            parsed.GetValue(at) ?? [],
            parsed.GetValue(sweep) ?? [],
            parsed.GetValue(whatIf) ?? [],
            hasViews,
            recording,
            recording?.Rate ?? rate.In(parsed),
            bits.In(parsed),
            peak.In(parsed),
            PluckIn(parsed)
        );
    }

    private Recording? RecordingIn(ParseResult parsed, CliContext context)
    {
        if (parsed.GetValue(input) is not { } path)
        {
            return null;
        }

        var read = WaveReader.Read(context.Sources.ReadBytes(path, SourceRole.Recording, WaveReader.MostBytes));
        return read.Value ?? throw new CannotException($"cannot read '{path}': {read.Problem}");
    }

    private double? PluckIn(ParseResult parsed)
    {
        if (parsed.GetValue(pluck) is not { } text)
        {
            return null;
        }

        var read = ValueReader.Read(text, ValueUse.StringPlace);
        return read.Value
            ?? throw new CannotException(
                $"--pluck {text}: {read.Problem}" + (read.Suggestion is { } meant ? $"; did you mean '{meant}'?" : "")
            );
    }

    private static HeardSequence SequenceOf(ReadCircuit read, ListenRequest request)
    {
        IReadOnlyList<State> states =
            request.HasViews ? PositionViews.StatesOf(read.Study)
            : request.At.Count > 0 ? [.. request.At.Select(read.StateAt)]
            : [State.Rest(read.Circuit)];
        var sweeps = request.Sweeps.Select(text => Good("--sweep", text, Sweep.Read(read.Circuit, text)));
        var changes = request
            .WhatIf.Select(text => Good("--what-if", text, CircuitChange.Read(read.Circuit, text)))
            .ToList();
        var response =
            ResponseStudy.Of(read.Study, states, [.. sweeps], changes)
            ?? throw new CannotException(
                $"that is more than {ResponseStudy.MostCurves} passages; ask for fewer at once with --at"
            );
        return HeardSequence.Of(read.Study, response, changes);
    }

    private static (HeardSound Sound, double? PluckMetres) SoundOf(
        HeardSequence sequence,
        Circuit circuit,
        ListenRequest request
    )
    {
        if (request.Recording is { } recording)
        {
            RefuseLong(sequence, recording.Samples.Length, request);
            return (sequence.OfRecording(recording, request.PeakDecibels), null);
        }

        var instrument = Instrument.Of(circuit);
        var metres = request.PluckMetres ?? Phrase.UsualPluckShare * instrument.ScaleMetres;
        RefuseBeyond(circuit, instrument, metres);
        var phrase = Phrase.Of(instrument, metres);
        RefuseLong(sequence, StringPlayer.Samples(phrase.Milliseconds, request.Rate), request);
        return (sequence.OfStrings(phrase, request.Rate, request.PeakDecibels), metres);
    }

    /// <summary>What lies beside the strings hears nothing of them.</summary>
    private static void RefuseBeyond(Circuit circuit, Instrument instrument, double pluckMetres)
    {
        var shortest = instrument.ShortestMetres;
        Refuse(
            pluckMetres >= shortest,
            $"--pluck: strings are plucked at less than {Millimetres(shortest)} from the bridge, the shortest that is played"
        );
        foreach (var spot in CoilSpot.Of(circuit))
        {
            Refuse(
                spot.Metres <= 0 || spot.Metres >= shortest,
                $"'{spot.Coil.Name}' lies {Millimetres(spot.Metres)} from the bridge, and strings sound between 0 and {Millimetres(shortest)}; say where with at= on its line, or the length with load scale="
            );
        }
    }

    private static void RefuseLong(HeardSequence sequence, int passage, ListenRequest request) =>
        Refuse(
            sequence.SamplesOf(passage, request.Rate) > HeardSequence.MostSamples,
            $"that is more than {HeardSequence.MostSamples / request.Rate} s at {request.Rate} samples a second; ask for fewer passages or cut the recording"
        );

    private static string Summary(HeardSound sound, ListenRequest request)
    {
        var seconds = (double)sound.Recording.Samples.Length / sound.Recording.Rate;
        var isSilent = sound.Passages.All(passage => passage.Power == 0);
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{request.Target} is written: {seconds:0.0} s, {sound.Recording.Rate} samples a second of {request.Bits} bits, "
            )
            + (
                isSilent
                    ? "all silence"
                    : string.Create(CultureInfo.InvariantCulture, $"peak {request.PeakDecibels:0.##} dB")
                        .Replace('-', '\u2212')
            );
    }

    private static string Millimetres(double metres) =>
        (1000 * metres).ToString("0.# mm", CultureInfo.InvariantCulture);

    private static bool IsGiven(ParseResult parsed, Option option) => parsed.GetResult(option) is { Implicit: false };

    private static void Refuse(bool isWrong, string message)
    {
        if (isWrong)
        {
            throw new CannotException(message);
        }
    }

    private static T Good<T>(string option, string text, Read<T> read)
        where T : class => read.Value ?? throw new CannotException($"{option} {text}: {read.Problem}");
}
