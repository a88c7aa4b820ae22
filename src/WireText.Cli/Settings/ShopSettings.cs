using WireText.Checks;
using WireText.Documents;

namespace WireText.Cli.Settings;

/// <summary>What a shop has settled for all of its wirings.</summary>
/// <param name="Paper">What lies in the printer.</param>
internal sealed record ShopSettings(CheckSettings Checks, Paper Paper)
{
    public static readonly ShopSettings Standard = new(CheckSettings.Standard, Paper.A4);
}
