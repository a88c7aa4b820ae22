namespace WireText.Quantities;

/// <summary>A colour of insulation without a stripe.</summary>
/// <param name="Name">In English, as a file writes it.</param>
/// <param name="Code">What stands on a wire's tag: <c>WH</c>; empty for bare wire.</param>
public abstract record PlainColour(string Name, string Code);

/// <summary>One that every file knows.</summary>
public sealed record StandardColour(ColourCode Colour, string Name)
    : PlainColour(Name, Colour == ColourCode.Bare ? "" : Colour.ToString());

/// <summary>One that a file names for itself: the cloth of an old harness, the wire of one shop.</summary>
/// <param name="Paint">How it is drawn: sRGB as 0xRRGGBB.</param>
public sealed record OwnColour(string Name, string Code, int Paint) : PlainColour(Name, Code);
