using WireText.Checks;
using WireText.Documents;
using WireText.Electrical.Faults;

namespace WireText.Cli.Settings;

/// <summary>What a shop has settled for all of its wirings.</summary>
/// <param name="Paper">What lies in the printer.</param>
/// <param name="Faults">How often faults are met there.</param>
internal sealed record ShopSettings(CheckSettings Checks, Paper Paper, FaultWeights Faults)
{
    public static readonly ShopSettings Standard = new(CheckSettings.Standard, Paper.A4, FaultWeights.Usual);
}
