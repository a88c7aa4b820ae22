using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>Arguments go in and one call to the core comes out: no room of the program reaches back. Read from the compiled types.</summary>
public class CliArchitectureTests
{
    private const string Program = "WireText.Cli";

    /// <summary>The rooms in their order; each may use those before it, and the program itself all of them.</summary>
    private static readonly string[] Rooms =
    [
        "Hosting",
        "Storage",
        "Settings",
        "Running",
        "Serving",
        "Answering",
        "Arguments",
        "Describing",
        "Commands",
    ];

    private static readonly Architecture Compiled = new ArchLoader().LoadAssembly(typeof(CliProgram).Assembly).Build();

    public static TheoryData<string, string> ForbiddenPairs
    {
        get
        {
            var pairs = new TheoryData<string, string>();
            for (var early = 0; early < Rooms.Length; early++)
            {
                pairs.Add(Rooms[early], "");
                foreach (var late in Rooms.Skip(early + 1))
                {
                    pairs.Add(Rooms[early], late);
                }
            }

            return pairs;
        }
    }

    [Theory]
    [MemberData(nameof(ForbiddenPairs))]
    public void Room_NeverUsesALaterOne(string room, string forbidden)
    {
        var used = TypesIn(forbidden).Select(type => type.FullName).ToHashSet(StringComparer.Ordinal);

        Assert.DoesNotContain(UsesOf(TypesIn(room)), use => used.Contains(use.To));
    }

    [Fact]
    public void Rooms_AreAllNamedHere()
    {
        var named = Rooms.Select(room => $"{Program}.{room}").Append(Program);

        Assert.Equal(
            named.Order(StringComparer.Ordinal),
            Compiled
                .Types.Select(type => type.Namespace.FullName)
                .Where(name => name == Program || name.StartsWith($"{Program}.", StringComparison.Ordinal))
                .Distinct()
                .Order(StringComparer.Ordinal)
        );
    }

    /// <summary>What is read and written has rules, which are kept where files are opened.</summary>
    [Theory]
    [InlineData("System.IO.File", "Storage")]
    [InlineData("System.IO.FileStream", "Storage")]
    [InlineData("System.Console", "Hosting")]
    [InlineData("System.IO.FileSystemWatcher", "Storage")]
    [InlineData("System.Net.Sockets.TcpListener", "Serving")]
    [InlineData("System.Diagnostics.Process", "Hosting")]
    public void Library_IsUsedInOneRoomAlone(string type, string room)
    {
        var users = Rooms.Where(one => UsesOf(TypesIn(one)).Any(use => use.To == type));

        Assert.Equal([room], users);
        Assert.DoesNotContain(UsesOf(TypesIn("")), use => use.To == type);
    }

    private static IEnumerable<(string From, string To)> UsesOf(IEnumerable<IType> types) =>
        types
            .SelectMany(
                type => type.Dependencies,
                (type, dependency) => (From: type.FullName, To: dependency.Target.FullName)
            )
            .Distinct();

    /// <summary>The types of a room, or of the program itself. None at all means that its name here is wrong, and nothing would be held.</summary>
    private static IReadOnlyList<IType> TypesIn(string room)
    {
        var name = room.Length == 0 ? Program : $"{Program}.{room}";
        return Every.Of(Compiled.Types.Where(type => type.Namespace.FullName == name));
    }
}
