using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace WireText.Tests.Checks.Mutants.Harnesses;

/// <summary>Makes the text of a harness from its choices, and what a bench would claim of it.</summary>
internal sealed class HarnessComposer
{
    private const string Ground = SolderPlan.Ground;

    private static readonly string[] Capacitors = ["10n", "15n", "22n", "33n", "47n", "68n"];

    private readonly HarnessChoices choices;
    private readonly SolderPlan plan = new();
    private readonly StringBuilder parts = new();
    private readonly StringBuilder words = new();
    private readonly StringBuilder claims = new();
    private readonly List<string> name = [];

    private HarnessComposer(HarnessChoices choices) => this.choices = choices;

    private Selector Selector => choices.Selector;

    private string[] Pickups =>
        Selector.Pickups switch
        {
            1 => ["bridge"],
            2 => ["neck", "bridge"],
            _ => ["neck", "middle", "bridge"],
        };

    private bool IsSingle(int pickup) => choices.Models[pickup].StartsWith("single", StringComparison.Ordinal);

    private string BleedInWords =>
        choices.Bleed switch
        {
            Bleed.CapacitorBesideResistor => "capacitor beside resistor",
            Bleed.CapacitorThenResistor => "capacitor and resistor in series",
            _ => "capacitor",
        };

    private string ToneInWords =>
        (choices.Tone == TonePlace.BeforeVolume ? "before the volume, " : "after the volume, ")
        + choices.ToneWiring switch
        {
            ToneWiring.SignalOnEnd => "signal on lug 1",
            ToneWiring.SignalOnWiper => "signal on the wiper",
            ToneWiring.CapacitorFirstOnEnd => "capacitor to lug 1",
            _ => "capacitor to the wiper",
        };

    private IEnumerable<(string Name, string Heard)> Meant =>
        Selector.Stops.DefaultIfEmpty(("rest", Selector.Pickups == 1 ? "0" : "01"));

    public static Harness Compose(int number, HarnessChoices choices)
    {
        var composer = new HarnessComposer(choices);
        composer.Compose();
        var title = $"circuit \"harness {number.ToString(CultureInfo.InvariantCulture)}\"\n";
        var wiring = composer.plan.Write();
        return new Harness(
            number,
            string.Join(", ", composer.name.Distinct()),
            $"{title}{composer.parts}{composer.words}{wiring}",
            [.. composer.Meant.Select(stop => (stop.Name, composer.Named(stop.Heard)))],
            composer.claims.ToString()
        );
    }

    private void Compose()
    {
        name.Add(
            Selector.IsBlend ? "blend pot"
            : Selector.Model.Length > 0 ? Selector.Model
            : Selector.Pickups == 1 ? "one pickup"
            : "two pickups, no selector"
        );
        MergeNets();
        AddOutput();
        for (var pickup = 0; pickup < Selector.Pickups; pickup++)
        {
            AddPickup(pickup);
        }

        AddSelector();
        AddVolumes();
        AddTones();
        AddExtra();
        Line(parts, "metal saddle");
        plan.Post(Ground, "saddle");
        AddClaims();
    }

    /// <summary>
    /// Nets: <c>out</c> after the selector, <c>hot</c> before the master volume, <c>swept</c> after it, <c>pre-out</c> after
    /// the board, <c>tip</c> at the jack. Those that nothing lies between are one.
    /// </summary>
    private void MergeNets()
    {
        if (choices.Volume != VolumePlace.Master)
        {
            plan.Merge("out", "tip");
        }
        else
        {
            plan.Merge(choices.Board == Board.AfterVolume ? "pre-out" : "swept", "tip");
            plan.Merge(choices.Board == Board.BeforeVolume ? "pre-out" : "out", "hot");
        }

        if (Selector.LiftsGround)
        {
            plan.Merge("neck-hot", "out");
        }
        else if (Selector.Model.Length == 0 && choices.Volume == VolumePlace.Master)
        {
            plan.Merge("bridge-hot", "out");
        }
    }

    private void AddOutput()
    {
        var jack =
            choices.Board != Board.None ? "stereo"
            : choices.Extra == Extra.JackThatShortsWithoutAPlug ? "mono-switched"
            : "mono";
        Line(parts, $"jack out {jack}");
        plan.Post(Ground, "out.sleeve");
        if (choices.Extra == Extra.JackThatShortsWithoutAPlug)
        {
            name.Add("jack that shorts without a plug");
            plan.Post(Ground, "out.tip-break");
        }

        if (choices.Board != Board.None)
        {
            name.Add(choices.Board == Board.BeforeVolume ? "buffer before the volume" : "buffer after the volume");
            Line(parts, "preamp pre buffer");
            Line(parts, "battery cell 9V");
            plan.Post(Ground, "pre.common");
            plan.Post("supply", "pre.plus");
            plan.Lead("supply", "cell.plus");
            plan.Post("ring", "out.ring");
            plan.Lead("ring", "cell.minus");
        }

        if (choices.Board != Board.None)
        {
            plan.Post(choices.Board == Board.BeforeVolume ? "out" : "swept", "pre.in");
            plan.Post("pre-out", "pre.out");
        }

        plan.Post("tip", "out.tip");
    }

    private void AddPickup(int pickup)
    {
        var (own, model, value) = (Pickups[pickup], choices.Models[pickup], choices.Values[pickup]);
        var (dcr, henries) = IsSingle(pickup)
            ? (5.6 + (0.12 * value), 2.1 + (0.06 * value))
            : (7.4 + (0.17 * value), 4.1 + (0.1 * value));
        var wound =
            !IsSingle(pickup) ? ""
            : pickup % 2 == 0 ? " wind=cw magnet=north"
            : " wind=ccw magnet=south";
        Line(
            parts,
            string.Create(
                CultureInfo.InvariantCulture,
                $"pickup {own} {model} dcr={dcr:0.##}k l={henries:0.##}H c={(IsSingle(pickup) ? 110 : 38)}p{wound}"
            )
        );
        var (hot, low) = ($"{own}-hot", Selector.LiftsGround && pickup == 0 ? "lifted" : Ground);
        switch (model)
        {
            case "humbucker-4":
                AddCoils(pickup, hot, low);
                plan.Lead(Ground, $"{own}.shield");
                break;
            case var _ when choices.Coils[pickup] == CoilSwitch.Phase:
                AddPhase(pickup, hot);
                break;
            default:
                plan.Lead(hot, $"{own}.hot");
                plan.Lead(low, $"{own}.ground");
                break;
        }

        if (model == "single-coil-cover")
        {
            plan.Lead(Ground, $"{own}.cover");
        }
    }

    private void AddCoils(int pickup, string hot, string low)
    {
        var (own, link) = (Pickups[pickup], $"{Pickups[pickup]}-link");
        plan.Lead(hot, $"{own}.n-start");
        plan.Lead(low, $"{own}.s-start");
        if (choices.Coils[pickup] == CoilSwitch.SeriesParallel)
        {
            var flip = SwitchFor(pickup, "series parallel");
            plan.Post($"{own}-n", $"{flip}.A0");
            plan.Post($"{own}-s", $"{flip}.B0");
            plan.Lead($"{own}-n", $"{own}.n-finish");
            plan.Lead($"{own}-s", $"{own}.s-finish");
            plan.Post(link, $"{flip}.A1", $"{flip}.B1");
            plan.Post(low, $"{flip}.A2");
            plan.Post(hot, $"{flip}.B2");
            return;
        }

        plan.Lead(link, $"{own}.n-finish", $"{own}.s-finish");
        if (choices.Coils[pickup] == CoilSwitch.EitherCoil)
        {
            var either = SwitchFor(pickup, "n-coil full s-coil");
            Line(words, $"rest {either}=full");
            plan.Post(link, $"{either}.A0");
            plan.Post(low, $"{either}.A1");
            plan.Post(hot, $"{either}.A2");
        }

        if (choices.Coils[pickup] is CoilSwitch.CutToNorth or CoilSwitch.CutToSouth)
        {
            var cut = SwitchFor(pickup, "full cut");
            plan.Post(link, $"{cut}.A0");
            plan.Post(choices.Coils[pickup] == CoilSwitch.CutToNorth ? low : hot, $"{cut}.A2");
        }
    }

    private void AddPhase(int pickup, string hot)
    {
        var (own, turn) = (Pickups[pickup], SwitchFor(pickup, "normal turned"));
        plan.Post($"{own}-start", $"{turn}.A0");
        plan.Post($"{own}-end", $"{turn}.B0");
        plan.Lead($"{own}-start", $"{own}.hot");
        plan.Lead($"{own}-end", $"{own}.ground");
        plan.Post(hot, $"{turn}.A1", $"{turn}.B2");
        plan.Post(Ground, $"{turn}.A2", $"{turn}.B1");
    }

    /// <summary>A push-pull pot that comes later, or a small switch of its own.</summary>
    private string SwitchFor(int pickup, string positions)
    {
        var own = Pickups[pickup];
        name.Add($"{own} {positions.Replace(' ', '/')}");
        if (PullOf(pickup) is { } pot)
        {
            Line(words, $"positions {pot}.pull {positions}");
            return pot;
        }

        var model = choices.Coils[pickup] == CoilSwitch.EitherCoil ? "dpdt-on-off-on" : "dpdt";
        Line(parts, $"switch {own}-coils {model}");
        Line(words, $"positions {own}-coils {positions}");
        return $"{own}-coils";
    }

    /// <summary>The pot that a pickup's coil switch sits on; null when it has a switch of its own.</summary>
    private string? PullOf(int pickup)
    {
        if (!choices.IsPushPull || choices.Coils[pickup] is CoilSwitch.None or CoilSwitch.EitherCoil)
        {
            return null;
        }

        return choices.Volume != VolumePlace.Master ? VolumeOf(pickup)
            : pickup == Selector.Pickups - 1 ? "vol"
            : null;
    }

    private string ControlOf(int pickup) => PullOf(pickup) is { } pot ? $"{pot}.pull" : $"{Pickups[pickup]}-coils";

    private string VolumeOf(int pickup) => $"vol-{Pickups[pickup]}";

    private void AddSelector()
    {
        if (Selector.IsBlend)
        {
            Line(parts, "pot mix blend 500k");
            plan.Post(Ground, "mix.case");
            plan.Post("neck-hot", "mix.a.3");
            plan.Post("bridge-hot", "mix.b.1");
            plan.Post("out", "mix.a.2", "mix.b.2");
            return;
        }

        if (Selector.Model.Length > 0)
        {
            Line(parts, $"switch sel {Selector.Model}");
            Line(words, $"positions sel {string.Join(' ', Selector.Stops.Select(stop => stop.Name))}");
        }

        foreach (var (lug, net) in Selector.Joints)
        {
            plan.Post(
                net == "0-" ? "lifted"
                    : char.IsDigit(net[0]) ? OutputOf(net[0] - '0')
                    : net,
                $"sel.{lug}"
            );
        }
    }

    /// <summary>Where a pickup leaves its own controls.</summary>
    private string OutputOf(int pickup) =>
        choices.Volume == VolumePlace.Master ? $"{Pickups[pickup]}-hot"
        : Selector.Model.Length == 0 ? "out"
        : $"{Pickups[pickup]}-swept";

    private void AddVolumes()
    {
        if (choices.Volume == VolumePlace.Master)
        {
            name.Add("master volume");
            AddVolume("vol", "hot", "swept", Selector.Pickups - 1);
            return;
        }

        name.Add(choices.Volume == VolumePlace.EachOnTheEnd ? "volumes on lug 3" : "volumes on the wiper");
        for (var pickup = 0; pickup < Selector.Pickups; pickup++)
        {
            AddVolume(VolumeOf(pickup), $"{Pickups[pickup]}-hot", OutputOf(pickup), pickup);
        }
    }

    private void AddVolume(string pot, string from, string to, int pickup)
    {
        var model = PullOf(pickup) == pot ? "push-pull " : "";
        var ohms =
            choices.Board == Board.BeforeVolume ? "25k"
            : choices.Models.All(one => one.StartsWith("single", StringComparison.Ordinal)) ? "250k"
            : "500k";
        Line(parts, $"pot {pot} {model}{ohms} audio");
        var isOnWiper = choices.Volume == VolumePlace.EachOnTheWiper;
        plan.Post(Ground, $"{pot}.case", $"{pot}.1");
        plan.Post(isOnWiper ? from : to, $"{pot}.2");
        plan.Post(isOnWiper ? to : from, $"{pot}.3");
        if (isOnWiper || choices.Board == Board.BeforeVolume)
        {
            return;
        }

        var farads = choices.Values[4] % 2 == 0 ? "680p" : "1n";
        switch (choices.Bleed)
        {
            case Bleed.Capacitor:
                plan.Hang($"cap {pot}-bleed {farads}", from, to);
                break;
            case Bleed.CapacitorBesideResistor:
                plan.Hang($"cap {pot}-bleed {farads}", from, to);
                plan.Hang($"resistor {pot}-beside 150k", from, to);
                break;
            case Bleed.CapacitorThenResistor:
                plan.Post($"{pot}-middle");
                plan.Hang($"cap {pot}-bleed {farads}", from, $"{pot}-middle");
                plan.Hang($"resistor {pot}-then 120k", $"{pot}-middle", to);
                break;
            default:
                return;
        }

        name.Add($"{BleedInWords} as bleed");
    }

    private void AddTones()
    {
        switch (choices.Tone)
        {
            case TonePlace.BeforeVolume when choices.Volume != VolumePlace.Master:
                for (var pickup = 0; pickup < Selector.Pickups; pickup++)
                {
                    AddTone($"tone-{Pickups[pickup]}", $"{Pickups[pickup]}-hot", pickup);
                }

                break;
            case TonePlace.BeforeVolume:
                AddTone("tone", "out", 0);
                break;
            case TonePlace.AfterVolume:
                AddTone(
                    "tone",
                    choices.Volume == VolumePlace.Master && choices.Board != Board.AfterVolume ? "swept" : "out",
                    0
                );
                break;
            default:
                return;
        }

        name.Add($"tone {ToneInWords}");
    }

    private void AddTone(string pot, string signal, int index)
    {
        var ohms = choices.Models.All(model => model.StartsWith("single", StringComparison.Ordinal)) ? "250k" : "500k";
        var isNoLoad =
            choices.Values[5] == 0 && choices.ToneWiring is ToneWiring.SignalOnEnd or ToneWiring.CapacitorFirstOnEnd;
        Line(parts, $"pot {pot} {(isNoLoad ? "no-load " : "")}{ohms} audio");
        plan.Post(Ground, $"{pot}.case");
        var from = signal;
        if (choices.Extra == Extra.ToneLift)
        {
            var lift = index == 0 ? "lift" : $"lift-{index}";
            Line(parts, $"button {lift} latching-nc");
            plan.Post(signal, $"{lift}.1");
            plan.Post($"{pot}-in", $"{lift}.2");
            from = $"{pot}-in";
        }

        var cap = $"cap {pot}-dark {Capacitors[choices.Values[3] % Capacitors.Length]} film";
        var (first, second) = choices.ToneWiring is ToneWiring.SignalOnEnd or ToneWiring.CapacitorFirstOnEnd
            ? ("1", "2")
            : ("2", "1");
        if (choices.ToneWiring is ToneWiring.SignalOnEnd or ToneWiring.SignalOnWiper)
        {
            plan.Post(from, $"{pot}.{first}");
            plan.Post($"{pot}-middle", $"{pot}.{second}");
            plan.Hang(cap, $"{pot}-middle", Ground);
        }
        else
        {
            plan.Post($"{pot}-middle", $"{pot}.{first}");
            plan.Hang(cap, from, $"{pot}-middle");
            plan.Post(Ground, $"{pot}.{second}");
        }
    }

    private void AddExtra()
    {
        switch (choices.Extra)
        {
            case Extra.MomentaryMute or Extra.LatchingMute:
                name.Add("mute");
                Line(parts, $"button mute {(choices.Extra == Extra.MomentaryMute ? "momentary" : "latching")}");
                plan.Post("tip", "mute.1");
                plan.Post(Ground, "mute.2");
                break;
            case Extra.CapacitorChoice:
                name.Add("choice of two capacitors");
                AddCapacitors("spdt-on-off-on", "A1 A2");
                break;
            case Extra.SixCapacitors:
                name.Add("rotary of capacitors");
                AddCapacitors("rotary-1x6", "A2 A3 A4 A5 A6");
                break;
            case Extra.TwelveCapacitors:
                name.Add("rotary of capacitors");
                AddCapacitors("rotary-1x12", "A2 A3 A4 A5 A6 A7 A8 A9 A10 A11 A12");
                break;
            case Extra.ToneLift:
                name.Add("button that lifts the tone");
                break;
        }
    }

    private void AddCapacitors(string model, string lugs)
    {
        Line(parts, $"switch voice {model}");
        plan.Post("out", "voice.A0");
        foreach (var (lug, i) in lugs.Split(' ').Select((lug, i) => (lug, i)))
        {
            plan.Post($"voice-{i}", $"voice.{lug}");
            plan.Hang(
                $"cap voice-c{i} {(1.5 + (i * 2)).ToString(CultureInfo.InvariantCulture)}n film",
                $"voice-{i}",
                Ground
            );
        }
    }

    private void AddClaims()
    {
        foreach (var (stop, heard) in Selector.Stops)
        {
            Claim($"sel={stop}", FormOf(heard) + (IsHumFree(heard) ? ", hum-cancelling" : ""));
        }

        if (Selector.IsBlend)
        {
            Claim("rest", FormOf("01"));
            Claim("mix=10", FormOf("0"));
            Claim("mix=0", FormOf("1"));
        }
        else if (Selector.Model.Length == 0)
        {
            Claim("rest", FormOf(Selector.Pickups == 1 ? "0" : "01"));
        }

        for (var pickup = 0; pickup < Selector.Pickups; pickup++)
        {
            AddCoilClaims(pickup);
        }

        AddVolumeClaims();
        if (choices.Extra is Extra.MomentaryMute or Extra.LatchingMute)
        {
            Claim("mute=down others=any", "silence");
        }

        if (choices.Board != Board.None)
        {
            Claim("rest", "battery on");
            Claim("out=no-plug", "battery off");
        }
    }

    private void AddCoilClaims(int pickup)
    {
        var own = Pickups[pickup];
        (string Position, string Form)[] meant = choices.Coils[pickup] switch
        {
            CoilSwitch.CutToNorth => [("cut", $"{own}.n")],
            CoilSwitch.CutToSouth => [("cut", $"{own}.s")],
            CoilSwitch.EitherCoil => [("n-coil", $"{own}.n"), ("s-coil", $"{own}.s")],
            CoilSwitch.SeriesParallel => [("parallel", $"{own}.n parallel {own}.s")],
            CoilSwitch.Phase => [("turned", $"{Pickups[0]} parallel reversed {own}")],
            _ => [],
        };
        foreach (var (position, form) in meant)
        {
            if (SettingFor(choices.Coils[pickup] == CoilSwitch.Phase ? "01" : $"{pickup}") is { } setting)
            {
                Claim($"{setting} {ControlOf(pickup)}={position}".Trim(), form);
            }
        }
    }

    private void AddVolumeClaims()
    {
        if (choices.Volume == VolumePlace.Master)
        {
            Claim("vol=0 others=any", "silence");
            return;
        }

        for (var pickup = 0; pickup < Selector.Pickups; pickup++)
        {
            if (Selector.Model.Length == 0)
            {
                Claim($"{VolumeOf(pickup)}=0", FormOf($"{1 - pickup}"));
            }
            else if (SettingFor($"{pickup}") is { } setting)
            {
                Claim(
                    $"{setting} {VolumeOf(pickup)}=0",
                    choices.Volume == VolumePlace.EachOnTheEnd ? "silence" : "dead"
                );
            }
        }
    }

    /// <summary>How the pickups alone are heard; null when they never are.</summary>
    private string? SettingFor(string heard)
    {
        if (Selector.Pickups == 1)
        {
            return "";
        }

        return Selector.IsBlend
            ? heard switch
            {
                "0" => "mix=10",
                "1" => "mix=0",
                _ => "",
            }
            : Selector.Stops.Where(stop => stop.Heard == heard).Select(stop => $"sel={stop.Name}").FirstOrDefault();
    }

    private string FormOf(string heard) =>
        string.Join(heard.Contains('s', StringComparison.Ordinal) ? " series " : " parallel ", Named(heard));

    private ImmutableArray<string> Named(string heard) =>
        [.. heard.Where(char.IsDigit).Select(pickup => Pickups[pickup - '0'])];

    private bool IsHumFree(string heard)
    {
        var pickups = heard.Where(char.IsDigit).Select(pickup => pickup - '0').ToList();
        return pickups.All(pickup => !IsSingle(pickup))
            || (pickups.Count == 2 && pickups.All(IsSingle) && pickups.Sum() % 2 == 1);
    }

    private void Claim(string setting, string what) => Line(claims, $"expect {setting}: {what}");

    private static void Line(StringBuilder to, string text) => to.Append(text).Append('\n');
}
