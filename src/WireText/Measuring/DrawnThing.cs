namespace WireText.Measuring;

/// <summary>What on a drawing can be at fault.</summary>
public enum ThingKind
{
    Wire,
    Part,
    Lug,

    /// <summary>The half circle of a wire over another.</summary>
    Hop,

    /// <summary>A blob of solder on a surface.</summary>
    Joint,

    /// <summary>The code of a wire's colour, on the wire.</summary>
    Tag,

    PartName,
    PartValue,
    LugLabel,

    /// <summary>The number of a finding.</summary>
    Finding,

    /// <summary>Any other text.</summary>
    Text,
}

/// <summary>Something on a drawing that a fault is about.</summary>
/// <param name="Id">Of the wire, part or lug that it is or belongs to; of a text its words.</param>
public readonly record struct DrawnThing(ThingKind Kind, string Id)
{
    /// <summary>As reports have it: <c>wire:a--b</c>, <c>part:sel</c>, <c>label:sel.A1</c>.</summary>
    public override string ToString() => $"{Word}:{Id}";

    private string Word =>
        Kind switch
        {
            ThingKind.Wire => "wire",
            ThingKind.Part => "part",
            ThingKind.Lug => "lug",
            ThingKind.Hop => "hop",
            ThingKind.Joint => "joint",
            ThingKind.Tag => "tag",
            ThingKind.PartName => "name",
            ThingKind.PartValue => "value",
            ThingKind.LugLabel => "label",
            ThingKind.Finding => "finding",
            _ => "text",
        };
}
