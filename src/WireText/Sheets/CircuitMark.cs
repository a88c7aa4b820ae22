using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using WireText.Circuits;

namespace WireText.Sheets;

/// <summary>A short mark that tells two circuits apart: what hangs in the shop and what is in the file are the same when it is.</summary>
/// <remarks>The first 32 bits of SHA-256 (FIPS 180-4) over parts, wires and controls. Comments and columns of the text do not change it.</remarks>
public static class CircuitMark
{
    private const int Digits = 8;

    /// <summary>What stands at the foot of a page: the file, and the mark of its circuit.</summary>
    /// <param name="file">Null for standard input.</param>
    public static string Foot(string? file, Circuit circuit) =>
        string.Join(", ", new[] { file, $"circuit {Of(circuit)}" }.OfType<string>());

    public static string Of(Circuit circuit)
    {
        var told = new StringBuilder();
        told.Append(circuit.Title).Append('\n');
        foreach (var part in circuit.Parts)
        {
            told.Append(part.Name).Append('\t').Append(part.Kind).Append('\t').Append(part.Definition.Model);
            told.Append('\t').Append(part.ValueLabel).Append('\t').Append(part.TaperLabel).Append('\t');
            told.AppendJoin(' ', part.Traits).Append('\n');
        }

        foreach (var wire in circuit.Wires)
        {
            told.Append(wire.Id)
                .Append('\t')
                .Append(wire.Colour?.Name)
                .Append('\t')
                .Append(wire.IsSleeved)
                .Append('\t');
            told.Append(CultureInfo.InvariantCulture, $"{wire.LengthMetres}\t{wire.Gauge}\n");
        }

        foreach (var control in circuit.Controls)
        {
            told.Append(control.Name).Append('\t');
            told.AppendJoin(' ', control.Positions.Select(position => position.Name)).Append('\n');
        }

        var hash = SHA256.HashData(Encoding.UTF8.GetBytes(told.ToString()));
        return Convert.ToHexStringLower(hash)[..Digits];
    }
}
