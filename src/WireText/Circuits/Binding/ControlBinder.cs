using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Gives controls the author's own words for positions and the author's own rest.</summary>
internal sealed class ControlBinder(CircuitDraft draft)
{
    public void Bind(PositionsSyntax syntax)
    {
        if (FindControl(syntax.Control) is not { } control)
        {
            return;
        }

        if (control.NamedAt is { } earlier)
        {
            draft.Sink.Add(
                StatementFindings
                    .SaidTwice.At(
                        syntax.Control.Location,
                        $"the positions of '{control.Name}' are named already",
                        "keep one of the two lines"
                    )
                    .Beside(earlier, "named here first")
            );
            return;
        }

        if (syntax.Names.Length != control.Positions.Length)
        {
            draft.MarkMisnamed(control);
            draft.Sink.Add(
                ControlFindings.WrongCount.At(
                    syntax.Names[0].Location.To(syntax.Names[^1].Location),
                    $"'{control.Name}' has {control.Positions.Length} positions; {Count(syntax.Names.Length)} named",
                    $"name all, in the order {string.Join(", ", control.Positions.Select(p => p.Name))}"
                )
            );
            return;
        }

        if (HasBadName(syntax))
        {
            draft.MarkMisnamed(control);
            return;
        }

        draft.Controls[control.Index] = control with
        {
            NamedAt = syntax.Control.Location,
            Positions =
            [
                .. control.Positions.Zip(syntax.Names, (position, name) => position with { Name = name.Text }),
            ],
        };
    }

    public void Bind(RestSyntax syntax)
    {
        foreach (var pair in syntax.Pairs)
        {
            switch (Setting.Read(draft.Controls, draft.Dials, pair.Key.Text, pair.Value.Text, mayBeAny: false))
            {
                case Setting.OfControl { Position: { } position } set:
                    draft.Controls[set.Control.Index] = set.Control with { Rest = position, IsRestNamed = true };
                    break;
                case Setting.OfDial set:
                    draft.Dials[set.Dial.Index] = set.Dial with { Rest = set.Travel };
                    break;
                case Setting.NoPosition none:
                    SettingFindings.ReportNoPosition(draft, none.Control, pair.Value);
                    break;
                case Setting.OffTheDial off:
                    SettingFindings.ReportOffTheDial(draft, off.Dial, pair.Value);
                    break;
                default:
                    ReportUnknown(pair.Key, pair.Key.Text, pair.Key.Text.Split('.')[0]);
                    break;
            }
        }
    }

    private static string Count(int names) => names == 1 ? "1 is" : $"{names} are";

    private bool HasBadName(PositionsSyntax syntax)
    {
        for (var i = 0; i < syntax.Names.Length; i++)
        {
            var name = syntax.Names[i];
            if (Naming.Alike(name.Text, "any"))
            {
                draft.Sink.Add(
                    ControlFindings.ReservedName.At(
                        name.Location,
                        "'any' means each of the positions; it names none",
                        "choose another word"
                    )
                );
                return true;
            }

            if (syntax.Names.Take(i).Any(other => Naming.Alike(other.Text, name.Text)))
            {
                draft.Sink.Add(
                    StatementFindings.SaidTwice.At(
                        name.Location,
                        $"'{name.Text}' names two positions",
                        "give each position a word of its own"
                    )
                );
                return true;
            }
        }

        return false;
    }

    /// <summary>The control that a line names, or null after a finding.</summary>
    public Control? FindControl(LugSyntax syntax)
    {
        if (draft.Controls.Find(c => Naming.Alike(c.Name, syntax.FullName)) is { } control)
        {
            return control;
        }

        ReportUnknown(syntax, syntax.FullName, syntax.Name.Text);
        return null;
    }

    private void ReportUnknown(SyntaxNode at, string name, string partName)
    {
        if (draft.IsBroken(partName) || draft.IsNameTwice(partName))
        {
            return;
        }

        var names = draft.Controls.Select(c => c.Name);
        var near = DidYouMean.Nearest(name, names, allowed: 1) ?? DidYouMean.CutShort(name, names);
        var isPart = draft.FindPart(partName) is not null;
        draft.Sink.Add(
            (isPart ? ControlFindings.NoPositions : LugFindings.UnknownPart).At(
                at.Location,
                isPart ? $"'{name}' has no positions to name" : $"no part is named '{partName}'",
                near is not null ? $"did you mean '{near}'?" : null
            )
        );
    }
}
