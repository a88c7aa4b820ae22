using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Starting;

namespace WireText.Cli.Commands;

/// <summary>Finds out what a new wiring is begun with: from options, else from who sits at the terminal, else what is usual.</summary>
internal sealed class StarterQuestions(CliContext context, ParseResult parsed)
{
    private StreamReader? answers;

    /// <summary>True when there is somebody to ask, who sees the question.</summary>
    private bool MayAsk => context.Host is { IsInputTerminal: true, IsErrorTerminal: true };

    /// <param name="option">With which it is answered beforehand.</param>
    /// <param name="offered">What goes with the answers before; the first is usual.</param>
    /// <exception cref="CannotException">The option says something that does not go, or there is no answer.</exception>
    public T Choose<T>(Option<string?> option, ImmutableArray<T> offered)
        where T : IStarterAnswer =>
        parsed.GetValue(option) is { } word ? Given(option.Name, word, offered)
        : offered.Length > 1 && MayAsk ? Asked(option.Name.TrimStart('-'), offered)
        : offered[0];

    private static T Given<T>(string option, string word, ImmutableArray<T> offered)
        where T : IStarterAnswer =>
        Find(word, offered)
        ?? throw new CannotException(
            $"{option} {word} does not go with the choices before it; there is {string.Join(", ", offered.Select(one => one.Word))}"
        );

    private T Asked<T>(string what, ImmutableArray<T> offered)
        where T : IStarterAnswer
    {
        var width = offered.Max(one => one.Word.Length);
        context.Error.Write($"{what}:\n");
        foreach (var (place, one) in offered.Index())
        {
            context.Error.Write($"  {Number(place)}  {one.Word.PadRight(width)}  {one.Meaning}\n");
        }

        while (true)
        {
            context.Error.Write($"Which, by number or word? [{offered[0].Word}] ");
            context.Error.Flush();
            var answer = Answer();
            if (answer.Length == 0)
            {
                return offered[0];
            }

            if (offered.Index().FirstOrDefault(one => Number(one.Index) == answer) is { Item: { } counted })
            {
                return counted;
            }

            if (Find(answer, offered) is { } named)
            {
                return named;
            }

            context.Error.Write(
                $"'{answer}' is none of them{Offer.Nearest(answer, offered.Select(one => one.Word))}\n"
            );
        }
    }

    private string Answer()
    {
        answers ??= new StreamReader(context.Host.Input);
        return answers.ReadLine()?.Trim() ?? throw new CannotException("there was no answer: nothing is written");
    }

    private static string Number(int place) => (place + 1).ToString(CultureInfo.InvariantCulture);

    private static T? Find<T>(string word, ImmutableArray<T> offered)
        where T : IStarterAnswer =>
        offered.FirstOrDefault(one => string.Equals(one.Word, word, StringComparison.OrdinalIgnoreCase));
}
