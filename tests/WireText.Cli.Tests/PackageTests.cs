using System.IO.Compression;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using WireText.Testing;

namespace WireText.Cli.Tests;

/// <summary>The packages for .NET that are handed out: packed from what is built, installed from a folder, and used.</summary>
public sealed partial class PackageTests : IDisposable
{
    private static readonly string Version = XDocument
        .Load(Repository.PathOf("Directory.Build.props"))
        .Descendants("Version")
        .Single()
        .Value;

    private static readonly string Example = Repository.PathOf("examples", "mistakes", "mute-opens-the-hot.wiring");

    private readonly TestFolder folder = new();
    private readonly Shell shell = new();

    public void Dispose()
    {
        shell.Dispose();
        folder.Dispose();
    }

    [SkippableFact]
    public void Tool_InstalledFromAFolder_SaysAndDrawsWhatTheProgramDoes()
    {
        Pack("WireText.Cli", "-p:PublishAot=false");
        AssertMetadata("WireText.Cli", "docs/tool.md");
        Run($"dotnet tool install WireText.Cli --tool-path tools --source '{folder.Root}'");

        Assert.Equal(Version, Run("tools/wiretext --version").Trim());
        Assert.Equal(Ran.Of("positions", Example).Output, Run($"tools/wiretext positions '{Example}' || true"));
        // The native part that draws pictures of pixels came along: a PNG begins so (PNG specification, third edition, 5.2).
        Run($"tools/wiretext draw '{Repository.PathOf("examples", "1-one-pickup.wiring")}' -o a.png");
        Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], File.ReadAllBytes(folder["a.png"])[..8]);
    }

    /// <summary>The program on the page of the library is built against the package and does what the page says.</summary>
    [SkippableFact]
    public void Library_UsedAsItsPageShows_SaysAndDrawsWhatTheProgramDoes()
    {
        Pack("WireText");
        AssertMetadata("WireText.Core", "docs/library.md");
        folder.Put("shop/guitar.wiring", File.ReadAllText(Example));
        folder.Put(
            "shop/Program.cs",
            CodeShown().Match(File.ReadAllText(Repository.PathOf("docs", "library.md"))).Groups["code"].Value
        );
        folder.Put(
            "shop/shop.csproj",
            $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
                <ImplicitUsings>enable</ImplicitUsings>
                <Nullable>enable</Nullable>
              </PropertyGroup>
              <ItemGroup>
                <PackageReference Include="WireText.Core" Version="{Version}" />
              </ItemGroup>
            </Project>
            """
        );
        // What the package stands on comes from what is restored on this machine: no network is asked.
        folder.Put(
            "shop/nuget.config",
            $"""
            <configuration>
              <packageSources>
                <clear />
                <add key="handed out" value="{folder.Root}" />
                <add key="restored" value="{Restored}" />
              </packageSources>
            </configuration>
            """
        );

        var said = Run("cd shop && NUGET_PACKAGES=\"$PWD/packages\" dotnet run -p:UseSharedCompilation=false");

        var found = Ran.Of("check", Example).Output.Split('\n')[0][(Example.Length + 1)..];
        Assert.Equal($"{found}\n{Ran.Of("positions", Example).Output}", said);
        Assert.Equal(1, Ran.Of("draw", folder["shop/guitar.wiring"], "-o", folder["drawn.svg"]).Code);
        Assert.Equal(folder.Text("drawn.svg"), folder.Text("shop/guitar.svg"));
    }

    private static string Restored =>
        Environment.GetEnvironmentVariable("NUGET_PACKAGES")
        ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");

    private void Pack(string project, string more = "")
    {
        var configuration = typeof(CliProgram)
            .Assembly.GetCustomAttribute<AssemblyConfigurationAttribute>()!
            .Configuration;
        Run(
            $"dotnet pack '{Repository.PathOf("src", project)}' --no-build -c {configuration} -nodeReuse:false -o '{folder.Root}' {more}"
        );
    }

    /// <summary>What a registry and an editor show of a package: its licence, its page, and what each public name means.</summary>
    private void AssertMetadata(string package, string page)
    {
        using var zip = ZipFile.OpenRead(folder[$"{package}.{Version}.nupkg"]);
        using var manifest = zip.GetEntry($"{package}.nuspec")!.Open();
        var metadata = XDocument.Load(manifest).Root!.Elements().Single();
        Assert.Equal("MIT", Value("license"));
        Assert.Equal("The WireText authors", Value("authors"));
        Assert.EndsWith(".", Value("description"), StringComparison.Ordinal);
        using var readme = new StreamReader(zip.GetEntry(Value("readme"))!.Open());
        Assert.Equal(File.ReadAllText(Repository.PathOf(page)), readme.ReadToEnd());
        if (package == "WireText.Core")
        {
            using var described = new StreamReader(zip.GetEntry("lib/net10.0/WireText.Core.xml")!.Open());
            Assert.Contains("\"T:WireText.Compilation\"", described.ReadToEnd(), StringComparison.Ordinal);
            Assert.Equal(
                ["Sprache"],
                metadata
                    .Descendants()
                    .Where(e => e.Name.LocalName == "dependency")
                    .Select(e => e.Attribute("id")!.Value)
            );
        }

        string Value(string name) => metadata.Elements().Single(element => element.Name.LocalName == name).Value;
    }

    private string Run(string command)
    {
        var ran = shell.Run(command, folder);
        Assert.True(ran.Code == 0, $"{command}\n{ran.Output}{ran.Error}");
        return ran.Output;
    }

    [GeneratedRegex("```csharp\n(?<code>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 2000)]
    private static partial Regex CodeShown();
}
