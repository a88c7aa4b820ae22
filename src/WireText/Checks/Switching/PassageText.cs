using WireText.Electrical.Networks;
using WireText.Text;

namespace WireText.Checks.Switching;

/// <summary>Names the ways of a control from position to position.</summary>
internal static class PassageText
{
    /// <summary><c>between 'one' and 'two'</c>, with <c>and between</c> the further ones.</summary>
    public static string Of(IEnumerable<Transition> transitions) =>
        string.Join(
            " and ",
            transitions.Select(way =>
                $"between '{way.Control.Positions[way.From].Name}' and '{way.Control.Positions[way.To].Name}'"
            )
        );

    public static IEnumerable<Subject> SubjectsOf(IEnumerable<Transition> transitions) =>
        transitions
            .SelectMany(way => new[] { way.From, way.To }, (way, position) => (way.Control, position))
            .Distinct()
            .Select(at => Subject.Position(at.Control.Name, at.Control.Positions[at.position].Name));
}
