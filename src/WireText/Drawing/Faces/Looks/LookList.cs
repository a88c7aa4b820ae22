using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;
using WireText.Text;

namespace WireText.Drawing.Faces.Looks;

/// <summary>The look of a kind, or of one model of it.</summary>
/// <param name="Model">Null for all models of the kind that have no look of their own.</param>
public sealed record LookEntry(string Kind, string? Model, Look Look);

/// <summary>Which look a part has: that of its model, else that of its kind. Names are alike in upper and lower case.</summary>
public sealed class LookList(ImmutableArray<LookEntry> entries)
{
    private static readonly Look Lever = new LeverLook();

    private static readonly Look MiniToggle = new MiniToggleLook();

    /// <summary>The looks of the kinds that the language knows.</summary>
    public static LookList Standard { get; } =
        new([
            new(PartKinds.Pickup, Model: null, new PickupLook()),
            new(PartKinds.Pot, Model: null, new PotLook()),
            new(PartKinds.Switch, Model: null, new SwitchLook()),
            new(PartKinds.Switch, "lever-3way", Lever),
            new(PartKinds.Switch, "lever-4way", Lever),
            new(PartKinds.Switch, "lever-5way", Lever),
            new(PartKinds.Switch, "lever-5way-4pole", Lever),
            new(PartKinds.Switch, "toggle-3way", new LeafToggleLook()),
            new(PartKinds.Switch, "slide-dpdt", new SlideLook()),
            new(PartKinds.Switch, "spdt", MiniToggle),
            new(PartKinds.Switch, "spdt-on-off-on", MiniToggle),
            new(PartKinds.Switch, "dpdt", MiniToggle),
            new(PartKinds.Switch, "dpdt-on-off-on", MiniToggle),
            new(PartKinds.Switch, "dpdt-on-on-on-a-first", MiniToggle),
            new(PartKinds.Switch, "dpdt-on-on-on-b-first", MiniToggle),
            new(PartKinds.Switch, "dpdt-on-on-on-bridging", MiniToggle),
            new(PartKinds.Button, Model: null, new ButtonLook()),
            new(PartKinds.Jack, Model: null, new JackLook()),
            new(PartKinds.Cap, Model: null, new CapLook()),
            new(PartKinds.Resistor, Model: null, new ResistorLook()),
            new(PartKinds.Inductor, Model: null, new InductorLook()),
            new(PartKinds.Battery, Model: null, new BatteryLook()),
            new(PartKinds.Preamp, Model: null, new PreampLook()),
            new(PartKinds.Metal, Model: null, new MetalLook()),
            new(PartKinds.Splice, Model: null, new SpliceLook()),
        ]);

    private static readonly Look OwnKind = new OwnKindLook();

    public static Look Of(Part part) => Standard.Find(part.Kind, part.Definition.Model) ?? OwnKind;

    /// <summary>Null for a kind without a look.</summary>
    public Look? Find(string kind, string model) =>
        (
            entries.FirstOrDefault(e => Naming.Alike(e.Kind, kind) && Naming.Alike(e.Model, model))
            ?? entries.FirstOrDefault(e => Naming.Alike(e.Kind, kind) && e.Model is null)
        )?.Look;
}
