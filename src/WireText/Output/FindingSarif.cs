using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using WireText.Checks;
using WireText.Text;

namespace WireText.Output;

/// <summary>What a SARIF log says of the run besides its findings.</summary>
/// <param name="ToolVersion">The version of the program, as in <c>0.1.0</c>.</param>
/// <param name="WorkingFolder">The folder of the run, with forward slashes: file names are relative to it.</param>
/// <param name="Problems">Why some file could not be checked, a statement each.</param>
public sealed record SarifRun(string ToolVersion, string WorkingFolder, ImmutableArray<string> Problems);

/// <summary>Writes findings as a SARIF 2.1.0 log: the form in which code hosts and editors take what tools find.</summary>
/// <remarks>
/// OASIS, Static Analysis Results Interchange Format 2.1.0 with errata 01; the numbers in comments are its sections.
/// <c>docs/findings-sarif.md</c> says what is in it.
/// </remarks>
public sealed class FindingSarif
{
    /// <summary>Files are named from the folder of the run; what it is called on this machine is nobody's business.</summary>
    private const string FolderId = "%SRCROOT%";

    private const string StandardInput = "-";

    private readonly Utf8JsonWriter json;
    private readonly SarifRun run;
    private readonly SarifUri uris;
    private readonly ImmutableArray<CheckedFile> files;
    private readonly ImmutableArray<FindingDescription> rules;

    private FindingSarif(Utf8JsonWriter json, ImmutableArray<CheckedFile> files, SarifRun run)
    {
        this.json = json;
        this.files = files;
        this.run = run;
        uris = new SarifUri(new WorkingFolder(run.WorkingFolder));
        rules = RulesOf(files);
    }

    /// <param name="files">Each file with its findings, in the order given.</param>
    public static string Write(IEnumerable<CheckedFile> files, SarifRun run)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(buffer, new JsonWriterOptions { Indented = true, NewLine = "\n" }))
        {
            new FindingSarif(writer, [.. files], run).WriteLog();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan) + "\n";
    }

    /// <summary>What found something, told or waiting, in the order of the catalogue.</summary>
    private static ImmutableArray<FindingDescription> RulesOf(ImmutableArray<CheckedFile> files)
    {
        var used = files
            .SelectMany(file => file.Findings.Concat(file.Allowed.Select(allowed => allowed.Finding)))
            .Select(finding => finding.Id)
            .Concat(files.SelectMany(file => file.Waiting))
            .ToHashSet(StringComparer.Ordinal);
        return [.. FindingCatalogue.All.Where(description => used.Contains(description.Id))];
    }

    private void WriteLog()
    {
        json.WriteStartObject();
        json.WriteString("version", "2.1.0");
        json.WriteString(
            "$schema",
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
        );
        json.WriteStartArray("runs");
        json.WriteStartObject();
        WriteTool();
        WriteInvocation();
        WriteFolder();
        WriteArtifacts();
        WriteResults();
        json.WriteString("columnKind", "utf16CodeUnits");
        json.WriteStartArray("newlineSequences");
        foreach (var lineEnd in new[] { "\r\n", "\n", "\r" })
        {
            json.WriteStringValue(lineEnd);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteTool()
    {
        json.WriteStartObject("tool");
        json.WriteStartObject("driver");
        json.WriteString("name", "wiretext");
        json.WriteString("semanticVersion", run.ToolVersion);
        json.WriteStartArray("rules");
        foreach (var rule in rules)
        {
            WriteRule(rule);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private void WriteRule(FindingDescription rule)
    {
        json.WriteStartObject();
        json.WriteString("id", rule.Id);
        json.WriteString("name", NameOf(rule.Id));
        WriteText("shortDescription", CheckPage.Sentence(rule.Title));
        WriteText("fullDescription", OneLine(rule.Why));
        json.WriteStartObject("help");
        json.WriteString("text", Plain($"{OneLine(rule.Why)}\n{OneLine(rule.Mend)}"));
        json.WriteString("markdown", CheckPage.Write(rule));
        json.WriteEndObject();
        json.WriteStartObject("defaultConfiguration");
        json.WriteString("level", LevelOf(rule.Severity));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>
    /// Whether every file could be read (3.20.14), and why not (3.20.21); and which checks wait, each as a notification that leads to
    /// its rule (3.58.3) and to its file (3.58.4).
    /// </summary>
    private void WriteInvocation()
    {
        json.WriteStartArray("invocations");
        json.WriteStartObject();
        json.WriteBoolean("executionSuccessful", run.Problems.IsEmpty);
        json.WriteStartArray("toolExecutionNotifications");
        foreach (var problem in run.Problems)
        {
            json.WriteStartObject();
            json.WriteString("level", "error");
            WriteText("message", problem);
            json.WriteEndObject();
        }

        foreach (var file in files)
        {
            foreach (var check in file.Waiting)
            {
                WriteWaiting(file.Path, check);
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndArray();
    }

    /// <summary>A check whose findings are told when what stands in the file is mended.</summary>
    private void WriteWaiting(string path, string check)
    {
        json.WriteStartObject();
        json.WriteStartObject("associatedRule");
        json.WriteString("id", check);
        json.WriteNumber("index", RuleIndex(check));
        json.WriteEndObject();
        json.WriteString("level", "note");
        WriteText("message", $"{check} waits until what was found here is mended");
        json.WriteStartArray("locations");
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        WriteFile("artifactLocation", path);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteFolder()
    {
        json.WriteStartObject("originalUriBaseIds");
        json.WriteStartObject(FolderId);
        WriteText("description", "The folder in which the program was started.");
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>Every file that was checked: one without a result is clean. Each once (3.14.15), however often it was given.</summary>
    private void WriteArtifacts()
    {
        json.WriteStartArray("artifacts");
        foreach (var path in files.Select(file => file.Path).Distinct(StringComparer.Ordinal))
        {
            json.WriteStartObject();
            WriteFile("location", path);
            json.WriteStartArray("roles");
            json.WriteStringValue(path == StandardInput ? "standardStream" : "analysisTarget");
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteResults()
    {
        json.WriteStartArray("results");
        foreach (var file in files)
        {
            foreach (var finding in file.Findings)
            {
                WriteResult(finding, null);
            }

            foreach (var allowed in file.Allowed)
            {
                WriteResult(allowed.Finding, allowed);
            }
        }

        json.WriteEndArray();
    }

    private void WriteResult(Finding finding, AllowedFinding? allowed)
    {
        json.WriteStartObject();
        json.WriteString("ruleId", finding.Id);
        json.WriteNumber("ruleIndex", RuleIndex(finding.Id));
        // A remark shows no problem (3.27.9), and what is no failure has no level (3.27.10).
        json.WriteString("kind", finding.Severity == Severity.Right ? "informational" : "fail");
        json.WriteString("level", LevelOf(finding.Severity));
        WriteText("message", finding.Help is { } help ? $"{finding.Message}.\n{help}" : $"{finding.Message}.");
        json.WriteStartArray("locations");
        WriteLocation(finding.Location, null, finding.Subjects);
        json.WriteEndArray();
        json.WriteStartArray("relatedLocations");
        foreach (var related in finding.Related.Distinct())
        {
            WriteLocation(related.Location, related.Message, []);
        }

        json.WriteEndArray();
        WriteFixes(finding);
        // In all results or in none (3.27.23).
        json.WriteStartArray("suppressions");
        if (allowed is not null)
        {
            WriteSuppression(allowed);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>One fix (3.55) with all the changes, file by file (3.56); of each change the place and the new text (3.57).</summary>
    private void WriteFixes(Finding finding)
    {
        json.WriteStartArray("fixes");
        if (!finding.Edits.IsEmpty)
        {
            json.WriteStartObject();
            WriteText("description", finding.Help ?? finding.Message);
            json.WriteStartArray("artifactChanges");
            foreach (var file in finding.Edits.GroupBy(edit => edit.At.Source.Path, StringComparer.Ordinal))
            {
                json.WriteStartObject();
                WriteFile("artifactLocation", file.Key);
                json.WriteStartArray("replacements");
                foreach (var edit in file)
                {
                    json.WriteStartObject();
                    WriteRegion("deletedRegion", edit.At);
                    json.WriteStartObject("insertedContent");
                    json.WriteString("text", edit.NewText);
                    json.WriteEndObject();
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private int RuleIndex(string id) => Enumerable.Range(0, rules.Length).Single(i => rules[i].Id == id);

    private void WriteSuppression(AllowedFinding allowed)
    {
        json.WriteStartObject();
        json.WriteString("kind", "inSource");
        json.WriteString("status", "accepted");
        json.WriteString("justification", allowed.Allowance.Reason);
        json.WritePropertyName("location");
        WriteLocation(allowed.Allowance.DeclaredAt, null, []);
        json.WriteEndObject();
    }

    private void WriteLocation(SourceLocation location, string? message, ImmutableArray<Subject> subjects)
    {
        json.WriteStartObject();
        json.WriteStartObject("physicalLocation");
        WriteFile("artifactLocation", location.Source.Path);
        WriteRegion("region", location);
        json.WriteEndObject();
        if (message is not null)
        {
            WriteText("message", message);
        }

        if (!subjects.IsEmpty)
        {
            json.WriteStartArray("logicalLocations");
            foreach (var subject in subjects.Distinct())
            {
                json.WriteStartObject();
                json.WriteString("fullyQualifiedName", subject.Name);
                json.WriteString("kind", FindingJson.WordFor(subject.Kind));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private void WriteFile(string name, string path)
    {
        json.WriteStartObject(name);
        var (uri, isRelative) = uris.Of(path);
        json.WriteString("uri", uri);
        if (isRelative)
        {
            json.WriteString("uriBaseId", FolderId);
        }

        json.WriteEndObject();
    }

    /// <summary>Lines and columns from 1; the end column is the one after the last character (3.30.8).</summary>
    private void WriteRegion(string name, SourceLocation location)
    {
        var (line, column) = location.Position;
        var (endLine, endColumn) = location.Source.PositionOf(location.Span.End);
        json.WriteStartObject(name);
        json.WriteNumber("startLine", line);
        json.WriteNumber("startColumn", column);
        json.WriteNumber("endLine", endLine);
        json.WriteNumber("endColumn", endColumn);
        json.WriteEndObject();
    }

    private void WriteText(string name, string text)
    {
        json.WriteStartObject(name);
        json.WriteString("text", Plain(text));
        json.WriteEndObject();
    }

    /// <summary>Text that says what it says: braces are places for arguments (3.11.5), and brackets before a parenthesis a link (3.11.6).</summary>
    private static string Plain(string text) =>
        text.Replace("{", "{{", StringComparison.Ordinal)
            .Replace("}", "}}", StringComparison.Ordinal)
            .Replace("](", "] (", StringComparison.Ordinal);

    private static string LevelOf(Severity severity) =>
        severity == Severity.Right ? "none" : FindingText.WordFor(severity);

    /// <summary>The id as one word in the way of names: <c>FloatingGround</c> (3.49.7).</summary>
    private static string NameOf(string id) =>
        string.Concat(id.Split('-').Select(word => $"{char.ToUpperInvariant(word[0])}{word[1..]}"));

    private static string OneLine(string text) => text.Trim().ReplaceLineEndings(" ");
}
