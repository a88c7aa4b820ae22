using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Parts;

namespace WireText.Drawing.Faces.Looks;

/// <summary>The look of a kind, or of one model of it.</summary>
/// <param name="Model">Null for all models of the kind that have no look of their own.</param>
public sealed record LookEntry(string Kind, string? Model, Look Look);

/// <summary>Which look a part has: that of its model, else that of its kind. Names are alike in upper and lower case.</summary>
public sealed class LookList(ImmutableArray<LookEntry> entries)
{
    /// <summary>The looks of the kinds that the language knows.</summary>
    public static LookList Standard { get; } =
        new([
            new(StandardParts.PickupKind, Model: null, new PickupLook()),
            new(StandardParts.PotKind, Model: null, new PotLook()),
            new(StandardParts.SwitchKind, Model: null, new SwitchLook()),
            new(StandardParts.ButtonKind, Model: null, new ButtonLook()),
            new(StandardParts.JackKind, Model: null, new JackLook()),
            new(StandardParts.CapKind, Model: null, new CapLook()),
            new(StandardParts.ResistorKind, Model: null, new ResistorLook()),
            new(StandardParts.InductorKind, Model: null, new InductorLook()),
            new(StandardParts.BatteryKind, Model: null, new BatteryLook()),
            new(StandardParts.PreampKind, Model: null, new PreampLook()),
            new(StandardParts.MetalKind, Model: null, new MetalLook()),
            new(StandardParts.SpliceKind, Model: null, new SpliceLook()),
        ]);

    private static readonly Look OwnKind = new OwnKindLook();

    public static Look Of(Part part) => Standard.Find(part.Kind, part.Definition.Model) ?? OwnKind;

    /// <summary>Null for a kind without a look.</summary>
    public Look? Find(string kind, string model) =>
        (
            entries.FirstOrDefault(e => Is(e.Kind, kind) && Is(e.Model, model))
            ?? entries.FirstOrDefault(e => Is(e.Kind, kind) && e.Model is null)
        )?.Look;

    private static bool Is(string? name, string other) =>
        string.Equals(name, other, StringComparison.OrdinalIgnoreCase);
}
