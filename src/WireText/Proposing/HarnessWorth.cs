namespace WireText.Proposing;

/// <summary>What tells harnesses of equal joints apart, the less of it the better.</summary>
/// <param name="InTheAir">Coils that are not heard and have neither end on the sleeve, counted in every state.</param>
/// <param name="Reversed">Coils that are heard the unusual way round, counted in every state.</param>
internal readonly record struct HarnessWorth(int InTheAir, int Reversed) : IComparable<HarnessWorth>
{
    public static HarnessWorth Of(HarnessProblem problem, JoiningJudge judge, Harness harness)
    {
        var (air, reversed) = (0, 0);
        for (var i = 0; i < problem.States.Length; i++)
        {
            var there = judge.Worth(problem.States[i], harness.States[i]);
            (air, reversed) = (air + there.InTheAir, reversed + there.Reversed);
        }

        return new HarnessWorth(air, reversed);
    }

    public int CompareTo(HarnessWorth other) =>
        InTheAir != other.InTheAir ? InTheAir.CompareTo(other.InTheAir) : Reversed.CompareTo(other.Reversed);

    public static bool operator <(HarnessWorth one, HarnessWorth other) => one.CompareTo(other) < 0;

    public static bool operator >(HarnessWorth one, HarnessWorth other) => one.CompareTo(other) > 0;

    public static bool operator <=(HarnessWorth one, HarnessWorth other) => one.CompareTo(other) <= 0;

    public static bool operator >=(HarnessWorth one, HarnessWorth other) => one.CompareTo(other) >= 0;
}
