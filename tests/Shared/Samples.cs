using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using CsCheck;
using Xunit.Sdk;

namespace WireText.Testing;

/// <summary>A random value, and the seed from which it is made again.</summary>
internal readonly record struct Sample<T>(string Seed, T Value);

/// <summary>Random samples, the same in every run. One that fails names its seed, from which it alone is made again.</summary>
/// <remarks>
/// The library's own sampler starts from the clock, and its seed fixes the first sample alone. Here all samples follow from
/// one fixed seed, so that a run that fails by chance cannot be taken for one that a change made fail.
/// </remarks>
internal static class Samples
{
    /// <summary>
    /// The environment variable: a seed, and each test judges the sample of that seed alone; <see cref="New"/>, and it judges
    /// others each time.
    /// </summary>
    public const string Variable = "WIRETEXT_SEED";

    public const string New = "new";

    /// <summary>Where the samples of every test start. Chosen; no meaning.</summary>
    private const string Start = "0000KSTAtOJ4";

    private static readonly string? Said = Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } said
        ? said
        : null;

    /// <summary>The seed whose sample is asked for alone; null when all samples are.</summary>
    public static string? Replayed => Said == New ? null : Said;

    /// <summary>Judges samples one after the other.</summary>
    /// <param name="print">What a failure shows of the value.</param>
    public static void Each<T>(
        Gen<T> gen,
        int count,
        Action<T> judge,
        Func<T, string>? print = null,
        [CallerFilePath] string file = "",
        [CallerMemberName] string test = ""
    )
    {
        foreach (var (seed, value) in Of(gen, count))
        {
            try
            {
                judge(value);
            }
            catch (Exception e)
            {
#pragma warning disable RS0030 // Only its way to write a value.
                var shown = print is null ? Check.Print(value) : print(value);
#pragma warning restore RS0030
                throw new XunitException($"{shown}\n{e.Message}\n{HowToReplay(seed, file, test)}", e);
            }
        }
    }

    /// <inheritdoc cref="Each{T}"/>
    public static void Each<T1, T2>(
        Gen<(T1, T2)> gen,
        int count,
        Action<T1, T2> judge,
        [CallerFilePath] string file = "",
        [CallerMemberName] string test = ""
    ) => Each(gen, count, sample => judge(sample.Item1, sample.Item2), print: null, file, test);

    /// <inheritdoc cref="Each{T}"/>
    public static void Each<T1, T2, T3>(
        Gen<(T1, T2, T3)> gen,
        int count,
        Action<T1, T2, T3> judge,
        [CallerFilePath] string file = "",
        [CallerMemberName] string test = ""
    ) => Each(gen, count, sample => judge(sample.Item1, sample.Item2, sample.Item3), print: null, file, test);

    /// <summary>The samples that a test judges, for one that must wait between them.</summary>
    public static IEnumerable<Sample<T>> Of<T>(Gen<T> gen, int count) =>
        Replayed is { } one ? Take(gen, one, 1) : Take(gen, First(), count);

    /// <summary>The samples that follow from a seed, each with its own.</summary>
    public static IEnumerable<Sample<T>> Take<T>(Gen<T> gen, string seed, int count)
    {
        var dice = PCG.Parse(seed);
        for (var i = 0; i < count; i++)
        {
            var own = dice.ToString();
            yield return new Sample<T>(own, gen.Generate(dice, null, out _));
        }
    }

    /// <summary>The command that judges one sample of a test again, for the message of its failure.</summary>
    /// <param name="file">The test's source file, named as its class.</param>
    /// <param name="more">A part of the name of the row, of a theory with several.</param>
    public static string HowToReplay(string seed, string file, string test, string? more = null)
    {
        var row = more is null ? "" : $"&DisplayName~{more}";
        var name = $"{Path.GetFileNameWithoutExtension(file)}.{test}";
        return $"seed {seed}; again: {Variable}={seed} dotnet test --filter 'FullyQualifiedName~{name}{row}'";
    }

    private static string First() =>
        Said == New
            ? new PCG(
                (uint)RandomNumberGenerator.GetInt32(1, 64),
                (ulong)RandomNumberGenerator.GetInt32(int.MaxValue)
            ).ToString()
            : Start;
}
