using System.Collections.Immutable;
using WireText.Quantities;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Binds <c>found</c> lines: where something was measured or heard, and what.</summary>
/// <param name="names">Finds what a line names.</param>
internal sealed class FoundBinder(CircuitDraft draft, LugResolver resolver, StateBinder names)
{
    /// <summary>Where every dial stands while two lugs are probed, so that no track joins them.</summary>
    private const double MiddleTravel = 5;

    /// <summary>The word for the sleeve of the plug; a part may have it for its name.</summary>
    private const string SleeveWord = "sleeve";

    private const string ZeroWord = "0";

    private FoundPast? past;

    /// <summary>Null when something in the line is not known or makes no sense there; it is reported then.</summary>
    public Found? Bind(FoundSyntax syntax)
    {
        if (PlaceOf(syntax.At) is not { } place || (place is FoundPast told && IsPastTwice(told, syntax)))
        {
            return null;
        }

        var facts = syntax.What.Select(what => FactOf(what, place)).OfType<FoundFact>().ToImmutableArray();
        return facts.Length < syntax.What.Length
            ? null
            : new Found(place, facts, syntax.Location) { Where = LineScan.Tidied(syntax.At.Location.Text) };
    }

    private bool IsPastTwice(FoundPast told, FoundSyntax syntax)
    {
        if (past is null)
        {
            past = told;
            return false;
        }

        draft.Sink.Add(
            StatementFindings.SaidTwice.At(
                syntax.Location,
                "the past of the instrument is told already",
                "keep one of the two lines"
            )
        );
        return true;
    }

    private FoundPlace? PlaceOf(FoundPlaceSyntax syntax) =>
        syntax switch
        {
            FoundPastSyntax one => new FoundPast(one.Word.Is("worked")),
            FoundAtPlugSyntax plug => AtPlug(plug),
            FoundBetweenSyntax between => Between(between),
            FoundAtJointSyntax joint => AtJoint(joint),
            FoundAloneSyntax alone => ElementOf(alone.Name) is { } element ? new FoundAlone(element.Index) : null,
            FoundAtCellSyntax cell => AtCell(cell),
            _ => new FoundAtLead(),
        };

    private FoundAtPlug? AtPlug(FoundAtPlugSyntax syntax)
    {
        if (!names.ReadJack(syntax.Jack, out var jack) || StateOf(syntax.State, travel: null) is not { } state)
        {
            return null;
        }

        if (syntax.Turning is not { } turning)
        {
            return new FoundAtPlug(jack, state, Turning: null);
        }

        if (draft.Dials.Find(dial => Naming.Alike(dial.Name, turning.FullName)) is { } dial)
        {
            return new FoundAtPlug(jack, state, dial.Index);
        }

        if (!draft.IsBroken(turning.Name.Text))
        {
            var dials = draft.Dials.Select(one => one.Name).ToList();
            var near = DidYouMean.Nearest(turning.FullName, dials, allowed: 1);
            draft.Sink.Add(
                ControlFindings.NoPositions.At(
                    turning.Location,
                    $"no dial is called '{turning.FullName}'",
                    near is not null ? $"did you mean '{near}'?"
                        : dials.Count > 0 ? $"there is {string.Join(", ", dials)}"
                        : null
                )
            );
        }

        return null;
    }

    private FoundPlace? Between(FoundBetweenSyntax syntax)
    {
        var isFromPlug =
            syntax.From.Words.Length == 1 && syntax.From.Name.Is(SleeveWord) && draft.FindPart(SleeveWord) is null;
        if (isFromPlug)
        {
            return resolver.Resolve(syntax.To) is { } metal && StateOf(syntax.State, travel: null) is { } rest
                ? new FoundAtMetal(rest, metal.Index)
                : null;
        }

        var (from, to) = (resolver.Resolve(syntax.From), resolver.Resolve(syntax.To));
        return from is not null && to is not null && StateOf(syntax.State, MiddleTravel) is { } state
            ? new FoundBetween(state, from.Index, to.Index)
            : null;
    }

    private FoundAtJoint? AtJoint(FoundAtJointSyntax syntax)
    {
        if (resolver.Resolve(syntax.Lug) is not { } lug || resolver.Resolve(syntax.Of) is not { } other)
        {
            return null;
        }

        var here = draft.Wires.FindAll(wire => wire.Touches(lug.Index));
        if (
            here.Find(wire => draft.Wires.Exists(one => IsOneRun(one, wire) && one.Touches(other.Index))) is { } found
            && lug.Index != other.Index
        )
        {
            return new FoundAtJoint(lug.Index, found.Index);
        }

        draft.Sink.Add(
            FoundFindings.BadFound.At(
                syntax.Location,
                $"no wire leads from '{lug.Name}' to '{other.Name}'",
                here.Count == 0
                    ? $"nothing is soldered to '{lug.Name}'"
                    : $"name a lug at its other end: {string.Join(", ", Others(here, lug.Index))}"
            )
        );
        return null;
    }

    private IEnumerable<string> Others(List<Wire> wires, int lug) =>
        wires
            .Select(wire => wire.From == lug ? wire.To : wire.From)
            .Where(other => other >= 0)
            .Distinct()
            .Select(other => draft.Lugs[other].Name);

    /// <summary>True for stretches of one piece of conductor: a braid shares no number with its cores.</summary>
    private static bool IsOneRun(Wire one, Wire other) =>
        one.Index == other.Index || (one.Run == other.Run && one.Kind == other.Kind && one.Cable == other.Cable);

    private FoundAtCell? AtCell(FoundAtCellSyntax syntax)
    {
        if (syntax.Name is { } name)
        {
            return ElementOf(name) is { } element ? new FoundAtCell(element.Index) : null;
        }

        if (draft.Elements.OfType<Battery>().FirstOrDefault() is { } battery)
        {
            return new FoundAtCell(battery.Index);
        }

        draft.Sink.Add(
            FoundFindings.BadFound.At(syntax.Location, "the instrument has no battery", "take the line out")
        );
        return null;
    }

    /// <summary>The one element of a part, or the one that is named; null after a finding.</summary>
    private Element? ElementOf(LugSyntax name)
    {
        if (names.FindPart(name.Name) is not { } part)
        {
            return null;
        }

        var all = part.Elements.Select(element => draft.Elements[element]).ToList();
        var named =
            all.Count == 1 && name.Words.Length == 1
                ? all
                : all.FindAll(element => Naming.Alike(element.Name, name.FullName));
        if (named is [var only])
        {
            return only;
        }

        draft.Sink.Add(
            LugFindings.UnknownPart.At(
                name.Location,
                all.Count == 0
                    ? $"'{part.Name}' has nothing to be measured alone"
                    : $"'{name.FullName}' is not one thing",
                all.Count == 0 ? null : $"write {string.Join(" or ", all.Select(element => element.Name).Distinct())}"
            )
        );
        return null;
    }

    /// <param name="travel">Where every dial stands that is not named; null for where it rests.</param>
    private State? StateOf(ImmutableArray<PairSyntax> pairs, double? travel)
    {
        var positions = draft.Controls.Select(control => (int?)control.Rest).ToArray();
        var travels = draft.Dials.Select(dial => travel ?? dial.Rest).ToArray();
        return names.HasTwice(pairs) || !pairs.All(pair => names.Read(pair, positions, travels, mayBeAny: false))
            ? null
            : State.Of(positions, [.. travels]).Saying([.. pairs.Select(pair => $"{pair.Key.Text}={pair.Value.Text}")]);
    }

    private FoundFact? FactOf(FoundWhatSyntax syntax, FoundPlace place)
    {
        var text = LineScan.Tidied(syntax.Location.Text);
        FoundFact? fact = syntax switch
        {
            FoundReadingSyntax reading => Reading(reading, text),
            FoundCoilsSyntax coils => Coils(coils, text),
            FoundVoltsSyntax volts => ValueOf(volts.Value, ValueUse.Battery) is { } found
                ? new FoundVolts(found) { Text = text }
                : null,
            _ => new FoundWord(Enum.Parse<FoundSign>(syntax.Location.Text, ignoreCase: true)) { Text = text },
        };
        var isHighest = syntax is FoundReadingSyntax { IsHighest: true };
        if (fact is null || MayBe(fact, isHighest, place, draft.Elements))
        {
            return fact;
        }

        draft.Sink.Add(
            FoundFindings.BadFound.At(syntax.Location, $"'{text}' is nothing that is found there", HelpFor(place))
        );
        return null;
    }

    private static bool MayBe(FoundFact fact, bool isHighest, FoundPlace place, List<Element> elements) =>
        (place, fact) switch
        {
            (FoundAtPlug plug, FoundReading) => isHighest == plug.Turning is not null,
            (FoundAtPlug { Turning: null }, FoundCoils or FoundWord { Sign: < FoundSign.Good }) => true,
            (FoundAtMetal or FoundBetween or FoundAtJoint, FoundReading) => !isHighest,
            (FoundAlone alone, FoundReading) => !isHighest && elements[alone.Element] is not Capacitor,
            (FoundAlone alone, FoundWord { Sign: >= FoundSign.Good }) => elements[alone.Element] is Capacitor,
            (FoundAtLead, FoundWord { Sign: FoundSign.Good or FoundSign.Open or FoundSign.Shorted }) => true,
            (FoundAtCell, FoundVolts) => true,
            _ => false,
        };

    private string HelpFor(FoundPlace place) =>
        place switch
        {
            FoundAtPlug { Turning: not null } => "write the highest reading: at most 64.2k",
            FoundAtPlug =>
                "write reads with a value, heard with coils, or silence, dead, thin, full, hums, quiet, dark, bright, weak or buzzes",
            FoundAlone alone when draft.Elements[alone.Element] is Capacitor => "write good, open, shorted or leaky",
            FoundAtLead => "write good, open or shorted",
            FoundAtCell => "write its voltage, such as 8.9V",
            _ => "write reads with a value, reads 0 or reads open",
        };

    private FoundReading? Reading(FoundReadingSyntax syntax, string text) =>
        syntax.Value.Is("open") ? new FoundReading(double.PositiveInfinity, 0) { Text = text }
        : syntax.Value.Is(ZeroWord) ? new FoundReading(0, 0) { Text = text }
        : ValueOf(syntax.Value, ValueUse.MeterReading) is { } ohms
            ? new FoundReading(ohms, ValueReader.StepOf(syntax.Value.Text, ohms)) { Text = text }
        : null;

    private FoundCoils? Coils(FoundCoilsSyntax syntax, string text)
    {
        var coils = ImmutableArray.CreateBuilder<int>();
        foreach (var name in syntax.Coils)
        {
            if (names.CoilsOf(name) is not { } found)
            {
                return null;
            }

            coils.AddRange(found);
        }

        return new FoundCoils([.. coils.Distinct().Order()]) { Text = text };
    }

    private double? ValueOf(WordSyntax word, ValueUse use)
    {
        var reading = ValueReader.Read(word.Text, use);
        if (reading.Problem is { } problem)
        {
            var help = reading.Suggestion is { } suggestion ? $"write '{suggestion}'" : null;
            draft.Sink.Add(ValueFindings.BadValue.At(word.Location, problem, help));
        }

        return reading.Value;
    }
}
