using System.Text;
using CsCheck;
using WireText.Circuits;
using WireText.Text;

namespace WireText.Tests.Drawing.Random;

/// <summary>
/// Random circuits as the text of a wiring file: parts of most models, leads soldered once, wires and cables between any lugs.
/// Every line is right, so nothing of a circuit is lost; what it does electrically is left to chance.
/// </summary>
internal static class RandomWirings
{
    /// <summary>As many joints as one lug takes at the bench; a case takes any number.</summary>
    private const int MostJointsOnALug = 4;

    private static readonly string[] Models =
    [
        "pickup single-coil",
        "pickup single-coil-cover",
        "pickup humbucker",
        "pickup humbucker-4",
        "pot 250k audio",
        "pot 500k linear",
        "pot push-pull 500k audio",
        "pot concentric 250k audio",
        "pot blend 250k",
        "switch lever-3way",
        "switch lever-5way",
        "switch lever-5way-4pole",
        "switch toggle-3way",
        "switch dpdt",
        "switch spdt",
        "switch slide-dpdt",
        "switch rotary-1x6",
        "button momentary",
        "jack mono",
        "jack stereo",
        "metal",
        "battery 9V",
        "preamp buffer",
        "cap 47n film",
        "resistor 150k",
    ];

    private static readonly string[] Colours =
    [
        "red",
        "white",
        "black",
        "yellow",
        "green",
        "blue",
        "bare",
        "white/black",
        "GNYE",
    ];

    private static readonly string[] Turns = ["0", "90", "180", "270"];

    /// <summary>Circuits of 2 parts up to <paramref name="mostParts"/>, with as many wires as their leads and up to <paramref name="mostRuns"/> runs more.</summary>
    public static Gen<string> Text(int mostParts, int mostRuns) =>
        from models in Gen.Int[0, Models.Length - 1].Array[2, mostParts]
        from runs in Gen.Int[0, mostRuns]
        from dice in Gen.Int[0, 5039].Array[40 + (30 * mostParts) + (5 * mostRuns)]
        select new Composer(models, new Dice(dice)).Compose(runs);

    /// <summary>Choices made beforehand, taken one after the other.</summary>
    private sealed class Dice(int[] rolls)
    {
        private int next;

        public int Below(int sides) => rolls[next++ % rolls.Length] % sides;

        public bool OneIn(int sides) => Below(sides) == 0;

        public T Of<T>(IReadOnlyList<T> items) => items[Below(items.Count)];
    }

    private sealed class Composer(int[] models, Dice dice)
    {
        private readonly StringBuilder text = new();
        private readonly Dictionary<string, int> joints = new(StringComparer.Ordinal);
        private Lug[] lugs = [];

        public string Compose(int runs)
        {
            var lines = models.Select((model, i) => Declared(Models[model], i)).ToList();
            text.AppendJoin("", lines);
            var circuit = Compilation.Of(new SourceText("parts.wiring", text.ToString()), NoSources.Instance).Circuit!;
            lugs = [.. circuit.Lugs.Where(lug => lug is { IsInner: false, IsLead: false })];
            if (lugs.Length < 2)
            {
                return text.ToString();
            }

            foreach (var part in circuit.Parts)
            {
                Solder(part, [.. part.Lugs.Select(lug => circuit.Lugs[lug]).Where(lug => lug.IsLead)]);
            }

            for (var i = 0; i < runs; i++)
            {
                Run();
            }

            if (dice.OneIn(3))
            {
                Arrange([
                    .. circuit.Parts.Where(part => part.Kind is not ("cap" or "resistor")).Select(part => part.Name),
                ]);
            }
            else if (dice.OneIn(3))
            {
                text.Append($"place {dice.Of(circuit.Parts).Name} turned {dice.Of(Turns)}\n");
            }

            return text.ToString();
        }

        /// <summary><c>pot 250k audio</c> becomes <c>pot pot3 250k audio</c>.</summary>
        private static string Declared(string model, int number)
        {
            var words = model.Split(' ', 2);
            return $"{words[0]} {words[0]}{number} {(words.Length > 1 ? words[1] : "")}".TrimEnd() + "\n";
        }

        private void Solder(Part part, Lug[] leads)
        {
            var left = leads.Select(lead => lead.Name).ToList();
            if (left.Count == 5 && dice.OneIn(2))
            {
                var splice = $"join{part.Index}";
                text.Append($"splice {splice} {left[1]} {left[2]} sleeved\n");
                left.RemoveRange(1, 2);
                left.Add(splice);
            }
            else if (left.Count == 2 && part.Kind == "pickup" && dice.OneIn(3) && Free() is { } hot)
            {
                var ground = Beside(hot) ?? "cut";
                text.Append($"cable {left[0]} to {hot} {Colour()} braid {left[1]} to {ground}\n");
                left.Clear();
            }

            foreach (var lead in left.Where(_ => !dice.OneIn(8)))
            {
                if (Free() is { } lug)
                {
                    text.Append($"wire {lead} to {lug} {Colour()}\n");
                }
            }
        }

        private void Run()
        {
            if (Free() is not { } from || Free(from) is not { } to)
            {
                return;
            }

            if (dice.OneIn(8) && PartOf(from) != PartOf(to) && Beside(from) is { } ground)
            {
                text.Append($"cable {from} to {to} {Colour()} braid {ground} to cut\n");
                return;
            }

            text.Append($"wire {from} to {to}");
            if (dice.OneIn(4) && Free(to) is { } further)
            {
                text.Append($" to {further}");
            }

            text.Append($" {Colour()}\n");
        }

        private string Colour() => dice.Of(Colours);

        /// <summary>A lug with room for one more joint, and not <paramref name="other"/>; null when chance finds none.</summary>
        private string? Free(string? other = null)
        {
            var lug = dice.Of(lugs);
            var name = lug.Name;
            var count = joints.GetValueOrDefault(name);
            if (name == other || (!lug.IsMetal && count >= MostJointsOnALug))
            {
                return null;
            }

            joints[name] = count + 1;
            return name;
        }

        /// <summary>Another lug of the same part, where a braid can go that ends with its core; null when chance finds none.</summary>
        private string? Beside(string lug)
        {
            var beside = dice.Of([.. lugs.Where(other => PartOf(other.Name) == PartOf(lug))]).Name;
            return beside == lug ? null : beside;
        }

        private static string PartOf(string lug) => lug.Split('.')[0];

        private void Arrange(List<string> names)
        {
            if (names.Count == 0)
            {
                return;
            }

            text.Append("arrange\n");
            var columns = 1 + dice.Below(4);
            while (names.Count > 0)
            {
                text.Append("   ");
                for (var column = 0; column < columns && names.Count > 0; column++)
                {
                    var name = dice.OneIn(5) && column < columns - 1 ? "." : dice.Of(names);
                    names.Remove(name);
                    text.Append($" {name}");
                }

                text.Append('\n');
            }
        }
    }
}
