using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace WireText.Tests.Electrical;

/// <summary>Every row of the tables of check values is run by a test, and no row was lost.</summary>
public partial class FactCoverageTests(ITestOutputHelper output)
{
    /// <summary>The rows of each table as they came from its source; PU-04 and PU-08 are tests of their own; SW-04 and SW-14 speak of parts
    /// that are not among the standard ones.</summary>
    private static readonly SortedDictionary<string, int> RowsOfTheSources = new(StringComparer.Ordinal)
    {
        ["FR"] = 14,
        ["HM"] = 9,
        ["MU"] = 18,
        ["OM"] = 32,
        ["PH"] = 8,
        ["PU"] = 17 - 2,
        ["RC"] = 18,
        ["SP"] = 8,
        ["SW"] = 14,
        ["TB"] = 31,
        ["TC"] = 5,
        ["TN"] = 22,
        ["TP"] = 5,
        ["VT"] = 28,
        ["WD"] = 5,
    };

    [Fact]
    public void Rows_OfEveryTable_AreRunByATest()
    {
        var run = RowsThatTestsRun()
            .GroupBy(id => id[..2], StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);

        foreach (var (prefix, count) in RowsOfTheSources)
        {
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{prefix}: {run.GetValueOrDefault(prefix)} of {count} rows run"
                )
            );
        }

        Assert.Equal(RowsOfTheSources, new SortedDictionary<string, int>(run, StringComparer.Ordinal));
    }

    /// <summary>The first argument of each row of each theory here, where it is a row's id.</summary>
    private static IEnumerable<string> RowsThatTestsRun() =>
        typeof(FactCoverageTests)
            .Assembly.GetTypes()
            .Where(type => type.Namespace?.StartsWith("WireText.Tests.Electrical", StringComparison.Ordinal) == true)
            .SelectMany(type => type.GetMethods())
            .Where(method => method.GetCustomAttribute<TheoryAttribute>()?.Skip is null)
            .SelectMany(method => method.GetCustomAttributes<DataAttribute>().SelectMany(data => data.GetData(method)))
            .Select(row => row[0] as string)
            .OfType<string>()
            .Select(text => RowId().Match(text))
            .Where(match => match.Success)
            .Select(match => match.Value)
            .Distinct(StringComparer.Ordinal);

    [GeneratedRegex("^[A-Z]{2}-[0-9]{2}", RegexOptions.None, 1000)]
    private static partial Regex RowId();
}
