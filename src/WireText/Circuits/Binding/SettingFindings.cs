using WireText.Syntax.Nodes;
using WireText.Text;

namespace WireText.Circuits.Binding;

/// <summary>Reports a setting that names no position of its control, or no travel of its dial.</summary>
internal static class SettingFindings
{
    public static void ReportNoPosition(CircuitDraft draft, Control control, WordSyntax value)
    {
        if (draft.IsMisnamed(control))
        {
            return;
        }

        var names = control.Positions.Select(position => position.Name).ToList();
        var near = DidYouMean.Nearest(value.Text, names, allowed: 1);
        draft.Sink.Add(
            ControlFindings.UnknownPosition.At(
                value.Location,
                $"'{control.Name}' has no position '{value.Text}': it has {string.Join(", ", names)}",
                near is null ? null : $"did you mean '{near}'?"
            )
        );
    }

    public static void ReportOffTheDial(CircuitDraft draft, Dial dial, WordSyntax value) =>
        draft.Sink.Add(
            ControlFindings.UnknownPosition.At(
                value.Location,
                $"'{dial.Name}' turns from 0 to 10; '{value.Text}' is not on it",
                "write a number from 0 to 10"
            )
        );
}
