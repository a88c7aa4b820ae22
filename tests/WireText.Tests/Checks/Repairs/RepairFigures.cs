using System.Globalization;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Checks.Mutants;
using WireText.Text;

namespace WireText.Tests.Checks.Repairs;

/// <summary>Slips made in the text of a right example, and whether the help given for each leads back.</summary>
/// <param name="Alone">Slips for which one edit is given, and it makes what the example did.</param>
/// <param name="Among">Slips for which two or three are given, and one of them makes what the example did.</param>
/// <param name="TooMany">Slips of which the help says that no single wire explains them.</param>
/// <param name="Other">The rest: what is given makes something else, or nothing is given.</param>
internal sealed record RepairFigures(int Alone, int Among, int TooMany, int Other)
{
    public static RepairFigures operator +(RepairFigures a, RepairFigures b) =>
        new(a.Alone + b.Alone, a.Among + b.Among, a.TooMany + b.TooMany, a.Other + b.Other);

    public string Row(string name) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {Alone + Among + TooMany + Other} | {Alone} | {Among} | {TooMany} | {Other} |"
        );

    /// <summary>Makes slips in an example, and follows what is printed for each.</summary>
    /// <exception cref="Xunit.Sdk.XunitException">A printed repair does not fit the text, or leaves an error or a warning.</exception>
    public static RepairFigures Of(string example, int mistakes)
    {
        var text = File.ReadAllText(Repository.PathOf("examples", example));
        var right = Compile(text).Circuit!;
        return WireMistakes
            .ThatRefute(right, mistakes)
            .Aggregate(new RepairFigures(0, 0, 0, 0), (sum, mistake) => sum + Of(right, mistake, text));
    }

    private static RepairFigures Of(Circuit right, CircuitEdit mistake, string text)
    {
        var wrong = WireMutants.Written(right, mistake, text);
        var compiled = Compile(wrong);
        Assert.Equal<int>([.. mistake.Apply(right).Nets.OneNet], [.. compiled.Circuit!.Nets.OneNet]);

        var refuted = compiled.Findings.FirstOrDefault(finding =>
            finding.Id == "expect"
            || finding.Related.Any(place => place.Message.StartsWith("refuted: ", StringComparison.Ordinal))
        );
        Assert.True(refuted is not null, $"{mistake}: {string.Join("; ", compiled.Findings.Select(f => f.Message))}");
        var help = refuted.Help!;
        var mended = PrintedRepair.ReadAll(help).ConvertAll(repair => Compile(repair.ApplyTo(wrong)));
        Assert.DoesNotContain(mended.SelectMany(one => one.Findings), f => f.Severity >= Severity.Warning);

        var isBack = mended.Exists(one => Behaviour.IsEqual(one.Circuit!, right));
        return isBack && mended.Count == 1 ? new RepairFigures(1, 0, 0, 0)
            : isBack ? new RepairFigures(0, 1, 0, 0)
            : help.StartsWith("no single wire explains it", StringComparison.Ordinal) ? new RepairFigures(0, 0, 1, 0)
            : new RepairFigures(0, 0, 0, 1);
    }

    private static Compilation Compile(string text) =>
        Compilation.Of(new SourceText("mended.wiring", text), NoSources.Instance);
}
