using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Networks;
using WireText.Electrical.Situations;

namespace WireText.Electrical.Mutes;

/// <summary>Recognises mutes from their structure, not from what is heard alone.</summary>
/// <remarks>
/// Silent in one position and equal in the others is not enough: a selector with one wire moved or missing passes that too.
/// </remarks>
public static class MuteFinder
{
    /// <param name="outcomes">The outcomes of all situations; null when they could not be listed, and then only mutes across the jack are found.</param>
    public static ImmutableArray<Mute> Find(Network network, SituationOutcomes? outcomes) =>
        [
            .. network
                .Circuit.Controls.Where(control => !control.IsPlug)
                .Select(control => Recognise(network, control, outcomes))
                .OfType<Mute>(),
        ];

    private static Mute? Recognise(Network network, Control control, SituationOutcomes? outcomes)
    {
        var contacts = network.Contacts[control.Index];
        var pairs = WithoutMutesOfOthers(network, contacts.EffectiveAnywhere);
        if (
            pairs.IsEmpty
            || network.Tip == network.Sleeve
            || HasOtherWiredLugs(network, control, contacts.EffectiveAnywhere)
        )
        {
            return null;
        }

        var jack = NetPair.Of(network.Tip, network.Sleeve);
        if (pairs.Contains(jack))
        {
            var isMute = pairs.Length == 1 || (pairs.Length == 2 && pairs.All(pair => pair.Holds(network.Tip)));
            var kind = pairs.Length == 1 ? MuteKind.AcrossTheJack : MuteKind.ChangeOver;
            var muting = PositionsWith(contacts, jack);
            return isMute && muting.Length < control.Positions.Length
                ? new Mute(control.Index, kind, muting, jack)
                : null;
        }

        return pairs.Length == 1 && outcomes is not null
            ? RecogniseByPair(network, control, contacts, pairs[0], outcomes)
            : null;
    }

    /// <summary>
    /// The pairs but for those that mute another jack: where a control joins tip and sleeve of that, and what else it does to that tip.
    /// </summary>
    private static ImmutableArray<NetPair> WithoutMutesOfOthers(Network network, ImmutableArray<NetPair> pairs)
    {
        var nets = network.Circuit.Nets.OneNet;
        var muted = network
            .Circuit.Outputs.Skip(1)
            .Where(jack => pairs.Contains(NetPair.Of(nets[jack.Tip], nets[jack.Sleeve])))
            .Select(jack => nets[jack.Tip])
            .Where(tip => tip != network.Tip)
            .ToHashSet();
        return muted.Count == 0
            ? pairs
            : pairs.RemoveAll(pair => muted.Contains(pair.Low) || muted.Contains(pair.High));
    }

    private static Mute? RecogniseByPair(
        Network network,
        Control control,
        ContactList contacts,
        NetPair pair,
        SituationOutcomes outcomes
    )
    {
        var closed = PositionsWith(contacts, pair);
        ImmutableArray<int> open = [.. Enumerable.Range(0, control.Positions.Length).Except(closed)];
        if (pair.Holds(network.Sleeve) && Silences(control, closed, open, outcomes))
        {
            return new Mute(control.Index, MuteKind.Upstream, closed, pair);
        }

        // A selector that lacks a wire opens its only pair too; then a pickup is missing in every position.
        return
            Silences(control, open, closed, outcomes)
            && EveryStringCoilIsLive(network, outcomes)
            && !SwitchesSupply(network, control, open, outcomes)
            ? new Mute(control.Index, MuteKind.Opening, open, pair)
            : null;
    }

    private static bool Silences(
        Control control,
        ImmutableArray<int> silent,
        ImmutableArray<int> sounding,
        SituationOutcomes outcomes
    ) =>
        !silent.IsEmpty
        && !sounding.IsEmpty
        && silent.All(position => !outcomes.SoundsSomewhere(control.Index, position))
        && sounding.Any(position => outcomes.SoundsSomewhere(control.Index, position));

    private static bool EveryStringCoilIsLive(Network network, SituationOutcomes outcomes)
    {
        var live = outcomes
            .Situations.SelectMany(situation => situation.Live)
            .Select(branch => network.Branches[branch].Element)
            .ToHashSet();
        return network.Circuit.Elements.OfType<Coil>().All(coil => !coil.HearsStrings || live.Contains(coil.Index));
    }

    /// <summary>True when amplifiers lose their supply in the silent positions: that is an off switch.</summary>
    private static bool SwitchesSupply(
        Network network,
        Control control,
        ImmutableArray<int> silent,
        SituationOutcomes outcomes
    ) =>
        network.Circuit.Elements.Any(element => element is Amplifier)
        && outcomes.Situations.ToLookup(
            situation => silent.Any(position => situation.State[control.Index] == position),
            situation => Supply.PoweredAmplifiers(network, situation.State).Count
        )
            is var powered
        && powered[true].DefaultIfEmpty(0).Max() < powered[false].DefaultIfEmpty(0).Max();

    private static ImmutableArray<int> PositionsWith(ContactList contacts, NetPair pair) =>
        [.. Enumerable.Range(0, contacts.Effective.Length).Where(p => contacts.Effective[p].Contains(pair))];

    /// <summary>True when a lug of the control that something is soldered to lies on none of the nets it joins.</summary>
    private static bool HasOtherWiredLugs(Network network, Control control, ImmutableArray<NetPair> pairs)
    {
        var nets = network.Circuit.Nets;
        return control
            .Positions.SelectMany(position => position.Closed)
            .SelectMany(group => group)
            .Select(lug => nets.OneNet[lug])
            .Any(net => nets.Members[net].Length >= 2 && !pairs.Any(pair => pair.Holds(net)));
    }
}
