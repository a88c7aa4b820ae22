using System.Diagnostics;
using System.Globalization;
using System.Numerics;
using System.Text;

namespace WireText.Tests.Output;

/// <summary>The outside referee: runs decks in one process and reads the voltage at the tip, coil by coil.</summary>
internal static class Ngspice
{
    /// <summary>61 frequencies from 20 Hz to 20 kHz.</summary>
    public const string Sweep = "dec 20 20 20000";

    private const string Missing = "ngspice is not installed: install it to have the gains checked by it";

    public static void SkipWhereAbsent() => Skip.If(Find() is null, Missing);

    /// <summary>One deck to run: a circuit, the node to look at, and the sources to drive one after the other.</summary>
    public sealed record Deck(string Circuit, string Node, IReadOnlyList<string> Sources);

    /// <summary>For each deck and each of its sources, the frequencies and the voltages.</summary>
    public static List<List<(double Hertz, Complex Volts)[]>> Run(IReadOnlyList<Deck> decks)
    {
        var folder = Directory.CreateTempSubdirectory("wiretext-ngspice").FullName;
        try
        {
            var script = new StringBuilder("* all decks\n.control\nset numdgt=15\nset wr_singlescale\n");
            for (var i = 0; i < decks.Count; i++)
            {
                File.WriteAllText(Path.Combine(folder, $"{i}.cir"), decks[i].Circuit + ".end\n");
                script.Append(CultureInfo.InvariantCulture, $"source {i}.cir\n");
                for (var source = 0; source < decks[i].Sources.Count; source++)
                {
                    for (var other = 0; other < decks[i].Sources.Count; other++)
                    {
                        script.Append(
                            CultureInfo.InvariantCulture,
                            $"alter {decks[i].Sources[other]} acmag = {(other == source ? 1 : 0)}\n"
                        );
                    }

                    script.Append(CultureInfo.InvariantCulture, $"ac {Sweep}\n");
                    script.Append(CultureInfo.InvariantCulture, $"wrdata {i}-{source}.txt v({decks[i].Node})\n");
                    script.Append("destroy all\n");
                }

                script.Append("remcirc\n");
            }

            File.WriteAllText(Path.Combine(folder, "all.sp"), script + "quit\n.endc\n.end\n");
            Start(folder, "all.sp");
            return
            [
                .. decks.Select(
                    (deck, i) =>
                        deck.Sources.Select((_, source) => Read(Path.Combine(folder, $"{i}-{source}.txt"))).ToList()
                ),
            ];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Runs one deck as it was written and reads the table that it leaves: frequency and level.</summary>
    public static List<double[]> RunAsItIs(string deck, string table)
    {
        var folder = Directory.CreateTempSubdirectory("wiretext-ngspice").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "deck.cir"), deck);
            Start(folder, "deck.cir");
            return [.. File.ReadAllLines(Path.Combine(folder, table)).Select(Numbers)];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>What ngspice says while it runs a deck as it was written.</summary>
    public static string OutputOf(string deck)
    {
        var folder = Directory.CreateTempSubdirectory("wiretext-ngspice").FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "deck.cir"), deck);
            return Start(folder, "deck.cir");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string? Find() =>
        (Environment.GetEnvironmentVariable("PATH") ?? "")
            .Split(Path.PathSeparator)
            .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "ngspice.exe" : "ngspice"))
            .FirstOrDefault(File.Exists);

    private static string Start(string folder, string deck)
    {
        var start = new ProcessStartInfo(Find()!, ["-b", deck])
        {
            WorkingDirectory = folder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, output + error.GetAwaiter().GetResult());
        return output;
    }

    private static (double Hertz, Complex Volts)[] Read(string path) =>
        [.. File.ReadAllLines(path).Select(Numbers).Select(row => (row[0], new Complex(row[1], row[2])))];

    private static double[] Numbers(string line) =>
        [
            .. line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(cell => double.Parse(cell, CultureInfo.InvariantCulture)),
        ];
}
