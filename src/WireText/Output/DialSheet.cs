using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Positions;
using WireText.Electrical.Roles;
using WireText.Electrical.Studies;

namespace WireText.Output;

/// <summary>What each dial does in each position, in a word: a heading, and a row for each line of the table of positions.</summary>
internal sealed record DialSheet(ImmutableArray<string> Heading, ImmutableArray<ImmutableArray<string>> Rows)
{
    private const string Nothing = "-";

    /// <summary>Null for a circuit without dials, and where there are too many situations to say.</summary>
    public static DialSheet? Of(Study study)
    {
        var circuit = study.Circuit;
        if (circuit.Dials.IsEmpty || study.Roles is not { IsComplete: true } roles)
        {
            return null;
        }

        var table = study.Positions;
        var columns = table.Columns.ToList();
        return new DialSheet(
            [.. columns.Select(control => control.Name), .. circuit.Dials.Select(dial => dial.Name)],
            [
                .. PositionSheet
                    .RowsOf(table)
                    .Select(row =>
                        columns
                            .Select(control => PositionSheet.PositionOf(control, row))
                            .Concat(circuit.Dials.Select(dial => WordOf(roles, dial, row)))
                            .ToImmutableArray()
                    ),
            ]
        );
    }

    private static string WordOf(DialRoles roles, Dial dial, PositionRow row)
    {
        var words = roles
            .EffectsOf(dial)
            .Where(effect => effect.State.Meets(row.State))
            .Select(effect => WordOf(effect.Role))
            .Distinct(StringComparer.Ordinal)
            .ToList();
        return words.Count == 0 ? Nothing : string.Join(" or ", words);
    }

    private static string WordOf(DialRole role) =>
        role switch
        {
            DialRole.Volume => "volume",
            DialRole.VolumeBackwards => "volume, backwards",
            DialRole.VolumeThatLeaks => "volume, leaks",
            DialRole.Blend => "blend",
            DialRole.BlendBackwards => "blend, backwards",
            DialRole.Tone => "tone",
            DialRole.ToneBackwards => "tone, backwards",
            DialRole.BassCut => "bass cut",
            DialRole.Slight => "a little",
            _ => Nothing,
        };
}
