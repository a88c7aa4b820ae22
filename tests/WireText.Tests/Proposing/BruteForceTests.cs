using WireText.Parts;
using WireText.Proposing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Proposing;

/// <summary>
/// Every harness of small switches, told by hand what it does: two coils that are grounded at one end each, so that a coil is heard where
/// its lead is on the rail and the rail is not on ground. Nothing of the search is used.
/// </summary>
public class BruteForceTests
{
    private const int Ground = 0;
    private const int Neck = 1;
    private const int Bridge = 2;
    private const int Rail = 3;
    private const int Nets = 4;
    private const int Jumper = 4;
    private const int Empty = 5;

    private static readonly string[] Words = ["", "neck", "bridge", "neck parallel bridge"];

    public static TheoryData<string> Models =>
        ["spdt", "spdt-on-off-on", "dpdt", "dpdt-on-on-on-a-first", "dpdt-on-on-on-bridging", "toggle-3way"];

    [Theory]
    [MemberData(nameof(Models))]
    public void EveryWish_TakesTheFewestJointsThatAnyHarnessHas(string model)
    {
        var definition = StandardParts.Catalogue.Find(PartKinds.Switch, model)!;
        var least = Least(definition);
        var stops = definition.Controls[0].Positions.Length;

        Every.Item(
            Wishes(stops),
            wish =>
            {
                var proposal = Of(definition, wish);
                var name = string.Join(", ", wish.Select(heard => Words[heard]));
                var joints = least.TryGetValue(Key(wish), out var found) ? found : 0;
                Assert.True(joints == proposal.Joints, $"{name}: {joints} joints by hand, {proposal.Joints} found");
                Assert.Equal(joints > 0 ? ProposalOutcome.Found : ProposalOutcome.Impossible, proposal.Outcome);
            }
        );
    }

    /// <summary>What each position is to let be heard, a bit a coil: both pickups somewhere, and not the same everywhere.</summary>
    private static IEnumerable<int[]> Wishes(int stops)
    {
        // Of three positions every second wish is looked at, for time's sake.
        for (var number = 0; number < Math.Pow(3, stops); number += stops - 1)
        {
            int[] wish = [.. Enumerable.Range(0, stops).Select(stop => 1 + ((number / (int)Math.Pow(3, stop)) % 3))];
            if (wish.Aggregate((a, b) => a | b) == 3 && wish.Distinct().Skip(1).Any())
            {
                yield return wish;
            }
        }
    }

    private static Proposal Of(PartDefinition definition, int[] wish)
    {
        var claims = wish.Select(
            (heard, stop) => $"expect sel={definition.Controls[0].Positions[stop].Name}: {Words[heard]}"
        );
        var text = $"""
            pickup neck   single-coil dcr=6.1k l=2.2H c=110p wind=ccw magnet=south
            pickup bridge single-coil dcr=7.0k l=2.7H c=120p wind=cw magnet=north
            switch sel    {definition.Model}
            pot    vol    250k audio
            jack   out    mono
            wire   neck.ground   to vol.case black
            wire   bridge.ground to vol.case black
            wire   vol.1         to vol.case bare
            wire   vol.case      to out.sleeve black
            wire   vol.2         to out.tip blue
            {(definition.Model == "toggle-3way" ? "wire sel.case to vol.case black" : "")}
            {string.Join('\n', claims)}
            find   sel

            """;
        return Proposer.Of(
            Compilation.Of(new SourceText("open.wiring", text), NoSources.Instance),
            new ProposalRequest()
        );
    }

    /// <summary>For each list of what is heard, the fewest joints of any harness that lets it be heard.</summary>
    private static Dictionary<int, int> Least(PartDefinition definition)
    {
        var least = new Dictionary<int, int>();
        var lugs = definition.Terminals.Where(lug => !lug.IsMetal).ToList();
        var positions = definition
            .Controls[0]
            .Positions.Select(position =>
                position
                    .Closed.Select(group =>
                        group.Terminals.Select(name => lugs.FindIndex(lug => lug.Name == name)).ToArray()
                    )
                    .ToArray()
            )
            .ToArray();
        var labels = new int[lugs.Count];
        foreach (var direct in Directs())
        {
            Array.Fill(labels, 0);
            do
            {
                var key = Heard(positions, labels, direct.Of);
                if (
                    key == 0
                    || labels.Count(label => label == Jumper) == 1
                    || lugs.Where((lug, i) => !lug.IsSpare && labels[i] == Empty).Any()
                    || !ArePolesUsed(positions, labels)
                    || !IsReached(direct.Of, labels, Neck)
                    || !IsReached(direct.Of, labels, Bridge)
                )
                {
                    continue;
                }

                var joints = direct.Rank + labels.Count(label => label != Empty) - (labels.Contains(Jumper) ? 1 : 0);
                least[key] = Math.Min(joints, least.GetValueOrDefault(key, int.MaxValue));
            } while (Next(labels));
        }

        return least;
    }

    /// <summary>Every way to join the two leads and the rail for good, with each other or with ground.</summary>
    private static IEnumerable<(int[] Of, int Rank)> Directs()
    {
        for (var neck = 0; neck <= Neck; neck++)
        {
            for (var bridge = 0; bridge <= Bridge; bridge++)
            {
                for (var rail = 0; rail <= Rail; rail++)
                {
                    int[] of = [Ground, neck, bridge, rail];
                    if (of.All(one => of[one] == one))
                    {
                        yield return (of, Nets - of.Distinct().Count());
                    }
                }
            }
        }
    }

    /// <summary>A lead that is soldered nowhere is a mistake.</summary>
    private static bool IsReached(int[] direct, int[] labels, int net) =>
        direct.Count(one => one == direct[net]) > 1
        || labels.Any(label => label < Nets && direct[label] == direct[net]);

    /// <summary>Of lugs that positions join with each other, where any is soldered, two are that some position joins.</summary>
    private static bool ArePolesUsed(int[][][] positions, int[] labels)
    {
        var groups = positions.SelectMany(position => position).ToList();
        for (var lug = 0; lug < labels.Length; lug++)
        {
            if (labels[lug] == Empty)
            {
                continue;
            }

            var pole = new HashSet<int> { lug };
            for (var i = 0; i < groups.Count; i++)
            {
                pole.UnionWith(groups.Where(group => group.Any(pole.Contains)).SelectMany(group => group));
            }

            if (!groups.Exists(group => group.Any(pole.Contains) && group.Count(one => labels[one] != Empty) > 1))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The coils that are heard in each position, a bit each, in one number; 0 where some position lets nothing be heard.</summary>
    private static int Heard(int[][][] positions, int[] labels, int[] direct)
    {
        // Nets, the jumper, and each lug, so that an empty lug can join two others.
        Span<int> soldered = stackalloc int[Nets + 1 + labels.Length];
        for (var i = 0; i < soldered.Length; i++)
        {
            soldered[i] = i;
        }

        for (var net = 0; net < Nets; net++)
        {
            Join(soldered, net, direct[net]);
        }

        for (var lug = 0; lug < labels.Length; lug++)
        {
            if (labels[lug] != Empty)
            {
                Join(soldered, Nets + 1 + lug, labels[lug]);
            }
        }

        var key = 0;
        Span<int> of = stackalloc int[soldered.Length];
        foreach (var position in positions)
        {
            soldered.CopyTo(of);
            foreach (var group in position)
            {
                foreach (var lug in group)
                {
                    Join(of, Nets + 1 + group[0], Nets + 1 + lug);
                }
            }

            var heard = (of[Neck] == of[Rail] ? 1 : 0) | (of[Bridge] == of[Rail] ? 2 : 0);
            if (heard == 0 || of[Rail] == of[Ground])
            {
                return 0;
            }

            key = (key * 4) + heard;
        }

        return key;
    }

    private static void Join(Span<int> of, int a, int b)
    {
        if (of[a] != of[b])
        {
            of.Replace(of[a], of[b]);
        }
    }

    private static bool Next(int[] labels)
    {
        for (var lug = 0; lug < labels.Length; lug++)
        {
            if (++labels[lug] <= Empty)
            {
                return true;
            }

            labels[lug] = 0;
        }

        return false;
    }

    private static int Key(int[] heard) => heard.Aggregate(0, (key, one) => (key * 4) + one);
}
