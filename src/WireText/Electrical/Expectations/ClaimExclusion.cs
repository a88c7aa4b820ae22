using WireText.Circuits;

namespace WireText.Electrical.Expectations;

/// <summary>Whether two claims about one state can both be true, by what they say alone.</summary>
internal static class ClaimExclusion
{
    /// <summary>What a claim says of the jack as a whole; a reading can be there with silence and with sound.</summary>
    private enum Jack
    {
        Silent,
        Open,
        Dead,
        Sounding,
        Unsaid,
    }

    public static bool Excludes(Circuit circuit, Claim a, Claim b) =>
        DoMeanOneInstrument(a, b) && DoExclude(circuit, a, b);

    /// <summary>
    /// True where what both say is said of one instrument: both of the one as written, or of such shares of a run that some instrument is
    /// in both.
    /// </summary>
    private static bool DoMeanOneInstrument(Claim a, Claim b) =>
        (a.Share, b.Share) switch
        {
            (null, null) => true,
            ({ } first, { } second) => first + second > 1,
            _ => false,
        };

    private static bool DoExclude(Circuit circuit, Claim a, Claim b) =>
        (a, b) switch
        {
            (ReadsClaim x, ReadsClaim y) => AreApart((x.Ohms, x.Tolerance), (y.Ohms, y.Tolerance)),
            (ResonatesClaim x, ResonatesClaim y) => AreApart((x.Hertz, x.Tolerance), (y.Hertz, y.Tolerance)),
            (LevelAtClaim x, LevelAtClaim y) => x.Hertz == y.Hertz
                && Math.Abs(x.Decibels - y.Decibels) > x.Tolerance + y.Tolerance,
            (LevelClaim x, LevelClaim y) => Math.Abs(x.Decibels - y.Decibels) > x.Tolerance + y.Tolerance,
            (BatteryClaim x, BatteryClaim y) => x.IsOn != y.IsOn,
            (CoilsClaim x, CoilsClaim y) => ClaimedForm.AreApart(circuit, x.Coils, y.Coils),
            (ReadsClaim, OpenClaim) or (OpenClaim, ReadsClaim) => true,
            _ => JackOf(a) is not Jack.Unsaid and var first
                && JackOf(b) is not Jack.Unsaid and var second
                && first != second,
        };

    /// <summary>Values with their tolerances, as fractions of them, that share no value.</summary>
    private static bool AreApart((double Value, double Tolerance) a, (double Value, double Tolerance) b) =>
        Math.Abs(a.Value - b.Value) > (a.Value * a.Tolerance) + (b.Value * b.Tolerance);

    private static Jack JackOf(Claim claim) =>
        claim switch
        {
            SilenceClaim => Jack.Silent,
            OpenClaim => Jack.Open,
            DeadClaim => Jack.Dead,
            CoilsClaim or HumCancellingClaim or ResonatesClaim or LevelClaim or LevelAtClaim => Jack.Sounding,
            _ => Jack.Unsaid,
        };
}
