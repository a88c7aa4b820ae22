namespace WireText.Output;

/// <summary>File names as a SARIF log gives them: relative to the folder of the run where they lie below it.</summary>
/// <param name="workingFolder">The folder of the run, with forward slashes.</param>
/// <remarks>RFC 3986 for what is encoded; SARIF 2.1.0, section 3.10.2, for names that have to be absolute.</remarks>
internal sealed class SarifUri(string workingFolder)
{
    private readonly List<string> working = Segments(workingFolder);

    /// <summary>The URI reference of a file, and whether it is relative to the folder of the run.</summary>
    public (string Uri, bool IsRelative) Of(string path)
    {
        var segments = Segments(IsRooted(path) ? path : $"{workingFolder}/{path}");
        return segments.Count > working.Count && segments.Take(working.Count).SequenceEqual(working)
            ? (Encoded(segments.Skip(working.Count)), true)
            : ($"file:///{Encoded(segments)}", false);
    }

    private static bool IsRooted(string path) => path.StartsWith('/') || HasDrive(path);

    private static bool HasDrive(string path) => path is [var letter, ':', '/', ..] && char.IsAsciiLetter(letter);

    /// <summary>The names on the way, with <c>.</c>, <c>..</c> and empty ones resolved.</summary>
    private static List<string> Segments(string path)
    {
        var segments = new List<string>();
        foreach (var segment in path.Split('/'))
        {
            if (segment == ".." && segments.Count > 0)
            {
                segments.RemoveAt(segments.Count - 1);
            }
            else if (segment is not ("" or "." or ".."))
            {
                segments.Add(segment);
            }
        }

        return segments;
    }

    private static string Encoded(IEnumerable<string> segments) =>
        string.Join('/', segments.Select((segment, i) => i == 0 && IsDrive(segment) ? segment : Encoded(segment)));

    private static bool IsDrive(string segment) => HasDrive(segment + "/");

    /// <summary>All but the unreserved characters in percent: a colon too, which would start a scheme in the first segment.</summary>
    private static string Encoded(string segment) => Uri.EscapeDataString(segment);
}
