using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Faults;

namespace WireText.Diagnosing;

/// <summary>Words for what a measurement shows, as a <c>found</c> line has them.</summary>
internal static class OutcomeWords
{
    /// <summary>Outcomes that are told of a measurement. Chosen: a line each.</summary>
    private const int MostTold = 4;

    /// <summary>Values nearer than this, as a fraction, are told as one.</summary>
    private const double OneValue = 0.12;

    /// <summary>Figures of a value that is foretold.</summary>
    private const int Figures = 3;

    public static string Of(Circuit circuit, Outlook outlook, FoundPlace place) =>
        outlook.Heard is { } heard ? Heard(circuit, heard)
        : outlook.Label is { } label
            ? place is FoundAtCell
                    ? label == FoundSign.Weak ? "flat"
                        : "full"
                : label.ToString().ToLowerInvariant()
        : outlook.Read is { } read ? Reading(read, outlook.Mean)
        : "";

    /// <summary>What may be found, the likeliest first, each with the explanations that it leaves.</summary>
    public static ImmutableArray<NextOutcome> All(
        Circuit circuit,
        Measurement measurement,
        ImmutableArray<Suspect> suspects,
        Outlook[] outlooks,
        ImmutableArray<Explanation> explanations
    )
    {
        var told = new List<(string Text, Outlook First, double Share, SortedSet<int> Leaves)>();
        for (var i = 0; i < suspects.Length; i++)
        {
            if (suspects[i].IsOutside)
            {
                continue;
            }

            var (share, leaves) = (Math.Exp(suspects[i].LogShare), NumberOf(suspects[i], explanations));
            var at = told.FindIndex(one => IsOne(one.First, outlooks[i]));
            if (at < 0)
            {
                told.Add((Of(circuit, outlooks[i], measurement.Place), outlooks[i], share, [leaves]));
            }
            else
            {
                told[at].Leaves.Add(leaves);
                told[at] = told[at] with { Share = told[at].Share + share };
            }
        }

        return
        [
            .. told.OrderByDescending(one => one.Share)
                .Take(MostTold)
                .Select(one => new NextOutcome(one.Text, [.. one.Leaves])),
        ];
    }

    private static string Reading(Foretold read, double mean) =>
        read.Kind switch
        {
            ShownKind.Open => "open",
            ShownKind.Value => FoundLines.Reading(mean, Figures),
            _ => "0",
        };

    private static string Heard(Circuit circuit, HeardAtPlug heard)
    {
        List<string> words = heard.Kind switch
        {
            HeardKind.Sound =>
            [
                $"heard {string.Join(" and ", heard.Coils.Select(coil => circuit.Elements[coil].Name))}",
                .. heard.Thin ? ["thin"] : Array.Empty<string>(),
                .. heard.Hums ? ["hums"] : Array.Empty<string>(),
                .. heard.Shade == Shade.Right ? [] : new[] { heard.Shade.ToString().ToLowerInvariant() },
                .. heard.Weak ? ["weak"] : Array.Empty<string>(),
            ],
            HeardKind.Silence => ["silence"],
            HeardKind.Dead => ["dead"],
            _ => ["anything"],
        };
        return string.Join(", ", heard.Buzzes ? words.Append("buzzes") : words);
    }

    private static bool IsOne(Outlook one, Outlook other) =>
        Equals(one.Heard, other.Heard)
        && one.Label == other.Label
        && IsZero(one) == IsZero(other)
        && IsOpen(one) == IsOpen(other)
        && (IsZero(one) || IsOpen(one) || Math.Abs(one.Mean - other.Mean) <= OneValue * Math.Max(one.Mean, other.Mean));

    private static bool IsZero(Outlook outlook) => outlook.Read?.Kind is ShownKind.Joined or ShownKind.NearZero;

    private static bool IsOpen(Outlook outlook) => outlook.Read?.Kind == ShownKind.Open;

    private static int NumberOf(Suspect suspect, ImmutableArray<Explanation> explanations)
    {
        for (var i = 0; i < explanations.Length; i++)
        {
            var isMeant = suspect.IsRight
                ? explanations[i].Kind == ExplanationKind.NothingWrong
                : explanations[i].Faults.Any(fault => fault.Index == suspect.Faults[0].Fault.Index);
            if (isMeant)
            {
                return i + 1;
            }
        }

        return 0;
    }
}
