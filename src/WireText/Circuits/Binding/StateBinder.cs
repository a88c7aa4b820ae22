using System.Collections.Immutable;
using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Finds what a line about a state names: the jack, the controls and dials, the coils.</summary>
/// <param name="outputs">The jacks; a line that names none is about the first.</param>
internal sealed class StateBinder(CircuitDraft draft, ImmutableArray<OutputJack> outputs)
{
    /// <summary>The part of the jack that a line names, or of the first; false after a finding.</summary>
    public bool ReadJack(WordSyntax? named, out int? jack)
    {
        jack = outputs.IsEmpty ? null : outputs[0].Part;
        if (named is null)
        {
            return true;
        }

        jack = draft.FindPart(named.Text)?.Index;
        foreach (var output in outputs)
        {
            if (output.Part == jack)
            {
                return true;
            }
        }

        ReportUnknownJack(named);
        return false;
    }

    private void ReportUnknownJack(WordSyntax named)
    {
        if (draft.IsBroken(named.Text))
        {
            return;
        }

        var names = outputs.Select(output => draft.Parts[output.Part].Name).ToList();
        var near = DidYouMean.Nearest(named.Text, names);
        draft.Sink.Add(
            LugFindings
                .UnknownPart.At(
                    named.Location,
                    $"no output jack is named '{named.Text}'",
                    names.Count == 0
                        ? "write a jack with a tip and a sleeve into the file"
                        : $"{(near is null ? "" : $"did you mean '{near}'? ")}the jacks are {string.Join(" and ", names)}"
                )
                .MendedBy(TextEdit.Meant(named.Location, near, names))
        );
    }

    /// <summary>True after a finding: a control or a dial is set twice.</summary>
    public bool HasTwice(ImmutableArray<PairSyntax> state)
    {
        for (var i = 0; i < state.Length; i++)
        {
            var key = state[i].Key;
            if (state.Take(i).Any(other => Naming.Alike(other.Key.Text, key.Text)))
            {
                draft.Sink.Add(
                    StatementFindings.SaidTwice.At(key.Location, $"'{key.Text}' is set twice", "keep one of the two")
                );
                return true;
            }
        }

        return false;
    }

    /// <summary>Sets what a pair says; false after a finding.</summary>
    /// <param name="mayBeAny">True where <c>any</c> stands for each position of a control.</param>
    public bool Read(PairSyntax pair, int?[] positions, double[] travels, bool mayBeAny = true)
    {
        switch (Setting.Read(draft.Controls, draft.Dials, pair.Key.Text, pair.Value.Text, mayBeAny))
        {
            case Setting.OfControl set:
                positions[set.Control.Index] = set.Position;
                return true;
            case Setting.OfDial set:
                travels[set.Dial.Index] = set.Travel;
                return true;
            case Setting.NoPosition none:
                SettingFindings.ReportNoPosition(draft, none.Control, pair.Value);
                return false;
            case Setting.OffTheDial off:
                SettingFindings.ReportOffTheDial(draft, off.Dial, pair.Value);
                return false;
            default:
                ReportUnknownControl(pair.Key);
                return false;
        }
    }

    /// <summary>All coils of a pickup, or the one that is named; null after a finding.</summary>
    public ImmutableArray<int>? CoilsOf(LugSyntax name)
    {
        if (FindPart(name.Name) is not { } part)
        {
            return null;
        }

        var coils = part.Elements.Select(element => draft.Elements[element]).OfType<Coil>().ToList();
        if (coils.Count == 0)
        {
            var pickups = draft
                .Parts.Where(other => other.Elements.Any(e => draft.Elements[e] is Coil))
                .Select(p => p.Name);
            draft.Sink.Add(
                LugFindings.UnknownPart.At(
                    name.Location,
                    $"'{part.Name}' has no coil to be heard",
                    $"name a pickup: {string.Join(", ", pickups)}"
                )
            );
            return null;
        }

        var named = name.Words.Length == 1 ? coils : coils.FindAll(coil => Naming.Alike(coil.Name, name.FullName));
        if (named.Count > 0)
        {
            return [.. named.Select(coil => coil.Index)];
        }

        draft.Sink.Add(
            LugFindings.UnknownPart.At(
                name.Location,
                $"'{part.Name}' has no coil '{name.Words[^1].Text}'",
                $"write {string.Join(" or ", coils.Select(coil => coil.Name))}"
            )
        );
        return null;
    }

    /// <summary>The part of that name; null after a finding.</summary>
    public Part? FindPart(WordSyntax name)
    {
        if (draft.FindPart(name.Text) is { } part)
        {
            return part;
        }

        if (ClaimWords.Meant(name.Text) is { } claim)
        {
            draft.Sink.Add(
                LugFindings
                    .UnknownPart.At(name.Location, $"no part is named '{name.Text}'", $"did you mean '{claim}'?")
                    .MendedBy(new TextEdit(name.Location, claim))
            );
        }
        else if (!draft.IsBroken(name.Text))
        {
            var names = draft.Parts.Select(p => p.Name).ToList();
            var near = DidYouMean.Nearest(name.Text, names, allowed: 1) ?? DidYouMean.CutShort(name.Text, names);
            draft.Sink.Add(
                LugFindings.UnknownPart.At(
                    name.Location,
                    $"no part is named '{name.Text}'",
                    near is null ? null : $"did you mean '{near}'?"
                )
            );
        }

        return null;
    }

    private void ReportUnknownControl(WordSyntax key)
    {
        var part = key.Text.Split('.')[0];
        if (draft.IsBroken(part) || draft.IsNameTwice(part))
        {
            return;
        }

        var names = draft
            .Controls.Select(control => control.Name)
            .Concat(draft.Dials.Select(dial => dial.Name))
            .ToList();
        var near = DidYouMean.Nearest(key.Text, names, allowed: 1) ?? DidYouMean.CutShort(key.Text, names);
        var isPart = draft.FindPart(part) is not null;
        var ofThePart = names.Where(name => name.StartsWith($"{part}.", StringComparison.OrdinalIgnoreCase)).ToList();
        draft.Sink.Add(
            (isPart ? ControlFindings.NoPositions : LugFindings.UnknownPart).At(
                key.Location,
                isPart ? $"'{key.Text}' has no positions and no dial" : $"no part is named '{part}'",
                near is not null ? $"did you mean '{near}'?"
                    : ofThePart.Count > 0 ? $"say which of its controls: {string.Join(" or ", ofThePart)}"
                    : null
            )
        );
    }
}
