namespace WireText.Output;

/// <summary>File names as a SARIF log gives them: relative to the folder of the run where they lie below it.</summary>
/// <remarks>RFC 3986 for what is encoded; SARIF 2.1.0, section 3.10.2, for names that have to be absolute.</remarks>
internal sealed class SarifUri(WorkingFolder folder)
{
    /// <summary>The URI reference of a file, and whether it is relative to the folder of the run.</summary>
    public (string Uri, bool IsRelative) Of(string path)
    {
        var (names, isBelow) = folder.WayTo(path);
        return isBelow
            ? (string.Join('/', names.Select(Encoded)), true)
            : ("file:///" + string.Join('/', names.Select(n => WorkingFolder.IsDrive(n) ? n : Encoded(n))), false);
    }

    /// <summary>All but the unreserved characters in percent: a colon too, which would start a scheme in the first name.</summary>
    private static string Encoded(string name) => Uri.EscapeDataString(name);
}
