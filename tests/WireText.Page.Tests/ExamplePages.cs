using System.Collections.Concurrent;
using WireText.Drawing.Layout;
using WireText.Testing;
using WireText.Text;

namespace WireText.Page.Tests;

/// <summary>The circuits that pages are tested with: each example, and the mod.</summary>
internal static class ExamplePages
{
    public const string Mod = "mods/mute-and-capacitor.wiring";

    private static readonly ConcurrentDictionary<string, string> Pages = new(StringComparer.Ordinal);

    /// <summary>By their names below <c>examples</c>.</summary>
    public static IReadOnlyList<string> Names => [.. Repository.ExampleNames, Mod];

    public static TheoryData<string> Rows => [.. Names];

    public static Compilation Compile(string name)
    {
        var path = Repository.PathOf("examples", name);
        return Compilation.Of(new SourceText(path, File.ReadAllText(path)), SourcesBeside.File(path));
    }

    /// <summary>The page of an example, written once.</summary>
    public static string Page(string name) => Pages.GetOrAdd(name, one => PageOf(Compile(one)));

    public static string PageOf(string wiring) =>
        PageOf(Compilation.Of(new SourceText("guitar.wiring", wiring), NoSources.Instance));

    private static string PageOf(Compilation compiled) =>
        compiled.WritePage(compiled.TellStates()!, LayoutEffort.Quick, "guitar.wiring")!;
}
