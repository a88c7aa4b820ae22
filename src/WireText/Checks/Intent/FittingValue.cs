using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Positions;
using WireText.Electrical.Studies;
using WireText.Quantities;

namespace WireText.Checks.Intent;

/// <summary>The one value with which every claim would hold, where claims of readings, peaks and levels alone are refuted.</summary>
/// <remarks>
/// It is looked for from two thirds to three halves of what the text says: parts are off by so much, and beyond that a wrong
/// wire is likelier. Of several parts the one that changes least is told.
/// </remarks>
internal static class FittingValue
{
    private const double MostTimes = 1.5;

    /// <summary>Halvings of that range on a logarithmic scale: to a fifth of a percent.</summary>
    private const int Halvings = 9;

    /// <summary>Parts that are tried, so that no input can keep it busy. Chosen: more than lie in the way of a usual instrument.</summary>
    private const int MostParts = 8;

    /// <summary>In the words of a part's line: <c>bridge dcr=8.2k</c>, <c>dark 22n</c>; null when no one value does.</summary>
    public static string? Find(StudyContext context, IReadOnlyList<Refutation> refuted)
    {
        if (
            refuted.Any(one =>
                one.Claim.Share is not null
                || one.Claim is not (ReadsClaim or ResonatesClaim or LevelClaim or LevelAtClaim)
            )
        )
        {
            return null;
        }

        return Candidates(context.Circuit, refuted[0].Claim)
            .Take(MostParts)
            .Select(part => (Part: part, Times: TimesThatFit(context, part, refuted[0])))
            .Where(found => found.Times is not null)
            .OrderBy(found => Math.Abs(Math.Log(found.Times!.Value)))
            .Where(found => AllHold(context, found.Part.Rounded(found.Times!.Value)))
            .Select(found => found.Part.Text(found.Times!.Value))
            .FirstOrDefault();
    }

    /// <summary>What can be off: windings for a reading, inductances and capacitances for a peak, pots and capacitors for a level.</summary>
    private static IEnumerable<PartValue> Candidates(Circuit circuit, Claim claim)
    {
        foreach (var part in circuit.Parts)
        {
            Element[] own = [.. part.Elements.Select(element => circuit.Elements[element])];
            var coils = own.OfType<Coil>().ToImmutableArray<Element>();
            if (coils.Length > 0 && claim is ReadsClaim)
            {
                yield return new PartValue(part, "dcr=", Unit.Ohm, coils, e => ((Coil)e).Ohms, Wound);
            }
            else if (coils.Length > 0 && claim is ResonatesClaim or LevelAtClaim)
            {
                yield return new PartValue(part, "l=", Unit.Henry, coils, e => ((Coil)e).Henries, Induced);
            }
            else if (own is [Resistor])
            {
                yield return new PartValue(part, "", Unit.Ohm, [.. own], e => ((Resistor)e).Ohms, Resisting);
            }
            else if (own is [Track])
            {
                yield return new PartValue(part, "", Unit.Ohm, [.. own], e => ((Track)e).Ohms, Tracked);
            }
            else if (own is [Capacitor] && claim is not ReadsClaim)
            {
                yield return new PartValue(part, "", Unit.Farad, [.. own], e => ((Capacitor)e).Farads, Charged);
            }
        }
    }

    private static Element Wound(Element coil, double times) => (Coil)coil with { Ohms = ((Coil)coil).Ohms * times };

    private static Element Induced(Element coil, double times) =>
        (Coil)coil with
        {
            Henries = ((Coil)coil).Henries * times,
        };

    private static Element Resisting(Element resistor, double times) =>
        (Resistor)resistor with
        {
            Ohms = ((Resistor)resistor).Ohms * times,
        };

    private static Element Tracked(Element track, double times) =>
        (Track)track with
        {
            Ohms = ((Track)track).Ohms * times,
        };

    private static Element Charged(Element cap, double times) =>
        (Capacitor)cap with
        {
            Farads = ((Capacitor)cap).Farads * times,
        };

    /// <summary>How many times its value gives what is claimed; null where neither end of the range passes it.</summary>
    private static double? TimesThatFit(StudyContext context, PartValue part, Refutation refuted)
    {
        var (low, high) = (-Math.Log(MostTimes), Math.Log(MostTimes));
        if (Missed(low) is not { } atLow || Missed(high) is not { } atHigh || (atLow < 0) == (atHigh < 0))
        {
            return null;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (Missed(middle) is not { } there)
            {
                return null;
            }

            (low, high) = (there < 0) == (atLow < 0) ? (middle, high) : (low, middle);
        }

        return Math.Exp((low + high) / 2);

        double? Missed(double logarithm)
        {
            context.Cancellation.ThrowIfCancellationRequested();
            return
                FoundIn(
                    context.Study.Beside(part.Times(context.Circuit, Math.Exp(logarithm))).At(refuted.Expectation.Jack),
                    refuted.There.State,
                    refuted.Claim
                )
                    is { } found
                ? found - Claimed(refuted.Claim)
                : null;
        }
    }

    private static double Claimed(Claim claim) =>
        claim switch
        {
            ReadsClaim reads => reads.Ohms,
            ResonatesClaim resonates => resonates.Hertz,
            LevelClaim level => level.Decibels,
            LevelAtClaim level => level.Decibels,
            _ => double.NaN,
        };

    private static double? FoundIn(Study study, State state, Claim claim)
    {
        var there = study.Analyse(state);
        return claim switch
        {
            ReadsClaim => there.Reading?.Ohms,
            ResonatesClaim => there.Resonance?.Hertz,
            LevelAtClaim level => there.DecibelsAt(level.Hertz),
            _ => there.Sound.LevelDecibels - RestOf(study, state).Sound.LevelDecibels,
        };
    }

    private static StateAnalysis RestOf(Study study, State state) =>
        study.Analyse(state.At(State.Rest(study.Circuit).Travels));

    private static bool AllHold(StudyContext context, Func<Circuit, Circuit> change)
    {
        var beside = context.Study.Beside(change(context.Circuit));
        return context.JudgedExpectations.All(one => beside.JudgeOf(one).Refute(one, context.Cancellation) is null);
    }

    /// <summary>One value of a part's line, which all of some elements have between them.</summary>
    private sealed record PartValue(
        Part Part,
        string Key,
        Unit Unit,
        ImmutableArray<Element> Elements,
        Func<Element, double> Of,
        Func<Element, double, Element> Changed
    )
    {
        private const int Figures = 2;

        private double Whole => Elements.Sum(Of);

        public string Text(double times) => $"{Part.Name} {Key}{ValueText.Label(Whole * times, Unit, Figures)}";

        public Circuit Times(Circuit circuit, double times) =>
            Elements.Aggregate(
                circuit,
                (changed, element) =>
                    changed with
                    {
                        Elements = changed.Elements.SetItem(element.Index, Changed(element, times)),
                    }
            );

        /// <summary>As <see cref="Times"/>, with the value as <see cref="Text"/> tells it.</summary>
        public Func<Circuit, Circuit> Rounded(double times)
        {
            var scale = Math.Pow(10, Figures - 1 - Math.Floor(Math.Log10(Whole * times)));
            return circuit => Times(circuit, Math.Round(Whole * times * scale) / scale / Whole);
        }
    }
}
