using WireText.Circuits;
using WireText.Diagnosing;
using WireText.Electrical.Faults;
using WireText.Electrical.Networks;
using WireText.Electrical.Solving;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Diagnosing;

/// <summary>What holds of every diagnosis, and what a bench knows of single faults.</summary>
public class DiagnosticianTests
{
    private static readonly string Hums = File.ReadAllText(
        Repository.PathOf("examples", "diagnose", "hums-in-the-middle.wiring")
    );

    public static TheoryData<string> Examples => Rows.Of(Repository.Examples);

    [Fact]
    public void TheOrderOfFindings_MovesNoShare()
    {
        var circuit = Compile(Hums);
        var one = Diagnostician.Of(circuit, circuit.Found);
        var other = Diagnostician.Of(circuit, [.. circuit.Found.Reverse()]);

        Assert.Equal(one.Explanations.Length, other.Explanations.Length);
        Every.Item(
            one.Explanations.Zip(other.Explanations),
            pair =>
            {
                Assert.Equal(pair.First.Words.ToArray(), pair.Second.Words.ToArray());
                Assert.Equal(pair.First.Share, pair.Second.Share, 0.01);
            }
        );
    }

    [Fact]
    public void OtherNames_MoveNoShare()
    {
        var renamed = Hums.Replace("neck", "n2", StringComparison.Ordinal)
            .Replace("vol", "loud", StringComparison.Ordinal);
        var (one, other) = (Diagnose(Hums), Diagnose(renamed));

        Assert.Equal(one.Explanations.Select(e => e.Share), other.Explanations.Select(e => e.Share));
    }

    [Fact]
    public void TheTwoJointsOfAWire_AreTwoAnswersOnlyForAProbeOnTheWire()
    {
        var before = Diagnose(Hums + "found sel.B2 to sel.B3: reads open\n");
        var after = Diagnose(Hums + "found sel.B2 to sel.B3: reads open\nfound joint sel.B2 of sel.B3: reads open\n");

        Assert.Equal(before.Explanations[0].Share, before.Explanations[1].Share, 0.35);
        Assert.Equal(DiagnosisEnd.OneFault, after.End);
        Assert.Equal("wire sel.B3 to sel.B2: no joint at sel.B2", Assert.Single(after.Explanations[0].Words));
    }

    [Fact]
    public void ACircuit_IsNotSureOfAFaultWhereEverythingReadsRight()
    {
        var diagnosis = Diagnose(
            Hums.Split("# what was found")[0]
                + "found sel=bridge: reads 7.2k\nfound sel=both: reads 3.3k\nfound sel=neck: reads 6k\n"
        );

        Assert.Equal(ExplanationKind.NothingWrong, diagnosis.Explanations[0].Kind);
        Assert.NotEqual(DiagnosisEnd.OneFault, diagnosis.End);
    }

    /// <summary>No fault of the list has a coil of a third: a reading of another pickup is outside of it.</summary>
    [Fact]
    public void WhatNoFaultExplains_IsOutsideTheList()
    {
        var diagnosis = Diagnose(
            Hums.Split("# what was found")[0]
                + "found sel=bridge: reads 12.4k\nfound sel=both: reads 4.1k\nfound sel=neck: reads 6k\nfound bridge alone: reads 12.9k\n"
        );

        Assert.Equal(ExplanationKind.Outside, diagnosis.Explanations[0].Kind);
    }

    [Fact]
    public void FindingsThatContradictEachOther_AreToldAndNothingIsSure()
    {
        var diagnosis = Diagnose(
            Hums + "found sel=both: reads 3.3k\nfound sel=neck: reads 0\nfound sel=neck: reads open\n"
        );

        Assert.Contains(diagnosis.Explanations, one => !one.Misfits.IsEmpty || one.Kind == ExplanationKind.Outside);
    }

    [Fact]
    public void TwoHundredFindings_AreTakenIn()
    {
        var many = string.Concat(Enumerable.Range(0, 300).Select(_ => "found sel=bridge: reads 7.24k\n"));

        var diagnosis = Diagnose(Hums + many);

        Assert.Equal(Diagnostician.MostFindings, diagnosis.Findings);
        Assert.Equal(1, diagnosis.Explanations.Sum(one => one.Share), 0.01);
    }

    /// <summary>Every outcome that is printed, found, puts an explanation that it leaves on top.</summary>
    [Fact]
    public void EveryOutcomeThatIsPrinted_LeavesWhatItSays()
    {
        var circuit = Compile(Hums);
        var before = Diagnostician.Of(circuit, circuit.Found);

        Every.Item(
            before.Next!.Outcomes,
            outcome =>
            {
                var after = Diagnose(Hums + $"found {before.Next.Where}: reads {outcome.Text}\n");
                var left = outcome.Leaves.SelectMany(number => before.Explanations[number - 1].Words);
                Assert.Contains(after.Explanations[0].Words[0], left);
            }
        );
    }

    /// <summary>With no fault in it the instrument reads as the ohmmeter of the positions says, joint by joint.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void ARightInstrument_ReadsAsTheTableOfPositions(string example)
    {
        var circuit = Compile(File.ReadAllText(example));
        var instrument = Instrument.Of(circuit);
        var forecast = Forecast.Of(instrument);
        var network = Network.Of(circuit)!;

        Every.Item(
            MeasurementList
                .Of(instrument, [])
                .Where(one => one is { IsByEar: false, Place: FoundAtPlug { Turning: null } }),
            measurement =>
            {
                var plug = (FoundAtPlug)measurement.Place;
                if (plug.Jack == circuit.Outputs[0].Part)
                {
                    var reading = Ohmmeter.Read(network, plug.State)!.Value;
                    Assert.Equal(FoundLines.Reading(reading.Ohms), forecast.Right(measurement));
                }
            }
        );
    }

    /// <summary>The facts of the bench: what a shorted tone capacitor and an open coil show.</summary>
    [Theory]
    [InlineData("capacitor dark is shorted", "rest tone=0", "0")]
    [InlineData("coil neck is open", "sel=neck", "250k")]
    [InlineData("coil neck is open", "sel=both", "7.09k")]
    [InlineData("tip spring of out does not meet the plug", "sel=neck", "open")]
    public void AFault_ShowsWhatTheBenchKnows(string words, string at, string shown)
    {
        var instrument = Instrument.Of(Compile(Hums));
        var fault = FaultList.Of(instrument).Single(one => one.Words == words);
        var state = StateReader.Read(instrument.Circuit, at.Replace("rest ", "", StringComparison.Ordinal)).Value!;
        var plug = new FoundAtPlug(instrument.Circuit.Outputs[0].Part, state, null);

        Assert.Equal(shown, Forecast.Of(instrument).With(fault, fault.Sizes[0], new Measurement(plug, IsByEar: false)));
    }

    /// <summary>A fault has weight, and each instance is listed once.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void TheListOfFaults_NamesEachOnce(string example)
    {
        var faults = FaultList.Of(Instrument.Of(Compile(File.ReadAllText(example))));

        Assert.Equal([], faults.CountBy(fault => fault.Words).Where(one => one.Value > 1).Select(one => one.Key));
        Every.Item(faults, fault => Assert.Equal(fault.Kind, FaultWeights.Usual[fault.Kind].Kind));
        Assert.Equal(Enumerable.Range(0, faults.Length), faults.Select(fault => fault.Index));
    }

    private static Diagnosis Diagnose(string text)
    {
        var circuit = Compile(text);
        return Diagnostician.Of(circuit, circuit.Found);
    }

    private static Circuit Compile(string text) =>
        Compilation.Of(new SourceText("g.wiring", text), NoSources.Instance).Circuit!;
}
