using WireText.Electrical.Forms;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;

namespace WireText.Electrical.Positions;

/// <summary>What one live network says, wherever it is met.</summary>
internal sealed record KnownNetwork(
    Lazy<JackSound> Sound,
    Lazy<HeardForm> Form,
    Lazy<Resonance?> Resonance,
    Lazy<Reading?> Reading
);
