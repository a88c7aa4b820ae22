using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>Which lugs are one piece of metal: found by walking from lug to lug over what joins them.</summary>
internal sealed class MetalPieces
{
    /// <summary>A piece of a track below this is a joint, in ohms: the definition of a track says so.</summary>
    private const double JointOhms = 0.01;

    /// <summary>For each lug the first lug of its piece.</summary>
    private readonly int[] firsts;

    private MetalPieces(int lugCount, IEnumerable<(int From, int To)> joints)
    {
        var beside = joints
            .SelectMany(joint => new[] { joint, (From: joint.To, To: joint.From) })
            .ToLookup(joint => joint.From, joint => joint.To);
        firsts = new int[lugCount];
        Array.Fill(firsts, -1);
        for (var lug = 0; lug < lugCount; lug++)
        {
            if (firsts[lug] < 0)
            {
                Walk(lug, beside);
            }
        }
    }

    /// <summary>By solder, and by what is one inside a part.</summary>
    public static MetalPieces Soldered(Circuit circuit) =>
        new(circuit.Lugs.Length, circuit.Joins.Where(join => join.Kind != JoinKind.Touch).Select(Ends));

    /// <summary>By solder and by metal that touches.</summary>
    public static MetalPieces Touching(Circuit circuit) => new(circuit.Lugs.Length, circuit.Joins.Select(Ends));

    /// <summary>As <see cref="Touching"/>, and by the contacts that are closed.</summary>
    public static MetalPieces InContact(Circuit circuit, BenchSetting setting) =>
        new(circuit.Lugs.Length, circuit.Joins.Select(Ends).Concat(Contacts(circuit, setting)));

    /// <summary>As <see cref="InContact"/>, and by wipers that stand at an end of their track.</summary>
    public static MetalPieces AtTheDials(Circuit circuit, BenchSetting setting) =>
        new(
            circuit.Lugs.Length,
            circuit.Joins.Select(Ends).Concat(Contacts(circuit, setting)).Concat(WipersAtAnEnd(circuit, setting))
        );

    public int this[int lug] => firsts[lug];

    public bool AreOne(int lug, int other) => firsts[lug] == firsts[other];

    /// <summary>The two pieces of a track that are left as resistances, low lug to wiper and wiper to high lug.</summary>
    public static IEnumerable<(int From, int To, double Ohms)> Sections(Track track, BenchSetting setting) =>
        AllSections(track, setting).Where(section => section.Ohms >= JointOhms && double.IsFinite(section.Ohms));

    public static IEnumerable<(int From, int To)> Contacts(Circuit circuit, BenchSetting setting) =>
        from control in circuit.Controls
        from closed in control.Positions[setting.Positions[control.Index]].Closed
        from lug in closed.Skip(1)
        select (closed[0], lug);

    /// <summary>Infinite ohms where the wiper has left the track.</summary>
    private static IEnumerable<(int From, int To, double Ohms)> AllSections(Track track, BenchSetting setting)
    {
        var travel = setting.Travels[track.Dial];
        if (track.FreeAt is { } end && (end > 5 ? travel >= end : travel <= end))
        {
            return [(track.Low, track.Wiper, double.PositiveInfinity), (track.Wiper, track.High, 0)];
        }

        var below = track.Taper.FractionAt(travel);
        return [(track.Low, track.Wiper, track.Ohms * below), (track.Wiper, track.High, track.Ohms * (1 - below))];
    }

    private static IEnumerable<(int From, int To)> WipersAtAnEnd(Circuit circuit, BenchSetting setting) =>
        from track in circuit.Elements.OfType<Track>()
        from section in AllSections(track, setting)
        where section.Ohms < JointOhms
        select (section.From, section.To);

    private static (int From, int To) Ends(Join join) => (join.From, join.To);

    private void Walk(int first, ILookup<int, int> beside)
    {
        var open = new Stack<int>([first]);
        while (open.TryPop(out var lug))
        {
            if (firsts[lug] < 0)
            {
                firsts[lug] = first;
                foreach (var next in beside[lug])
                {
                    open.Push(next);
                }
            }
        }
    }
}
