namespace WireText.Proposing;

/// <summary>A contact of a control whose lugs are open.</summary>
/// <param name="Common">Index into <see cref="OpenLugs.Commons"/>.</param>
/// <param name="Throw">The lug at its other end, as an index into <see cref="Circuits.Circuit.Lugs"/>.</param>
/// <param name="Other">Index into <see cref="OpenLugs.Commons"/> where the other end is a common too; null where it is a throw.</param>
internal sealed record OpenContact(int Common, int Throw, int? Other);

/// <summary>All contacts of a control that close in the same positions.</summary>
/// <param name="Control">Index into <see cref="Circuits.Circuit.Controls"/>.</param>
/// <param name="Positions">A bit for each position in which they are closed.</param>
internal sealed record ContactColumn(int Control, ulong Positions, List<OpenContact> Contacts)
{
    public bool IsClosedAt(int position) => (Positions & (1UL << position)) != 0;
}

/// <summary>A lug that several contacts end on, or on which something is soldered already.</summary>
/// <param name="MustBeWired">True when it may not stay empty.</param>
/// <param name="Fixed">The landing net that is on it already; null for none.</param>
/// <param name="Alike">Index of an earlier common with equal contacts, with which it can be exchanged; null for none.</param>
internal sealed record OpenCommon(int Lug, int Control, bool MustBeWired, int? Fixed, int? Alike);
