using System.Text;

namespace WireText.Starting;

/// <summary>Writes the lines of a new wiring, before they are set in columns.</summary>
internal sealed class StarterText(Starter starter)
{
    private readonly StringBuilder text = new();

    private bool HasOwnVolumes => starter.Controls.HasOwnVolumes;

    private bool HasSwitch => starter.Selector.IsSwitch;

    private IEnumerable<string> Volumes =>
        HasOwnVolumes ? starter.Pickups.Pickups.Select(pickup => pickup.Volume) : ["vol"];

    /// <summary>Every pot in the order of the cases that ground runs over.</summary>
    private IEnumerable<string> Pots => [.. Volumes, .. starter.Controls.Tones];

    /// <summary>The case on which the grounds meet.</summary>
    private string Meeting => $"{Volumes.First()}.case";

    public string Write()
    {
        WriteParts();
        WritePlaces();
        WriteSignal();
        WriteGround();
        WriteClaims();
        return text.ToString();
    }

    private void WriteParts()
    {
        Line($"circuit \"{Title()}\"");
        Break("Parts. `wiretext parts pot` shows the lugs of a part, and `wiretext parts` lists all.");
        Line(
            "# Measured values of a coil stand behind it, such as dcr=6.1k l=2.2H; until then usual ones are assumed."
        );
        foreach (var pickup in starter.Pickups.Pickups)
        {
            Line($"pickup {pickup.Name} {pickup.Model}");
        }

        if (HasSwitch)
        {
            Line($"switch sel {starter.Selector.Word}");
        }

        foreach (var pot in Pots)
        {
            Line($"pot {pot} {starter.Pickups.PotValue} audio");
        }

        if (starter.Controls.Tones is [.., var last])
        {
            Line($"cap dark {starter.Pickups.CapacitorValue} film from {last}.2 to {last}.case");
        }

        Line($"jack out {starter.Jack.Word}");
        Line("metal saddle \"bridge plate and strings\"");
    }

    private string Title()
    {
        var selector = HasSwitch ? $", {starter.Selector.Meaning}" : "";
        var pickups = starter.Pickups.Meaning;
        return $"{char.ToUpperInvariant(pickups[0])}{pickups[1..]}{selector}, {starter.Controls.Meaning}";
    }

    private void WritePlaces()
    {
        if (HasSwitch)
        {
            Break("What you call the positions of the switch, in their order.");
            Line($"positions sel {string.Join(' ', starter.Selector.Positions)}");
        }

        Break("Where the parts lie, seen from behind.");
        Line("arrange");
        Line($"    {string.Join(' ', starter.Pickups.Pickups.Select(pickup => pickup.Name))} saddle");
        Line($"    {(HasSwitch ? "sel " : "")}{string.Join(' ', Pots)} out");
    }

    private void WriteSignal()
    {
        Break("The way of the signal: from the pickups to the tip of the jack.");
        foreach (var (place, pickup) in starter.Pickups.Pickups.Index())
        {
            WriteHot(pickup, place);
        }

        if (HasOwnVolumes)
        {
            WriteOwnVolumes();
        }
        else
        {
            WriteOneVolume();
        }
    }

    /// <summary>The hot lead of a pickup: to its own volume, to the switch, or to the volume of all.</summary>
    private void WriteHot(StarterPickup pickup, int place)
    {
        var to = HasOwnVolumes ? $"{pickup.Volume}.2" : NextOf(place);
        if (pickup.IsBraided)
        {
            var first = to.Split(" to ")[0];
            Line(
                $"cable {pickup.Name}.hot to {first} {pickup.Colour} braid {pickup.Name}.ground to {GroundOf(pickup)}"
            );
            if (to != first)
            {
                Line($"wire {to} {pickup.Colour}");
            }
        }
        else
        {
            Line($"wire {pickup.Name}.hot to {to} {pickup.Colour}");
        }
    }

    /// <summary>Where a pickup, or the volume of its own, is led on to.</summary>
    private string NextOf(int place) =>
        HasSwitch ? string.Join(" to ", starter.Selector.Lugs[place].Split(' ').Select(lug => $"sel.{lug}")) : "vol.3";

    /// <summary>Pickups on the wipers: to turn one down leaves the other alone.</summary>
    private void WriteOwnVolumes()
    {
        if (!HasSwitch)
        {
            Line($"wire {string.Join(" to ", Volumes.Select(volume => $"{volume}.3"))} to tone.1 to out.tip red");
            return;
        }

        foreach (var (place, pickup) in starter.Pickups.Pickups.Index())
        {
            Line($"wire {pickup.Volume}.3 to {NextOf(place)} {pickup.Colour}");
        }

        Line("wire sel.A0 to sel.B0 to tone.1 to out.tip red");
    }

    private void WriteOneVolume()
    {
        var onward = starter.Controls is { HasTwoTones: false, Tones.IsEmpty: false } ? " to tone.1" : "";
        if (HasSwitch)
        {
            var commons = IsSecondPoleUsed ? "sel.A0 to sel.B0" : "sel.A0";
            Line($"wire {commons} to vol.3{onward} red");
        }
        else if (onward.Length > 0)
        {
            Line($"wire vol.3{onward} red");
        }

        if (starter.Controls.HasTwoTones)
        {
            Line("wire sel.B3 to tone-neck.1 white");
            Line("wire sel.B2 to tone-middle.1 green");
            Line("wire tone-neck.2 to tone-middle.2 violet");
        }

        Line("wire vol.2 to out.tip blue");
    }

    private bool IsSecondPoleUsed =>
        starter.Controls.HasTwoTones || starter.Selector.Lugs.Any(lugs => lugs.Contains('B', StringComparison.Ordinal));

    private void WriteGround()
    {
        Break("Ground: everything meets on the case of a pot, and goes on to the sleeve.");
        foreach (var pickup in starter.Pickups.Pickups.Where(pickup => !pickup.IsBraided))
        {
            Line($"wire {pickup.Name}.ground to {GroundOf(pickup)} black");
        }

        foreach (var volume in Volumes)
        {
            Line($"wire {volume}.1 to {volume}.case bare");
        }

        Line($"wire {string.Join(" to ", Pots.Select(pot => $"{pot}.case"))} to out.sleeve black");
        if (starter.Selector.HasCase)
        {
            Line($"wire sel.case to {Meeting} black");
        }

        Line($"wire saddle to {Meeting} black");
    }

    private string GroundOf(StarterPickup pickup) => HasOwnVolumes ? $"{pickup.Volume}.case" : Meeting;

    private void WriteClaims()
    {
        Break("What it is meant to do: `wiretext check` proves each line, or says where it fails.");
        if (HasSwitch)
        {
            foreach (var position in starter.Selector.Positions)
            {
                Line($"expect sel={position}: {Together(StarterSelector.HeardAt(position))}");
            }
        }
        else
        {
            Line($"expect rest: {Together(starter.Pickups.Pickups.Select(pickup => pickup.Name))}");
        }

        if (!HasOwnVolumes)
        {
            Line("expect vol=0 others=any: silence");
        }
        else
        {
            var down = string.Join(' ', Volumes.Select(volume => $"{volume}=0"));
            Line($"expect {down} others=any: dead");
        }
    }

    private static string Together(IEnumerable<string> pickups) => string.Join(" parallel ", pickups);

    private void Break(string comment) => Line($"\n# {comment}");

    private void Line(string line) => text.Append(line).Append('\n');
}
