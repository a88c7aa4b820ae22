using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using WireText.Circuits;
using WireText.Testing;
using WireText.Tests.Judging;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace WireText.Tests;

/// <summary>Text goes in at the top and a picture comes out at the bottom: no stage reaches back. Read from the compiled types.</summary>
public class ArchitectureTests
{
    /// <summary>The stages, and the rooms of a stage that has several, in the order in which data flows; each may use those before it.</summary>
    private static readonly (string Stage, string[] Rooms)[] Orders =
    [
        (
            "",
            [
                "Steps",
                "Text",
                "Quantities",
                "Geometry",
                "Syntax",
                "Mods",
                "Parts",
                "Circuits",
                "Electrical",
                "Listening",
                "Comparing",
                "Checks",
                "Proposing",
                "Diagnosing",
                "Matching",
                "Building",
                "Drawing",
                "Documents",
                "Sheets",
                "Frames",
                "Templates",
                "Output",
                "Pages",
                "Editing",
                "Starting",
            ]
        ),
        (
            "Electrical",
            [
                "Networks",
                "Situations",
                "Grounds",
                "Mutes",
                "Solving",
                "Sound",
                "Forms",
                "Positions",
                "Tolerances",
                "Roles",
                "Expectations",
                "Studies",
                "Traces",
                "Responses",
                "Faults",
                "BenchPlans",
            ]
        ),
        ("Drawing", ["Lettering", "Shapes", "Layout", "Faces", "Pictures", "Charts"]),
    ];

    private static readonly Architecture Core = new ArchLoader().LoadAssembly(typeof(Compilation).Assembly).Build();

    public static TheoryData<string, string> ForbiddenPairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            foreach (var (stage, rooms) in Orders)
            {
                for (var early = 0; early < rooms.Length; early++)
                {
                    for (var late = early + 1; late < rooms.Length; late++)
                    {
                        pairs.Add(Within(stage, rooms[early]), Within(stage, rooms[late]));
                    }
                }
            }

            // Electrical never sees text's syntax, Drawing never sees a syntax node, and layout sees shapes alone.
            pairs.Add("Electrical", "Syntax");
            pairs.Add("Listening", "Syntax");
            pairs.Add("Checks", "Syntax");
            pairs.Add("Proposing", "Syntax");
            pairs.Add("Diagnosing", "Syntax");
            pairs.Add("Matching", "Syntax");
            pairs.Add("Building", "Syntax");
            pairs.Add("Drawing", "Syntax");
            pairs.Add("Sheets", "Syntax");
            pairs.Add("Pages", "Syntax");
            pairs.Add("Drawing.Layout", "Circuits");
            pairs.Add("Drawing.Layout", "Electrical");

            // The measuring tool must not know how a picture was made.
            foreach (var stage in Orders[0].Rooms.Where(s => s is not ("Steps" or "Text")))
            {
                pairs.Add("Measuring", stage);
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(ForbiddenPairs))]
    public void Stage_NeverUsesALaterOne(string stage, string forbidden)
    {
        var users = Every.Of(TypesIn(stage));
        var used = Every.Of(TypesIn(forbidden)).Select(t => t.FullName).ToHashSet(StringComparer.Ordinal);

        var bad = users
            .SelectMany(
                type => type.Dependencies,
                (type, dependency) => (From: type.FullName, To: dependency.Target.FullName)
            )
            .Where(d => used.Contains(d.To))
            .Distinct()
            .Order();

        Assert.Empty(bad);
    }

    [Fact]
    public void Core_ReadsAndWritesNoFiles()
    {
        string[] hosts = ["System.IO.File", "System.IO.Directory", "System.IO.FileStream", "System.Console"];
        var bad = Every
            .Of(Types().GetObjects(Core))
            .SelectMany(
                type => type.Dependencies,
                (type, dependency) => (From: type.FullName, To: dependency.Target.FullName)
            )
            .Where(d => hosts.Contains(d.To))
            .Distinct();

        Assert.Empty(bad);
    }

    /// <summary>The judge of mutants is no judge when it asks the program what a circuit does.</summary>
    [Fact]
    public void Judge_KnowsOfTheCoreNoMoreThanTheBoundCircuit()
    {
        string[] known = ["WireText.Circuits", "WireText.Parts"];
        var tests = new ArchLoader().LoadAssemblies(typeof(Judge).Assembly, typeof(Compilation).Assembly).Build();
        var judging = Every.Of(
            tests.Types.Where(type =>
                type.Namespace.FullName == typeof(Judge).Namespace
                && !type.FullName.Contains("Tests+", StringComparison.Ordinal)
                && !type.Name.EndsWith("Tests", StringComparison.Ordinal)
            )
        );
        var core = Every.Of(Core.Types).Select(type => type.FullName).ToHashSet(StringComparer.Ordinal);

        var uses = judging
            .SelectMany(type => type.Dependencies, (type, dependency) => (From: type.FullName, To: dependency.Target))
            .ToList();
        var bad = uses.Where(use =>
                (core.Contains(use.To.FullName) && !known.Contains(use.To.Namespace.FullName))
                || use.To.Namespace.FullName.StartsWith("WireText.Tests.Electrical", StringComparison.Ordinal)
            )
            .Select(use => (use.From, use.To.FullName))
            .Distinct()
            .Order();

        Assert.Contains(uses, use => use.To.FullName == typeof(Circuit).FullName);
        Assert.Empty(bad);
    }

    private static string Within(string stage, string room) => stage.Length == 0 ? room : $"{stage}.{room}";

    /// <summary>The types of a stage or a room. None at all means that its name here is wrong, and nothing would be held.</summary>
    private static List<IType> TypesIn(string stage)
    {
        var name = $"WireText.{stage}";
        List<IType> types =
        [
            .. Core.Types.Where(t =>
                t.Namespace.FullName == name || t.Namespace.FullName.StartsWith(name + ".", StringComparison.Ordinal)
            ),
        ];
        Assert.True(types.Count > 0, $"there is no type in {name}");
        return types;
    }
}
