using System.Globalization;

namespace WireText.Quantities;

/// <summary>A value, or why it is none.</summary>
/// <param name="Value">In SI units; null when it could not be read.</param>
/// <param name="Problem">What is wrong with it, ready for a message; null when it was read.</param>
/// <param name="Suggestion">The text most likely meant, or null.</param>
public readonly record struct ValueReading(double? Value, string? Problem, string? Suggestion)
{
    public static ValueReading Good(double value) => new(value, null, null);

    public static ValueReading Bad(string problem, string? suggestion = null) => new(null, problem, suggestion);
}

/// <summary>Reads values as the trade writes them: SI prefixes, and the letter and digit code of IEC 60062.</summary>
/// <remarks>
/// <c>250k</c>, <c>.047uF</c>, <c>4k7</c>, <c>n47</c>, <c>R47</c>, <c>2.2H</c>. A number alone is never guessed at.
/// In IEC 60062 the multiplier's letter stands where the decimal point would.
/// </remarks>
public static class ValueReader
{
    internal const int LongestValue = 40;

    /// <summary>Reads a value for a use, and refuses what is nonsense there.</summary>
    public static ValueReading Read(string text, ValueUse use)
    {
        if (Split(text) is not { } written)
        {
            return NotAValue(text, use);
        }

        if (written.Letters.Length == 0)
        {
            return NeedsLetter(text, use);
        }

        if (PowerOf(written.Letters, use.Unit) is not { } power)
        {
            return WrongLetters(text, written, use);
        }

        var value = Scaled(written.Number, power);
        return value < use.Least || value > use.Most
            ? OutOfSense(value, written.Number, use)
            : ValueReading.Good(value);
    }

    /// <summary>What one of the last digit of a value that was read comes to: 10 for <c>7.05k</c>, 100 for <c>4k7</c>.</summary>
    /// <param name="value">What the text was read as, in SI units.</param>
    public static double StepOf(string text, double value)
    {
        if (Split(text) is not { } written)
        {
            return 0;
        }

        var number = double.Parse($"0{written.Number}", NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
        var point = written.Number.IndexOf('.', StringComparison.Ordinal);
        var places = point < 0 ? 0 : written.Number.Length - point - 1;
        return number > 0 ? value / number * Math.Pow(10, -places) : 0;
    }

    /// <summary>Whether a word is meant as a value, right or wrong, and not as a name.</summary>
    public static bool LooksLikeValue(string word) =>
        Split(word) is not null
        || (word.Length > 0 && (char.IsAsciiDigit(word[0]) || (word[0] is '.' or '-' or '+' && word.Length > 1)));

    private static bool IsUnitLetter(char c) => char.IsLetter(c);

    /// <summary>Digits, letters, digits: <c>4 k 7</c>, <c>.047 uF</c>, <c>n 47</c>; the number with its point, and the letters.</summary>
    private static Written? Split(string text)
    {
        if (text.Length is 0 or > LongestValue)
        {
            return null;
        }

        var before = Take(text, 0, c => char.IsAsciiDigit(c) || c == '.');
        var letters = Take(text, before.Length, IsUnitLetter);
        var after = Take(text, before.Length + letters.Length, char.IsAsciiDigit);
        var unit = text[(before.Length + letters.Length + after.Length)..];
        var points = before.Count(c => c == '.');
        if (after.Length == 0)
        {
            return unit.Length == 0 && points <= 1 && before.Any(char.IsAsciiDigit)
                ? new Written(before, letters)
                : null;
        }

        // The letter is the decimal point; a unit may follow, as in 4n7F.
        return points == 0 && letters.Length == 1 && unit.All(IsUnitLetter)
            ? new Written($"{before}.{after}", letters + unit)
            : null;
    }

    private static string Take(string text, int start, Func<char, bool> belongs)
    {
        var end = start;
        while (end < text.Length && belongs(text[end]))
        {
            end++;
        }

        return text[start..end];
    }

    /// <summary>The power of ten of the letters for a unit; null when they do not fit it.</summary>
    private static int? PowerOf(string letters, Unit unit)
    {
        var prefix = WithoutUnit(letters, unit);
        return prefix.Length switch
        {
            0 => 0,
            // IEC 60062 has L for milliohms, since m and M are easily confused there.
            1 when unit == Unit.Ohm && prefix[0] == 'L' => -3,
            1 => SiPrefix.Of(prefix[0])?.Power,
            _ => null,
        };
    }

    private static string WithoutUnit(string letters, Unit unit)
    {
        string[] symbols = unit switch
        {
            // Both code points of the ohm sign.
            Unit.Ohm => ["ohms", "ohm", "\u03A9", "\u2126", "R"],
            _ => [Units.SymbolOf(unit)],
        };

        // A metre is a small m, so that M stays mega; the others are read as they are typed.
        var comparison = unit == Unit.Metre ? StringComparison.Ordinal : StringComparison.OrdinalIgnoreCase;
        var symbol = symbols.FirstOrDefault(s => letters.EndsWith(s, comparison));
        return symbol is null ? letters : letters[..^symbol.Length];
    }

    /// <summary>The double nearest to the decimal text: 47n is 47e-9, not 47 × 1e-9.</summary>
    private static double Scaled(string number, int power) =>
        double.Parse(
            string.Create(CultureInfo.InvariantCulture, $"0{number}e{power}"),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture
        );

    private static ValueReading NotAValue(string text, ValueUse use)
    {
        var pointed = text.Replace(',', '.');
        if (pointed != text && Split(pointed) is not null)
        {
            return ValueReading.Bad($"'{text}' has a comma; the decimal mark is a point", pointed);
        }

        return text.StartsWith('-') || text.StartsWith('+')
            ? ValueReading.Bad($"'{text}' has a sign; {use.What} has none", null)
            : ValueReading.Bad($"'{text}' is not a value for {use.What}; '{use.Usual}' is one", null);
    }

    private static ValueReading NeedsLetter(string text, ValueUse use)
    {
        var readings = ReadingsOf(text, use).ToList();
        var sensible = readings.FindAll(r => IsSensible(r.Value, use));
        var told = (sensible.Count > 0 ? sensible : readings).Select(r =>
            $"'{r.Text}' is {ValueText.InWords(r.Value, use.Unit)}"
        );
        var offered = string.Join(", ", told);
        return ValueReading.Bad($"'{text}' needs a letter: {offered}", Likeliest(readings, use));
    }

    private static IEnumerable<(string Text, double Value)> ReadingsOf(string number, ValueUse use) =>
        use
            .Letters.Select(letter => number + letter + (use.Unit == Unit.Metre ? "m" : ""))
            .Select(text => (Text: text, Split: Split(text)))
            .Where(r => r.Split is { } written && PowerOf(written.Letters, use.Unit) is not null)
            .Select(r => (r.Text, Scaled(r.Split!.Value.Number, PowerOf(r.Split.Value.Letters, use.Unit)!.Value)));

    /// <summary>The reading that lies the fewest decades from the usual value, among those that make sense.</summary>
    private static string? Likeliest(IEnumerable<(string Text, double Value)> readings, ValueUse use)
    {
        var usual = Read(use.Usual, use).Value!.Value;
        return readings
            .Where(r => IsSensible(r.Value, use))
            .OrderBy(r => Math.Abs(Math.Log10(r.Value / usual)))
            .Select(r => r.Text)
            .FirstOrDefault();
    }

    private static bool IsSensible(double value, ValueUse use) => value >= use.Least && value <= use.Most;

    private static ValueReading WrongLetters(string text, Written written, ValueUse use)
    {
        // Written in the other case, as 47N.
        var lower = char.ToLowerInvariant(written.Letters[0]) + written.Letters[1..];
        if (lower != written.Letters && PowerOf(lower, use.Unit) is not null)
        {
            return ValueReading.Bad(
                $"'{written.Letters[0]}' is not a prefix; '{lower[0]}' is",
                text.Replace(written.Letters, lower, StringComparison.Ordinal)
            );
        }

        foreach (var unit in Enum.GetValues<Unit>().Where(unit => unit != use.Unit))
        {
            if (WithoutUnit(written.Letters, unit) != written.Letters && PowerOf(written.Letters, unit) is not null)
            {
                return ValueReading.Bad(
                    $"'{text}' is in {Units.NameOf(unit)}; {use.What} is given in {Units.NameOf(use.Unit)}, such as '{use.Usual}'"
                );
            }
        }

        return ValueReading.Bad($"'{written.Letters}' is not a unit for {use.What}; '{use.Usual}' is a value", null);
    }

    private static ValueReading OutOfSense(double value, string number, ValueUse use)
    {
        var likely = Likeliest(ReadingsOf(number, use), use);
        return ValueReading.Bad(
            $"{ValueText.InWords(value, use.Unit)}? {use.What} of {likely ?? use.Usual} is usual",
            likely
        );
    }

    private readonly record struct Written(string Number, string Letters);
}
