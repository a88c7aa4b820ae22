using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Situations;

namespace WireText.Electrical.Grounds;

/// <summary>Metal that must be grounded, soldered into one net, and how it comes to the sleeve.</summary>
/// <param name="Lugs">Its metal lugs, in order.</param>
/// <param name="Net">Its net.</param>
/// <param name="IsSoldered">True when solder alone joins it with the sleeve: nothing more to ask.</param>
/// <param name="Contact">How contacts join it with the sleeve; <see cref="ContactRelation.OneNet"/> when metal pressed on metal does.</param>
/// <param name="Hot">
/// States in which it carries the signal while a string is heard; null when there are none.
/// </param>
public sealed record MetalNet(ImmutableArray<int> Lugs, int Net, bool IsSoldered, ContactReport Contact, State? Hot);
