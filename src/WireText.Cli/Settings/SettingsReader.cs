using System.Collections.Immutable;
using System.Globalization;
using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;
using WireText.Checks;
using WireText.Cli.Hosting;
using WireText.Documents;
using WireText.Electrical.Faults;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Settings;

/// <summary>Reads the settings of a shop from TOML. From its syntax tree: that knows where each word stands, and needs no reflection.</summary>
internal sealed class SettingsReader
{
    private const string ChecksTable = "checks";
    private const string FaultsTable = "faults";
    private const string PaperKey = "paper";

    /// <summary>The most that a weight or a count may be.</summary>
    private const double MostWeight = 1e6;

    private static readonly ImmutableArray<(string Word, Severity? Weight)> Weights =
    [
        ("error", Severity.Error),
        ("warning", Severity.Warning),
        ("note", Severity.Note),
        ("off", null),
    ];

    private readonly List<(TextPosition At, string Message)> problems = [];
    private readonly ImmutableDictionary<string, Severity?>.Builder weights = ImmutableDictionary.CreateBuilder<
        string,
        Severity?
    >(StringComparer.Ordinal);

    private Paper paper = Paper.A4;
    private FaultWeights faults = FaultWeights.Usual;

    private SettingsReader() { }

    /// <param name="shownPath">The name that problems are reported by.</param>
    /// <exception cref="CannotException">Something in it is wrong: every problem is named.</exception>
    public static ShopSettings Read(SourceText source, string shownPath)
    {
        shownPath = shownPath.Replace(Path.DirectorySeparatorChar, '/');
        var reader = new SettingsReader();
        reader.ReadDocument(Parse(source, shownPath));
        return reader.problems.Count == 0
            ? new ShopSettings(new CheckSettings(reader.weights.ToImmutable()), reader.paper, reader.faults)
            : throw new CannotException(string.Join('\n', reader.Lines(shownPath)));
    }

    private static DocumentSyntax Parse(SourceText source, string shownPath)
    {
        try
        {
            return SyntaxParser.Parse(source.Content, shownPath, validate: true);
        }
        catch (TomlException)
        {
            // The one mistake that its parser does not go on behind: brackets within brackets past its limit.
            throw new CannotException($"{shownPath}: its brackets are nested too deeply");
        }
    }

    /// <summary>A line a problem; so many as of findings, and the others are counted.</summary>
    private IEnumerable<string> Lines(string path)
    {
        var lines = problems.OrderBy(one => one.At.Offset).Select(one => Line(path, one));
        var more = problems.Count - FindingText.MostAlike;
        return more <= 0
            ? lines
            : lines
                .Take(FindingText.MostAlike)
                .Append(string.Create(CultureInfo.InvariantCulture, $"{path}: {more} more"));
    }

    private static string Line(string path, (TextPosition At, string Message) problem) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{path}:{problem.At.Line + 1}:{problem.At.Column + 1}: {problem.Message}"
        );

    private void ReadDocument(DocumentSyntax document)
    {
        foreach (var message in document.Diagnostics)
        {
            problems.Add((message.Span.Start, message.Message.TrimEnd('.')));
        }

        // What is left of a text that is no TOML would be guesses.
        if (problems.Count > 0)
        {
            return;
        }

        ReadItems([], document.KeyValues);
        foreach (var table in document.Tables)
        {
            if (table.Name is { } name)
            {
                ReadTable(table, name);
            }
        }
    }

    private void ReadTable(TableSyntaxBase table, KeySyntax name)
    {
        var names = NamesOf(name);
        if (table is TableArraySyntax || names is not ([ChecksTable] or [FaultsTable]))
        {
            ReportTable(names[0], name);
        }
        else
        {
            ReadItems(names, table.Items.OfType<KeyValueSyntax>());
        }
    }

    private void ReadItems(ImmutableArray<string> above, IEnumerable<KeyValueSyntax> items)
    {
        foreach (var item in items)
        {
            if (item is { Key: { } key, Value: { } value })
            {
                ReadItem(above.AddRange(NamesOf(key)), key, value);
            }
        }
    }

    private void ReadItem(ImmutableArray<string> names, KeySyntax key, ValueSyntax value)
    {
        if (value is InlineTableSyntax table)
        {
            ReadItems(names, table.Items.Select(one => one.KeyValue).OfType<KeyValueSyntax>());
        }
        else if (names is [PaperKey])
        {
            ReadPaper(value);
        }
        else if (names is [ChecksTable, var id])
        {
            ReadWeight(id, key, value);
        }
        else if (names is [FaultsTable, var fault])
        {
            ReadFault(fault, key, value);
        }
        else
        {
            ReportTable(names[0], key);
        }
    }

    private void ReadPaper(ValueSyntax value)
    {
        if ((value as StringValueSyntax)?.Value is not { } text)
        {
            Report(value, $"write the paper in quotes: {PaperKey} = \"letter\"");
            return;
        }

        var read = Paper.Read(text);
        paper = read.Value ?? paper;
        if (read.Problem is { } problem)
        {
            Report(value, problem);
        }
    }

    private void ReadWeight(string id, KeySyntax key, ValueSyntax value)
    {
        if (!CheckSettings.Ids.Contains(id, StringComparer.Ordinal))
        {
            Report(
                key,
                FindingCatalogue.OfReading.Any(reading => reading.Id == id)
                    ? $"'{id}' cannot be set: the line itself must change"
                    : $"no check is called '{id}'{Offer.Nearest(id, CheckSettings.Ids)}"
            );
            return;
        }

        var words = Weights.Select(weight => weight.Word).ToList();
        var word = (value as StringValueSyntax)?.Value;
        if (word is not null && words.IndexOf(word) is >= 0 and var index)
        {
            weights[id] = Weights[index].Weight;
            return;
        }

        Report(
            value,
            word is null
                ? "write \"error\", \"warning\", \"note\" or \"off\", in quotes"
                : $"'{word}' is none of error, warning, note and off{Offer.Nearest(word, words)}"
        );
    }

    /// <summary>A weight or a count for both pasts, or one for just wired and one for what used to work.</summary>
    private void ReadFault(string name, KeySyntax key, ValueSyntax value)
    {
        var known = faults.All.Select(one => one.Key).ToList();
        if (!known.Contains(name))
        {
            Report(key, $"no fault is called '{name}'{Offer.Nearest(name, known)}");
            return;
        }

        double?[] numbers = value is ArraySyntax array
            ? [.. array.Items.Select(item => NumberOf(item.Value))]
            : [NumberOf(value)];
        if (numbers is not ([{ }] or [{ }, { }]))
        {
            Report(value, "write a number from 0 on, or two for just wired and for what used to work: [1, 2.5]");
            return;
        }

        faults = faults.With(name, numbers[0]!.Value, numbers[^1]!.Value);
    }

    private static double? NumberOf(ValueSyntax? value) =>
        value switch
        {
            IntegerValueSyntax { Value: >= 0 and <= (long)MostWeight } whole => whole.Value,
            FloatValueSyntax { Value: >= 0 and <= MostWeight } number => number.Value,
            _ => null,
        };

    private void ReportTable(string name, SyntaxNode at) =>
        Report(
            at,
            name == FaultsTable ? "a line in [faults] is the name of a fault and its weight or count: joint = 1.5"
                : name == ChecksTable
                    ? "a line in [checks] is the name of a check and one word: floating-ground = \"off\""
                : $"there are no settings called '{name}'{Offer.Nearest(name, [ChecksTable, FaultsTable, PaperKey])}"
        );

    private void Report(SyntaxNode at, string message) => problems.Add((at.Span.Start, message));

    private static ImmutableArray<string> NamesOf(KeySyntax key) =>
        [NameOf(key.Key), .. key.DotKeys.Select(dotted => NameOf(dotted.Key))];

    private static string NameOf(BareKeyOrStringValueSyntax? name) =>
        name switch
        {
            StringValueSyntax quoted => quoted.Value ?? "",
            BareKeySyntax bare => bare.Key?.Text ?? "",
            _ => "",
        };
}
