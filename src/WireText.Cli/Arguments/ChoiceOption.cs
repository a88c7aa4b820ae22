using System.CommandLine;

namespace WireText.Cli.Arguments;

/// <summary>An option that takes one of a few words, each standing for a value; the first where it is not given.</summary>
internal sealed class ChoiceOption<T> : Option<string>
{
    private readonly (string Word, T Value)[] choices;

    public ChoiceOption(string name, string description, params (string Word, T Value)[] choices)
        : base(name)
    {
        this.choices = choices;
        string[] words = [.. choices.Select(choice => choice.Word)];
        Description = description;
        DefaultValueFactory = _ => words[0];
        HelpName = string.Join('|', words);
        this.AcceptOnlyFromAmong(words);
    }

    public T In(ParseResult parsed) => Of(parsed.GetValue(this)!);

    /// <summary>What one of its words stands for.</summary>
    public T Of(string word) => choices.First(choice => choice.Word == word).Value;
}
