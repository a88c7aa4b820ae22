using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;

namespace WireText.Electrical.Solving;

/// <summary>Orders amplifiers from the jack backwards, and finds those that feed themselves.</summary>
internal static class AmplifierOrder
{
    /// <summary>The live amplifiers, each before those that drive its input; null when some lie in a loop.</summary>
    /// <remarks>
    /// An amplifier takes what happens in the block of its input into the block of its output. A loop in that graph of
    /// blocks, also a block that holds both, is feedback.
    /// </remarks>
    public static ImmutableArray<LiveAmplifier>? Of(Circuit circuit, int nodeCount, ImmutableArray<LiveBranch> branches)
    {
        var outputs = branches.Where(branch => branch.Source.Kind == BranchKind.AmplifierOutput).ToList();
        if (outputs.Count == 0)
        {
            return [];
        }

        (int A, int B)[] edges =
        [
            .. branches.Select(branch => (branch.From, branch.To)),
            (LiveNetwork.Tip, LiveNetwork.Sleeve),
        ];
        var blockOf = BiconnectedBlocks.Label(nodeCount, edges);
        var inputs = branches
            .Select((branch, i) => (branch.Source, Place: i))
            .Where(branch => branch.Source.Kind == BranchKind.AmplifierInput)
            .ToDictionary(branch => branch.Source.Element, branch => branch.Place);
        var stages = outputs
            .Select(output =>
            {
                // An input whose two lugs are one node hears nothing: its branch is in no block and never live.
                var heard = inputs.TryGetValue(output.Source.Element, out var place) ? place : -1;
                return (
                    Amplifier: Live(
                        (Amplifier)circuit.Elements[output.Source.Element],
                        output,
                        heard < 0 ? null : branches[heard]
                    ),
                    From: heard < 0 ? BiconnectedBlocks.None : blockOf[heard],
                    To: blockOf[branches.IndexOf(output)]
                );
            })
            .Where(stage => stage.From != BiconnectedBlocks.None)
            .ToList();
        return Sort(stages);
    }

    private static LiveAmplifier Live(Amplifier amplifier, LiveBranch output, LiveBranch? input) =>
        new(amplifier.Index, input?.From ?? output.To, output.From, output.To, amplifier.Gain, amplifier.OutputOhms);

    private static ImmutableArray<LiveAmplifier>? Sort(List<(LiveAmplifier Amplifier, int From, int To)> stages)
    {
        // What an amplifier puts into a block is known once every amplifier that this block drives has been taken.
        var sorted = ImmutableArray.CreateBuilder<LiveAmplifier>();
        while (stages.Count > 0)
        {
            var ready = stages.FindIndex(stage =>
                stage.From != stage.To && !stages.Exists(other => other.From == stage.To)
            );
            if (ready < 0)
            {
                return null;
            }

            sorted.Add(stages[ready].Amplifier);
            stages.RemoveAt(ready);
        }

        return sorted.ToImmutable();
    }
}
