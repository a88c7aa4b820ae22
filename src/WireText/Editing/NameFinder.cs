using System.Collections.Immutable;
using System.Globalization;
using WireText.Parts;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Editing;

/// <summary>Finds every place where the statements of one file name something.</summary>
/// <param name="scope">Of the file.</param>
/// <param name="catalogue">The models that can be named.</param>
/// <param name="definitions">The lines that define models, by kind and model.</param>
/// <param name="colours">Where colours get their names, by name.</param>
internal sealed class NameFinder(
    NameScope scope,
    PartCatalogue catalogue,
    IReadOnlyDictionary<(string Kind, string Model), DefineSyntax> definitions,
    IReadOnlyDictionary<string, SourceLocation> colours
)
{
    private readonly ImmutableArray<NameUse>.Builder uses = ImmutableArray.CreateBuilder<NameUse>();

    /// <summary>In the order of the text.</summary>
    public ImmutableArray<NameUse> Find()
    {
        foreach (var statement in scope.Statements)
        {
            Take(statement);
        }

        return [.. uses.OrderBy(use => use.At.Span.Start)];
    }

    private void Take(StatementSyntax statement)
    {
        switch (statement)
        {
            case PartSyntax part:
                TakePart(part);
                break;
            case ReplaceSyntax replace:
                TakeName(replace.Name, scope.Below);
                TakeArguments(scope.Below.LineOf(replace.Name.Text)?.Kind.Text ?? "", replace.Arguments);
                break;
            case SpliceSyntax splice:
                TakeName(splice.Name, scope);
                TakeLugs(splice.Lugs);
                break;
            case WireSyntax wire:
                TakeLugs(wire.Lugs);
                TakeColour(wire.Colour);
                break;
            case CableSyntax cable:
                TakeCable(cable);
                break;
            case TouchSyntax touch:
                TakeLugs(touch.Lugs);
                break;
            case PositionsSyntax positions:
                TakeControl(positions.Control.Words, scope);
                foreach (var name in positions.Names)
                {
                    TakePosition(positions.Control.FullName, name, scope);
                }

                break;
            case RestSyntax rest:
                TakeState(rest.Pairs, scope);
                break;
            case PlaceSyntax place:
                TakeName(place.Name, scope);
                break;
            case ArrangeSyntax arrange:
                foreach (var cell in arrange.Rows.SelectMany(row => row.Cells).Where(cell => cell.Text != "."))
                {
                    TakeName(cell, scope);
                }

                break;
            case ExpectSyntax expect:
                TakeExpect(expect);
                break;
            case AllowSyntax allow:
                Add(allow.Check, NameKind.Check, $"check {Lower(allow.Check)}", null);
                TakeLugs(allow.At is { } at ? [at] : []);
                break;
            case FindSyntax find:
                foreach (var control in find.Controls)
                {
                    TakeControl(control.Words, scope);
                }

                TakeLugs(find.At);
                break;
            case FoundSyntax found:
                TakeFound(found);
                break;
            case LiftSyntax lift:
                TakeLug(lift.Lug, scope.Below);
                TakeLugs(lift.To is { } to ? [to] : [], scope.Below);
                break;
            case DropSyntax drop:
                TakeName(drop.Name, scope.Below);
                break;
            case DropExpectSyntax drop:
                TakeOptional(drop.Jack, scope.Below);
                TakeState(drop.State, scope.Below);
                break;
            case DefineSyntax define:
                TakeDefinition(define);
                break;
            case ColourSyntax colour:
                TakeColour(colour.Name);
                break;
        }
    }

    private void TakePart(PartSyntax part)
    {
        Add(part.Kind, NameKind.Kind, $"kind {Lower(part.Kind)}", null);
        TakeName(part.Name, scope);
        TakeArguments(part.Kind.Text, part.Arguments);
        TakeLugs(part.Hangs is { } hangs ? [hangs.From, hangs.To] : []);
    }

    private void TakeArguments(string kind, ImmutableArray<SyntaxNode> arguments)
    {
        var model = arguments.OfType<WordSyntax>().FirstOrDefault(word => catalogue.Find(kind, word.Text) is not null);
        if (model is not null)
        {
            TakeModel(kind, model);
        }

        var definition = model is null ? null : definitions.GetValueOrDefault(KeyOf(kind, model.Text));
        foreach (var pair in arguments.OfType<PairSyntax>())
        {
            if (pair.Key.Text.IndexOf('.', StringComparison.Ordinal) is > 0 and var dot)
            {
                AddSection(pair.Key.Part(0, dot), definition, kind, model?.Text ?? "");
            }
        }
    }

    private void TakeModel(string kind, WordSyntax model) =>
        Add(
            model,
            NameKind.Model,
            $"model {Lower(kind)} {Lower(model)}",
            definitions.GetValueOrDefault(KeyOf(kind, model.Text))?.Model.Location
        );

    private void TakeDefinition(DefineSyntax define)
    {
        Add(define.Kind, NameKind.Kind, $"kind {Lower(define.Kind)}", null);
        TakeModel(define.Kind.Text, define.Model);
        foreach (var line in define.Lines)
        {
            switch (line)
            {
                case PositionSyntax position:
                    TakeSection(position.Control, define);
                    AddPosition(position.Position, position.Control?.Text ?? "", define);
                    break;
                case RestInsideSyntax rest:
                    TakeSection(rest.Control, define);
                    AddPosition(rest.Position, rest.Control?.Text ?? "", define);
                    break;
                case TrackInsideSyntax track:
                    TakeSection(track.Name, define);
                    break;
                case CoilInsideSyntax coil:
                    TakeSection(coil.Name, define);
                    break;
            }
        }
    }

    private void TakeSection(WordSyntax? word, DefineSyntax define)
    {
        if (word is not null)
        {
            AddSection(word, define, define.Kind.Text, define.Model.Text);
        }
    }

    /// <summary>A position by the word of a definition; a number where a dial rests is none.</summary>
    private void AddPosition(WordSyntax word, string section, DefineSyntax define)
    {
        if (Definitions.PositionIn(define, section, word.Text) is { } declared)
        {
            Add(word, NameKind.Position, KeyAt("position", declared), declared);
        }
    }

    private void TakeCable(CableSyntax cable)
    {
        foreach (var core in cable.Cores)
        {
            TakeLugs([core.From, core.To]);
            TakeColour(core.Colour);
        }

        TakeLugs([.. new[] { cable.Braid?.From, cable.Braid?.To }.OfType<LugSyntax>()]);
    }

    private void TakeExpect(ExpectSyntax expect)
    {
        TakeOptional(expect.Jack, scope);
        TakeState(expect.State, scope);
        foreach (var claim in expect.Claims.OfType<CoilsClaimSyntax>())
        {
            TakeCoils(claim.Coils);
        }
    }

    private void TakeFound(FoundSyntax found)
    {
        TakeOptional((found.At as FoundAtPlugSyntax)?.Jack, scope);
        TakeState(FoundNames.StateOf(found.At), scope);
        TakeLugs([.. FoundNames.LugsOf(found.At).Where(lug => !IsPlugSleeve(lug))]);
        foreach (
            var named in FoundNames
                .NamedBy(found)
                .Concat(found.What.OfType<FoundCoilsSyntax>().SelectMany(what => what.Coils))
        )
        {
            TakeControl(named.Words, scope);
        }
    }

    /// <summary>The sleeve of the plug is no part, unless one has that name.</summary>
    private bool IsPlugSleeve(LugSyntax lug) =>
        lug.Words.Length == 1 && lug.Name.Is("sleeve") && scope.PartNamed(lug.Name.Text) is null;

    private void TakeCoils(CoilsSyntax coils)
    {
        switch (coils)
        {
            case CoilSyntax coil:
                if (coil.Coil is { } named)
                {
                    TakeControl(named.Words, scope);
                }

                TakeOptional(coil.Through, scope);
                if (coil.Group is { } group)
                {
                    TakeCoils(group);
                }

                break;
            case JoinedCoilsSyntax joined:
                foreach (var one in joined.Coils)
                {
                    TakeCoils(one);
                }

                break;
        }
    }

    private void TakeState(ImmutableArray<PairSyntax> pairs, NameScope at)
    {
        foreach (var pair in pairs.Where(pair => !IsWordOfState(pair.Key.Text)))
        {
            TakeControl([.. WordsOf(pair.Key)], at);
            if (!IsWordOfState(pair.Value.Text))
            {
                TakePosition(pair.Key.Text, pair.Value, at);
            }
        }
    }

    private static bool IsWordOfState(string word) =>
        Naming.Alike(word, Circuits.StateText.OthersWord) || Naming.Alike(word, Circuits.StateText.AnyWord);

    private void TakeOptional(WordSyntax? word, NameScope at)
    {
        if (word is not null)
        {
            TakeName(word, at);
        }
    }

    private void TakeLugs(ImmutableArray<LugSyntax> lugs) => TakeLugs(lugs, scope);

    private void TakeLugs(ImmutableArray<LugSyntax> lugs, NameScope at)
    {
        foreach (var lug in lugs)
        {
            TakeLug(lug, at);
        }
    }

    private void TakeLug(LugSyntax lug, NameScope at)
    {
        TakeName(lug.Name, at);
        if (lug.Words.Length > 1)
        {
            var behind = lug.Words[1].Location.To(lug.Location);
            uses.Add(
                new NameUse(
                    behind,
                    NameKind.Lug,
                    $"lug {KeyOfPart(lug.Name, at)} {Lower(behind.Text)}",
                    DeclaredAt: null
                )
            );
        }
    }

    /// <summary>A control, a dial or a coil: the name of its part, and of its section where it has one.</summary>
    private void TakeControl(ImmutableArray<WordSyntax> words, NameScope at)
    {
        TakeName(words[0], at);
        foreach (var section in words.Skip(1).Take(1))
        {
            var (kind, model) = ModelOf(words[0].Text, at);
            AddSection(section, definitions.GetValueOrDefault(KeyOf(kind, model)), kind, model);
        }
    }

    private void TakePosition(string control, WordSyntax word, NameScope at)
    {
        if (
            double.TryParse(word.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            && at.PositionsOf(control) is null
        )
        {
            // Where a dial stands, or a position that only the part's definition numbers: nobody has named it.
            return;
        }

        var named = at.PositionsOf(control)?.Names.FirstOrDefault(name => Naming.Alike(name.Text, word.Text))?.Location;
        var dotted = control.Split('.', 2);
        var (kind, model) = ModelOf(dotted[0], at);
        var declared =
            named
            ?? (
                definitions.TryGetValue(KeyOf(kind, model), out var define)
                    ? Definitions.PositionIn(define, dotted.ElementAtOrDefault(1) ?? "", word.Text)
                    : null
            );
        var key = declared is { } place
            ? KeyAt("position", place)
            : $"position {kind} {model} {string.Join('.', dotted.Skip(1))} {Lower(word)}".ToLowerInvariant();
        Add(word, NameKind.Position, key, declared);
    }

    private void TakeName(WordSyntax word, NameScope at) =>
        Add(word, NameKind.Part, KeyOfPart(word, at), at.PartNamed(word.Text));

    private void TakeColour(WordSyntax colour)
    {
        // A stripe stands behind a slash.
        var slash = colour.Text.IndexOf('/', StringComparison.Ordinal);
        var words = slash <= 0 ? [colour] : new[] { colour.Part(0, slash), colour.Part(slash + 1, colour.Text.Length) };
        foreach (var word in words)
        {
            Add(word, NameKind.Colour, $"colour {Lower(word)}", colours.TryGetValue(word.Text, out var at) ? at : null);
        }
    }

    private void AddSection(WordSyntax word, DefineSyntax? define, string kind, string model)
    {
        var declared = define is null ? null : Definitions.SectionIn(define, word.Text);
        var key = declared is { } place
            ? KeyAt("section", place)
            : $"section {kind} {model} {word.Text}".ToLowerInvariant();
        Add(word, NameKind.Section, key, declared);
    }

    private void Add(WordSyntax word, NameKind kind, string key, SourceLocation? declared)
    {
        if (word.Text.Length > 0)
        {
            uses.Add(new NameUse(word.Location, kind, key, declared));
        }
    }

    /// <summary>The kind and the model of a part, as its line says them; empty where no line is known.</summary>
    private (string Kind, string Model) ModelOf(string part, NameScope at)
    {
        if (at.LineOf(part) is not { } line)
        {
            return ("", "");
        }

        var model =
            line.Arguments.OfType<WordSyntax>()
                .Select(word => catalogue.Find(line.Kind.Text, word.Text))
                .FirstOrDefault(found => found is not null)
            ?? catalogue.DefaultOf(line.Kind.Text);
        return (line.Kind.Text, model?.Model ?? "");
    }

    private static string KeyOfPart(WordSyntax name, NameScope at) =>
        at.PartNamed(name.Text) is { } declared ? KeyAt("part", declared) : $"part {Lower(name)}";

    private static IEnumerable<WordSyntax> WordsOf(WordSyntax dotted)
    {
        var dot = dotted.Text.IndexOf('.', StringComparison.Ordinal);
        return dot <= 0 ? [dotted] : [dotted.Part(0, dot), dotted.Part(dot + 1, dotted.Text.Length)];
    }

    internal static (string Kind, string Model) KeyOf(string kind, string model) =>
        (kind.ToLowerInvariant(), model.ToLowerInvariant());

    private static string KeyAt(string what, SourceLocation declared) =>
        string.Create(CultureInfo.InvariantCulture, $"{what} {declared.Source.Path}:{declared.Span.Start}");

    private static string Lower(WordSyntax word) => Lower(word.Text);

    private static string Lower(string word) => word.ToLowerInvariant();
}
