using System.Globalization;
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
            if (draft.Controls.Find(c => Is(c.Name, pair.Key.Text)) is { } control)
            {
                RestAt(control, pair);
            }
            else if (draft.Dials.Find(d => Is(d.Name, pair.Key.Text)) is { } dial)
            {
                RestAt(dial, pair);
            }
            else
            {
                ReportUnknown(pair.Key, pair.Key.Text, pair.Key.Text.Split('.')[0]);
            }
        }
    }

    private static string Count(int names) => names == 1 ? "1 is" : $"{names} are";

    private bool HasBadName(PositionsSyntax syntax)
    {
        for (var i = 0; i < syntax.Names.Length; i++)
        {
            var name = syntax.Names[i];
            if (Is(name.Text, "any"))
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

            if (syntax.Names.Take(i).Any(other => Is(other.Text, name.Text)))
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

    private void RestAt(Control control, PairSyntax pair)
    {
        var names = control.Positions.Select(p => p.Name).ToList();
        var index = names.FindIndex(n => Is(n, pair.Value.Text));
        if (index < 0)
        {
            var near = DidYouMean.Nearest(pair.Value.Text, names, allowed: 1);
            draft.Sink.Add(
                ControlFindings.UnknownPosition.At(
                    pair.Value.Location,
                    $"'{control.Name}' has no position '{pair.Value.Text}': it has {string.Join(", ", names)}",
                    near is null ? null : $"did you mean '{near}'?"
                )
            );
            return;
        }

        draft.Controls[control.Index] = draft.Controls[control.Index] with { Rest = index, IsRestNamed = true };
    }

    private void RestAt(Dial dial, PairSyntax pair)
    {
        if (
            double.TryParse(
                pair.Value.Text,
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var travel
            )
            && travel <= 10
        )
        {
            draft.Dials[dial.Index] = dial with { Rest = travel };
            return;
        }

        draft.Sink.Add(
            ControlFindings.UnknownPosition.At(
                pair.Value.Location,
                $"'{dial.Name}' turns from 0 to 10; '{pair.Value.Text}' is not on it",
                "write a number from 0 to 10"
            )
        );
    }

    private Control? FindControl(LugSyntax syntax)
    {
        if (draft.Controls.Find(c => Is(c.Name, syntax.FullName)) is { } control)
        {
            return control;
        }

        ReportUnknown(syntax, syntax.FullName, syntax.Name.Text);
        return null;
    }

    private void ReportUnknown(SyntaxNode at, string name, string partName)
    {
        if (draft.IsBroken(partName))
        {
            return;
        }

        var names = draft.Controls.Select(c => c.Name);
        var near = DidYouMean.Nearest(name, names, allowed: 1);
        var isPart = draft.FindPart(partName) is not null;
        draft.Sink.Add(
            (isPart ? ControlFindings.NoPositions : LugFindings.UnknownPart).At(
                at.Location,
                isPart ? $"'{name}' has no positions to name" : $"no part is named '{partName}'",
                near is not null ? $"did you mean '{near}'?" : null
            )
        );
    }

    private static bool Is(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
