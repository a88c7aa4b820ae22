using WireText.Circuits;

namespace WireText.Tests.Judging;

/// <summary>How two circuits of the same parts compare.</summary>
internal enum Verdict
{
    Equal,

    /// <summary>Equal, but that in some positions all that is heard has the other sign.</summary>
    EqualButForSign,

    Different,
}

/// <summary>
/// Tells whether a circuit does what the right one does: a solver of the tests' own, which shares with the program no more than
/// the bound circuit. In every position of switches and plugs, dials turned, it compares how metal is grounded, what works and
/// what is drawn from batteries, what becomes of each coil, the voltage at the jack for each coil, and the impedance there.
/// </summary>
/// <remarks>No two parts of a shop are alike: every value is taken a little off, so that an exchange of twins is seen.</remarks>
internal sealed class Judge
{
    private readonly List<(BenchSetting Setting, Behaved Behaved)> right;

    public Judge(Circuit right) =>
        this.right = [
            .. BenchSetting
                .AllPositions(right)
                .Select(setting => (setting, new Behaved(PartSpread.Of(right), setting))),
        ];

    public Verdict Compare(Circuit other)
    {
        var (spread, verdict) = (PartSpread.Of(other), Verdict.Equal);
        foreach (var (setting, behaved) in right)
        {
            var found = new Behaved(spread, setting);
            if (behaved.IsLike(found, sign: 1))
            {
                continue;
            }

            if (!behaved.IsLike(found, sign: -1))
            {
                return Verdict.Different;
            }

            verdict = Verdict.EqualButForSign;
        }

        return verdict;
    }
}
