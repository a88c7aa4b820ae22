using WireText.Parts;

namespace WireText.Tests.Parts;

/// <summary>Every standard part as an author declares it: its model, and a usual value where its kind has one.</summary>
internal static class DeclaredParts
{
    /// <summary>Kinds and models, as the rows of a theory.</summary>
    public static TheoryData<string, string> Rows =>
        Testing.Rows.Of(StandardParts.Catalogue.Definitions.Select(part => (part.Kind, part.Model)));

    /// <summary>The line that declares a part of that model as <c>it</c>.</summary>
    public static string Line(string kind, string model) => $"{kind} it {model} {ValueOf(kind)}".TrimEnd();

    private static string ValueOf(string kind) =>
        kind switch
        {
            "pot" => "250k",
            "cap" => "47n",
            "resistor" => "150k",
            "inductor" => "1H",
            "battery" => "9V",
            _ => "",
        };
}
