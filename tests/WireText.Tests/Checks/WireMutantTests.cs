using WireText.Checks;
using WireText.Circuits;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>Right examples with one wire changed: one cause gives one finding, and it is near the change.</summary>
public class WireMutantTests
{
    public static TheoryData<string> Examples => [.. Repository.Examples.Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Examples))]
    public void WireTakenOut_OfAnExample_GivesOneFindingOrItsTwoLooseEnds(string example)
    {
        var circuit = Read(example);
        var counts = new List<int>();
        foreach (var wire in circuit.Wires.Where(IsSoldered))
        {
            var found = Find(circuit.Without(wire.Index));
            counts.Add(found.Count);

            Assert.True(found.Count <= 2, $"{wire.Id}: {string.Join("; ", found.Select(finding => finding.Message))}");
            Assert.True(found.Count == 0 || found.Exists(finding => IsNear(circuit, wire, finding)), wire.Id);
        }

        Assert.True(Median(counts) <= 1, example);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void WireEndMoved_ToANeighbouringLug_GivesFewFindings(string example)
    {
        var circuit = Read(example);
        var counts = new List<int>();
        foreach (var mutant in Moved(circuit))
        {
            var found = Find(mutant.Circuit);
            counts.Add(found.Count);

            Assert.True(
                found.Count <= 3,
                $"{mutant.What}: {string.Join("; ", found.Select(finding => finding.Message))}"
            );
        }

        Assert.True(Median(counts) <= 1, example);
    }

    private static IEnumerable<(string What, Circuit Circuit)> Moved(Circuit circuit) =>
        from wire in circuit.Wires
        where IsSoldered(wire)
        from end in new[] { wire.From, wire.To }
        where end >= 0 && !circuit.Lugs[end].IsLead
        let part = circuit.PartOf(circuit.Lugs[end])
        let place = part.Lugs.IndexOf(end)
        from neighbour in new[] { place - 1, place + 1 }
        where neighbour >= 0 && neighbour < part.Lugs.Length
        let lug = part.Lugs[neighbour]
        where !circuit.Lugs[lug].IsInner && !wire.Touches(lug)
        select (
            $"{wire.Id} to {circuit.NameOf(lug)}",
            circuit.WithEnds((new WireEnd(wire.Index, wire.From == end), lug))
        );

    /// <summary>True when a finding marks a lug or a part of the net that the wire was in, another lug of a part it ended on, or the jack.</summary>
    private static bool IsNear(Circuit circuit, Wire wire, Finding finding)
    {
        var net = circuit.Nets.Members[circuit.Nets.OneNet[wire.From]].Select(lug => circuit.Lugs[lug]).ToList();
        return finding.Subjects.Any(subject =>
                net.Exists(lug => subject == Subject.Lug(lug.Name) || subject == Subject.Part(circuit.PartOf(lug).Name))
                || circuit.FindLug(subject.Name)?.Part is { } part
                    && (part == circuit.Lugs[wire.From].Part || part == circuit.Lugs[wire.To].Part)
                || subject == Subject.Part(circuit.Parts[circuit.Outputs[0].Part].Name)
            )
            // What is meant stands at no lug: it says in which position it fails.
            || finding.Id == "expect";
    }

    private static bool IsSoldered(Wire wire) => wire.Kind is not WireKind.PartLead && wire is { From: >= 0, To: >= 0 };

    private static List<Finding> Find(Circuit circuit) =>
        [.. Checker.Judge(circuit).Findings.Where(finding => finding.Severity >= Severity.Warning)];

    private static int Median(List<int> counts) => counts.Order().ElementAt(counts.Count / 2);

    private static Circuit Read(string example)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        return WiringCompiler.Check(new SourceText(example, text), NoSources.Instance).Circuit!;
    }
}
