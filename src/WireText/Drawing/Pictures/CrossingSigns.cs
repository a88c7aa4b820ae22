namespace WireText.Drawing.Pictures;

/// <summary>Which signs wires carry in a drawing, for its legend.</summary>
/// <param name="HasHops">A wire arches over another.</param>
/// <param name="HasGaps">A wire goes under another.</param>
/// <param name="HasSleeves">A wire is sleeved, all of it or where it crosses another bare one.</param>
/// <param name="HasTwists">Two cores are twisted.</param>
internal readonly record struct CrossingSigns(bool HasHops, bool HasGaps, bool HasSleeves, bool HasTwists);
