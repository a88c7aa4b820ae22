using System.Collections.Immutable;
using WireText.Parts;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>What stands behind a part's name, sorted: model, value, taper, traits, keys and remark.</summary>
internal sealed class PartArguments
{
    private static readonly ImmutableArray<string> CapacitorTraits =
    [
        Part.Film,
        Part.Ceramic,
        Part.Electrolytic,
        Part.PaperInOil,
    ];

    public required PartDefinition Definition { get; init; }

    public WordSyntax? Value { get; private set; }

    /// <summary>What a meter read of this very part, behind the word for that.</summary>
    public WordSyntax? Measured { get; private set; }

    /// <summary>The word or letter that says the taper.</summary>
    public WordSyntax? Taper { get; private set; }

    public List<string> Traits { get; } = [];

    public List<PairSyntax> Pairs { get; } = [];

    public string? Remark { get; private set; }

    /// <summary>Sorts the arguments. Gives null, after a finding, when no model could be found.</summary>
    public static PartArguments? Read(PartSyntax part, CircuitDraft draft)
    {
        if (FindModel(part, draft) is not { } definition)
        {
            return null;
        }

        var arguments = new PartArguments { Definition = definition };
        var isModelTaken = false;
        WordSyntax? measured = null;
        foreach (var argument in part.Arguments)
        {
            if (measured is not null)
            {
                arguments.TakeMeasured(measured, argument as WordSyntax, draft);
                (var isTaken, measured) = (argument is WordSyntax, null);
                if (isTaken)
                {
                    continue;
                }
            }

            switch (argument)
            {
                case PairSyntax pair:
                    arguments.Pairs.Add(pair);
                    break;
                case TextSyntax text:
                    arguments.Remark = text.Value;
                    break;
                case WordSyntax word when !isModelTaken && IsModel(word, definition):
                    isModelTaken = true;
                    break;
                case WordSyntax word when IsMeasured(word, definition):
                    measured = word;
                    break;
                case WordSyntax word:
                    arguments.Sort(word, draft);
                    break;
            }
        }

        if (measured is not null)
        {
            arguments.TakeMeasured(measured, null, draft);
        }

        return arguments;
    }

    /// <summary>The words that a part of this definition takes besides its model.</summary>
    public static IEnumerable<string> TraitsOf(PartDefinition definition)
    {
        if (definition.Insides.Any(i => i is Inside.TrackInside))
        {
            yield return "turns-back";
        }

        if (definition.Insides.Any(i => i is Inside.CapacitorInside { Farads: null }))
        {
            foreach (var trait in CapacitorTraits)
            {
                yield return trait;
            }
        }

        yield return Part.HeatSensitive;
    }

    /// <summary>True for the word behind which stands what a meter read; only where the part has a value.</summary>
    private static bool IsMeasured(WordSyntax word, PartDefinition definition) =>
        Naming.Alike(word.Text, KnownKeys.Measured)
        && KnownKeys.Of(definition).Contains(KnownKeys.Measured, Naming.Comparer);

    private static bool IsModel(WordSyntax word, PartDefinition definition) =>
        string.Equals(word.Text, definition.Model, StringComparison.OrdinalIgnoreCase);

    private static PartDefinition? FindModel(PartSyntax part, CircuitDraft draft)
    {
        var models = draft.Catalogue.ModelsOf(part.Kind.Text);
        var words = part.Arguments.OfType<WordSyntax>().ToList();
        if (models.IsEmpty)
        {
            ReportUnknownKind(part, draft);
            return null;
        }

        if (
            words.Select(w => draft.Catalogue.Find(part.Kind.Text, w.Text)).FirstOrDefault(d => d is not null) is
            { } named
        )
        {
            return named;
        }

        return draft.Catalogue.DefaultOf(part.Kind.Text) ?? ReportMissingModel(part, words, models, draft);
    }

    private static void ReportUnknownKind(PartSyntax part, CircuitDraft draft)
    {
        var near = DidYouMean.Nearest(part.Kind.Text, draft.Catalogue.Kinds);
        var offered =
            near
            ?? DidYouMean.CutShort(part.Kind.Text, draft.Catalogue.Kinds)
            ?? DidYouMean.Nearest(part.Kind.Text, Keywords.Statements);
        draft.Sink.Add(
            PartFindings
                .UnknownKind.At(
                    part.Kind.Location,
                    $"no kind of part is called '{part.Kind.Text}'",
                    offered is null
                        ? $"the kinds are {string.Join(", ", draft.Catalogue.Kinds)}; 'define' makes a new one"
                        : $"did you mean '{offered}'?"
                )
                .MendedBy(TextEdit.Meant(part.Kind.Location, near, draft.Catalogue.Kinds))
        );
    }

    private static PartDefinition? ReportMissingModel(
        PartSyntax part,
        List<WordSyntax> words,
        ImmutableArray<PartDefinition> models,
        CircuitDraft draft
    )
    {
        var names = string.Join(", ", models.Select(m => m.Model));
        if (words.Count == 0)
        {
            draft.Sink.Add(
                PartFindings.MissingModel.At(
                    part.Name.Location,
                    $"'{part.Name.Text}' needs its model: {part.Kind.Text}es differ too much to guess",
                    $"write one of {names}"
                )
            );
            return null;
        }

        var near = DidYouMean.Nearest(words[0].Text, models.Select(m => m.Model));
        draft.Sink.Add(
            PartFindings
                .UnknownModel.At(
                    words[0].Location,
                    $"no {part.Kind.Text} is called '{words[0].Text}'",
                    near is null ? ModelHelp.For(part.Kind.Text, words[0].Text, models) : $"did you mean '{near}'?"
                )
                .MendedBy(TextEdit.Meant(words[0].Location, near, models.Select(m => m.Model)))
        );
        return null;
    }

    /// <param name="keyword">The word before it.</param>
    /// <param name="value">Null where no word follows.</param>
    private void TakeMeasured(WordSyntax keyword, WordSyntax? value, CircuitDraft draft)
    {
        if (value is null)
        {
            draft.Sink.Add(
                PartFindings.MissingValue.At(
                    keyword.Location,
                    $"'{keyword.Text}' has no value behind it",
                    "write what the meter read, as in: pot vol 250k measured 262k"
                )
            );
            return;
        }

        Keep(value, Measured, draft, "measured value");
        Measured = value;
    }

    private void Sort(WordSyntax word, CircuitDraft draft)
    {
        var takesTaper = Definition.Insides.Any(i => i is Inside.TrackInside { Taper: null });
        if (takesTaper && TaperReader.IsWord(word.Text))
        {
            Keep(word, Taper, draft, "taper");
            Taper = word;
        }
        else if (takesTaper && BareTaper.IsLetter(word.Text))
        {
            Keep(word, Taper, draft, "taper");
            Taper = word;
        }
        else if (takesTaper && BareTaper.SplitsOff(word.Text))
        {
            Keep(word, Value, draft, "value");
            (Value, Taper) = BareTaper.Split(word);
        }
        else if (word.Text == ValueUse.Unknown || ValueReader.LooksLikeValue(word.Text))
        {
            Keep(word, Value, draft, "value");
            Value = word;
        }
        else if (TraitsOf(Definition).FirstOrDefault(t => Naming.Alike(t, word.Text)) is { } trait)
        {
            Traits.Add(trait);
        }
        else
        {
            ReportUnknownWord(word, takesTaper, draft);
        }
    }

    private static void Keep(WordSyntax word, WordSyntax? earlier, CircuitDraft draft, string what)
    {
        if (earlier is not null)
        {
            draft.Sink.Add(
                StatementFindings.SaidTwice.At(
                    word.Location,
                    $"'{word.Text}' is a second {what}; '{earlier.Text}' stands there already",
                    "keep one of them"
                )
            );
        }
    }

    private void ReportUnknownWord(WordSyntax word, bool takesTaper, CircuitDraft draft)
    {
        var models = draft.Catalogue.ModelsOf(Definition.Kind).Select(d => d.Model).ToList();
        var words = TraitsOf(Definition).Concat(takesTaper ? TaperReader.Words : []);
        var near = DidYouMean.Nearest(word.Text, [.. models, .. words]);
        draft.Sink.Add(
            PartFindings.UnknownWord.At(
                word.Location,
                $"'{word.Text}' says nothing about a {Definition.Kind}",
                near is not null ? $"did you mean '{near}'?"
                    : ModelHelp.Alike(word.Text, models) is { } alike ? alike
                    : $"the models are {string.Join(", ", models)}; the words {string.Join(", ", words)};\na remark stands in quotes"
            )
        );
    }
}
