using System.Collections.Immutable;
using System.Text.Json;
using WireText.Comparing;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Editing;
using WireText.Output;

namespace WireText.Cli.Answering;

/// <summary>What can be done with a text from a line of it: offered above the line, and done as a command that gives a text back.</summary>
internal static class LensCommands
{
    private static readonly ImmutableArray<(
        LensKind Kind,
        string Title,
        string Command,
        Func<Compilation, string?> Do
    )> All =
    [
        (LensKind.Draw, "draw", "wiretext.draw", Draw),
        (LensKind.Positions, "positions", "wiretext.positions", TellPositions),
        (LensKind.Compare, "compare with the base", "wiretext.compare", Compare),
    ];

    /// <summary>The names of the commands.</summary>
    public static IEnumerable<string> Names => All.Select(one => one.Command);

    public static Answer Offer(OpenDocument document, JsonElement parameters) =>
        json =>
        {
            json.WriteStartArray();
            foreach (var lens in Lenses.Of(document.Compiled.Tree))
            {
                var (_, title, command, _) = All.First(one => one.Kind == lens.Kind);
                json.WriteStartObject();
                ProtocolJson.WriteRange(json, "range", document.Compiled.Source, lens.At);
                json.WriteStartObject("command");
                json.WriteString("title", title);
                json.WriteString("command", command);
                json.WriteStartArray("arguments");
                json.WriteStringValue(document.Address);
                json.WriteEndArray();
                json.WriteEndObject();
                json.WriteEndObject();
            }

            json.WriteEndArray();
        };

    /// <summary>Does a command with the text whose address is its argument.</summary>
    public static Request Asked(OpenDocuments documents) =>
        parameters =>
        {
            var name = parameters.GetProperty("command").GetString();
            var command = All.FirstOrDefault(one => one.Command == name);
            if (command.Do is null)
            {
                throw new RpcFault(RpcFault.InvalidParams, $"no command is called '{name}'");
            }

            var document = documents.At(parameters.GetProperty("arguments")[0].GetString() ?? "");
            return cancellation =>
            {
                var text =
                    command.Do(document.Compiled.Until(cancellation))
                    ?? throw new RpcFault(
                        RpcFault.RequestFailed,
                        "there is no whole circuit here yet: mend what is found first"
                    );
                return json => json.WriteStringValue(text);
            };
        };

    private static string? Draw(Compilation compiled) =>
        compiled.Draw(new DrawOptions(LayoutEffort.Full, Theme.Light, Path.GetFileName(compiled.Source.Path)));

    private static string? TellPositions(Compilation compiled) =>
        compiled.Study is { } study ? PositionText.Write(study.PositionsAtJacks) : null;

    private static string? Compare(Compilation compiled)
    {
        if (compiled.BaseCircuit is not { } before || compiled.Circuit is not { } after)
        {
            return null;
        }

        var circuits = CircuitComparison.Of(before, after);
        return ComparisonText.Write(circuits, circuits.IsSame ? null : PositionComparison.Of(circuits));
    }
}
