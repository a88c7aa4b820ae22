using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Completions;

namespace WireText.Cli.Describing;

/// <summary>The commands of the program and what each takes, read from the commands themselves.</summary>
/// <param name="About">What the program does, in paragraphs.</param>
/// <param name="Options">Those of the program itself; <c>--help</c> is of every command too.</param>
internal sealed record ProgramShape(
    string Name,
    string About,
    ImmutableArray<OptionShape> Options,
    ImmutableArray<CommandShape> Commands
)
{
    /// <summary>What the program is called, whatever its file is.</summary>
    private const string Called = "wiretext";

    public static ProgramShape Of(RootCommand root) =>
        new(
            Called,
            root.Description ?? "",
            OptionShape.AllOf(root),
            [.. root.Subcommands.Where(command => !command.Hidden).Select(CommandShape.Of)]
        );
}

/// <param name="About">What it does, in paragraphs; without its examples.</param>
/// <param name="Examples">Lines that run.</param>
internal sealed record CommandShape(
    string Name,
    string About,
    ImmutableArray<string> Examples,
    ImmutableArray<ArgumentShape> Arguments,
    ImmutableArray<OptionShape> Options
)
{
    private const string ExampleStart = "Example: ";

    /// <summary>The first sentence of what it does.</summary>
    public string Summary
    {
        get
        {
            var words = string.Join(' ', About.Split('\n').TakeWhile(line => line.Length > 0));
            var end = words.IndexOf(". ", StringComparison.Ordinal);
            return (end < 0 ? words : words[..end]).TrimEnd('.');
        }
    }

    public static CommandShape Of(Command command)
    {
        var lines = (command.Description ?? "").Split('\n').ToList();
        var example = lines.FindIndex(line => line.StartsWith(ExampleStart, StringComparison.Ordinal));
        return new CommandShape(
            command.Name,
            string.Join('\n', lines[..example]).TrimEnd(),
            [.. lines[example..].Where(line => line.Length > 0).Select(line => line[ExampleStart.Length..])],
            [.. command.Arguments.Select(ArgumentShape.Of)],
            OptionShape.AllOf(command)
        );
    }
}

internal sealed record ArgumentShape(string Name, string About, bool IsNeeded, bool MayRepeat, Following Follows)
{
    /// <summary>How it stands in the line that says how the command is used.</summary>
    public string Use
    {
        get
        {
            var name = MayRepeat ? $"{Name}..." : Name;
            return IsNeeded ? name : $"[{name}]";
        }
    }

    public static ArgumentShape Of(Argument argument) =>
        new(
            argument.Name,
            argument.Description ?? "",
            argument.Arity.MinimumNumberOfValues > 0,
            argument.Arity.MaximumNumberOfValues > 1,
            Following.Of(argument.Name, argument.GetCompletions(CompletionContext.Empty))
        );
}

/// <param name="Names">The long one first.</param>
/// <param name="Value">What its value is called; null for one that takes none.</param>
internal sealed record OptionShape(ImmutableArray<string> Names, string? Value, string About, Following Follows)
{
    /// <summary>Its names, and what its value is called.</summary>
    public string Use => string.Join(", ", Names.OrderBy(name => name.Length)) + (Value is null ? "" : $" {Value}");

    public static ImmutableArray<OptionShape> AllOf(Command command) =>
        [.. command.Options.Where(option => !option.Hidden).Select(Of)];

    private static OptionShape Of(Option option)
    {
        var value =
            option.Arity.MaximumNumberOfValues == 0 || option.ValueType == typeof(bool) ? null : option.HelpName;
        return new OptionShape(
            [option.Name, .. option.Aliases.Where(alias => alias.StartsWith('-'))],
            value,
            value is not null && option.HasDefaultValue && option.GetDefaultValue() is string usual
                ? $"{option.Description} ({usual})"
                : option.Description ?? "",
            value is null ? Following.Nothing : Following.Of(value, option.GetCompletions(CompletionContext.Empty))
        );
    }
}
