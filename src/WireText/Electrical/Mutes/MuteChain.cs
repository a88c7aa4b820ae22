using WireText.Electrical.Networks;

namespace WireText.Electrical.Mutes;

/// <summary>
/// Controls in a row from tip to sleeve that do nothing else: the jack is silenced while all of them are closed, as by a
/// button that a switch arms.
/// </summary>
public static class MuteChain
{
    /// <summary>True when the positions close such a row of two controls or more, and some of it is open at rest.</summary>
    public static bool IsClosedBy(Network network, IReadOnlyCollection<(int Control, int Position)> positions)
    {
        var left = positions.ToList();
        if (left.Count < 2 || left.TrueForAll(at => network.Circuit.Controls[at.Control].Rest == at.Position))
        {
            return false;
        }

        // From the tip each control leads on by its only pair of nets, the last to the sleeve.
        var net = network.Tip;
        while (left.FindIndex(at => LeadsOn(network, at, net)) is >= 0 and var next)
        {
            var (control, position) = left[next];
            var pair = network.Contacts[control].Effective[position][0];
            net = pair.Low == net ? pair.High : pair.Low;
            left.RemoveAt(next);
            if (left.Count > 0 && !JoinsTwoControlsAlone(network, net))
            {
                return false;
            }
        }

        return left.Count == 0 && net == network.Sleeve;
    }

    /// <summary>True when all that the control ever joins is one pair with the net, and it does so there.</summary>
    private static bool LeadsOn(Network network, (int Control, int Position) at, int net)
    {
        var contacts = network.Contacts[at.Control];
        return contacts.EffectiveAnywhere is [var pair]
            && contacts.Effective[at.Position].Contains(pair)
            && pair.Holds(net);
    }

    /// <summary>True when no element and no third control ends on the net.</summary>
    private static bool JoinsTwoControlsAlone(Network network, int net) =>
        !network.HasElementAt(net)
        && network.Contacts.Count(contacts => contacts.EffectiveAnywhere.Any(pair => pair.Holds(net))) == 2;
}
