namespace WireText.Electrical.Traces;

/// <summary>Metal from one lug to another.</summary>
/// <param name="Wire">The wire that it is, or -1.</param>
/// <param name="Contact">The closed contact that it is, or -1.</param>
internal readonly record struct Way(int From, int To, int Wire, int Contact);

/// <summary>Ways between lugs, of which those are kept that lead from one end to another.</summary>
internal sealed class TraceWays(int lugs)
{
    private readonly List<Way> ways = [];
    private readonly List<int>[] waysAt = [.. Enumerable.Range(0, lugs).Select(_ => new List<int>())];
    private readonly bool[] isEnd = new bool[lugs];

    public IEnumerable<int> Ends => Enumerable.Range(0, isEnd.Length).Where(lug => isEnd[lug]);

    public void AddEnd(int lug) => isEnd[lug] = true;

    public void Add(Way way)
    {
        waysAt[way.From].Add(ways.Count);
        waysAt[way.To].Add(ways.Count);
        ways.Add(way);
    }

    /// <summary>What is left when everything that hangs by one end is taken away, again and again; and what reaches no end at all.</summary>
    public IEnumerable<Way> BetweenEnds()
    {
        var isKept = Enumerable.Repeat(true, ways.Count).ToArray();
        var left = waysAt.Select(at => at.Count).ToArray();
        var loose = new Queue<int>(Enumerable.Range(0, left.Length).Where(IsLoose));
        while (loose.TryDequeue(out var lug))
        {
            foreach (var way in waysAt[lug].Where(way => isKept[way]))
            {
                isKept[way] = false;
                left[lug]--;
                var other = ways[way].From == lug ? ways[way].To : ways[way].From;
                left[other]--;
                if (IsLoose(other))
                {
                    loose.Enqueue(other);
                }
            }
        }

        var reached = Reached(isKept);
        return ways.Where((way, i) => isKept[i] && reached[way.From]);

        bool IsLoose(int lug) => left[lug] == 1 && !isEnd[lug];
    }

    private bool[] Reached(bool[] isKept)
    {
        var reached = (bool[])isEnd.Clone();
        var open = new Queue<int>(Ends);
        while (open.TryDequeue(out var lug))
        {
            foreach (var way in waysAt[lug].Where(way => isKept[way]))
            {
                foreach (var next in new[] { ways[way].From, ways[way].To }.Where(next => !reached[next]))
                {
                    reached[next] = true;
                    open.Enqueue(next);
                }
            }
        }

        return reached;
    }
}
