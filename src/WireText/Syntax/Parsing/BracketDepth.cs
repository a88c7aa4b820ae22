using WireText.Text;

namespace WireText.Syntax.Parsing;

/// <summary>Looks at the brackets of a claim before it is read: the parser follows each one a call deeper.</summary>
internal static class BracketDepth
{
    /// <summary>
    /// How deep brackets may stand in brackets. Each pair changes from series to parallel or back, so no circuit that anybody
    /// solders comes near (assumed); the call stack holds many times that.
    /// </summary>
    public const int Max = 32;

    /// <summary>The finding of a line whose brackets stand deeper; null for any other.</summary>
    public static Finding? Problem(LineReading reading) =>
        reading.HasMarks && DeepestIn(reading.Content.Text) > Max
            ? LineFindings.TooDeep.At(
                reading.Content,
                $"brackets stand more than {Max} deep",
                "write the claim with fewer brackets"
            )
            : null;

    private static int DeepestIn(string text)
    {
        var (depth, deepest) = (0, 0);
        foreach (var character in text)
        {
            depth += character switch
            {
                '(' => 1,
                ')' => -1,
                _ => 0,
            };
            deepest = Math.Max(deepest, depth);
        }

        return deepest;
    }
}
