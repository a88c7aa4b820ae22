using System.Text.RegularExpressions;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The page that goes through the shop with a mod: its commands run in its order, and leave what it says.</summary>
public sealed partial class ModPageTests : IDisposable
{
    private static readonly string Page = File.ReadAllText(Repository.PathOf("docs", "mod.md"));

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [SkippableFact]
    public void EveryCommand_RunsInOrder_AndLeavesWhatThePageSays()
    {
        foreach (var name in new[] { "stock.wiring", "mute-and-capacitor.wiring" })
        {
            folder.Put($"shop/{name}", File.ReadAllText(Repository.PathOf("examples", "mods", name)));
        }

        var commands = Commands()
            .Matches(Page)
            .SelectMany(match => match.Groups["commands"].Value.Trim().Split('\n'))
            .ToList();
        Assert.True(commands.Count > 12, "the page has its commands");
        foreach (var command in commands)
        {
            var ran = shell.Run(
                command.Replace(
                    "git commit",
                    "git -c user.name=bench -c user.email=bench@example.invalid commit",
                    StringComparison.Ordinal
                ),
                folder,
                "shop"
            );
            Assert.True(ran.Code == 0, $"{command}\n{ran.Output}{ran.Error}");
        }

        string[] left =
        [
            "tone.svg",
            "change.svg",
            "for-the-customer.html",
            "sheet.pdf",
            "wires.csv",
            "clip/frames.json",
        ];
        foreach (var name in left)
        {
            Assert.True(File.Exists(folder[$"shop/{name}"]), $"{name} is missing");
            Assert.Contains(name.Split('/')[0], Page, StringComparison.Ordinal);
        }

        // The same picture as README shows.
        AcceptedFile.Check("examples/mods/change.svg", folder.Text("shop/change.svg"));
    }

    [Fact]
    public void Page_ShowsTheModItIsAbout() =>
        Assert.Contains(
            $"```wiring\n{File.ReadAllText(Repository.PathOf("examples", "mods", "mute-and-capacitor.wiring"))}```",
            Page,
            StringComparison.Ordinal
        );

    [GeneratedRegex("```sh\n(?<commands>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture)]
    private static partial Regex Commands();
}
