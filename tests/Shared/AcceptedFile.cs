using System.Text;

namespace WireText.Testing;

/// <summary>A committed file that the program can write anew: a docs page, a drawing of an example.</summary>
/// <remarks>With <c>WIRETEXT_ACCEPT=1</c> in the environment a stale file is written instead of failing the test.</remarks>
internal static class AcceptedFile
{
    public static bool IsAccepting => Environment.GetEnvironmentVariable("WIRETEXT_ACCEPT") == "1";

    public static void Check(string relativePath, string actual)
    {
        var path = Repository.PathOf(relativePath);
        if (IsAccepting)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            return;
        }

        Assert.True(File.Exists(path), $"{relativePath} is missing; write it with .ci/accept");
        var expected = File.ReadAllText(path);
        Assert.True(
            string.Equals(expected, actual, StringComparison.Ordinal),
            $"{relativePath} is stale at {FirstDifference(expected, actual)}; look at it, then accept it with .ci/accept"
        );
    }

    private static string FirstDifference(string expected, string actual)
    {
        var (old, now) = (expected.Split('\n'), actual.Split('\n'));
        for (var i = 0; i < Math.Min(old.Length, now.Length); i++)
        {
            if (old[i] != now[i])
            {
                return $"line {i + 1}:\n  was {old[i]}\n  now {now[i]}";
            }
        }

        return $"its end ({old.Length} lines, now {now.Length})";
    }
}
