namespace WireText.Diagnosing;

/// <summary>What is taken of meters, hands and ears at the bench. Every one is chosen; none is a standard's.</summary>
public static class BenchOdds
{
    /// <summary>The share of all single faults before anything is found.</summary>
    public const double FaultShare = 0.75;

    /// <summary>The share of an instrument with nothing wrong.</summary>
    public const double RightShare = 0.20;

    /// <summary>The share of what the list does not have.</summary>
    public const double OutsideShare = 0.05;

    /// <summary>Up to here a meter shows 0, in ohms: its leads and contacts have as much.</summary>
    public const double ZeroOhms = 1.5;

    /// <summary>The most that a meter shows, in ohms; many stop at 2 or 20 MΩ.</summary>
    public const double OpenOhms = 40e6;

    /// <summary>The most that a track has at its end, in ohms.</summary>
    public const double TrackEndOhms = 60;

    /// <summary>How often a probe slips, a number is misread, a position is mistaken.</summary>
    public const double Slip = 0.01;

    /// <summary>Of slips, how often 0 is shown.</summary>
    public const double SlipZero = 0.15;

    /// <summary>Of slips, how often nothing is shown.</summary>
    public const double SlipOpen = 0.25;

    /// <summary>How wide the other slips lie, in ln R: from an ohm to the most that is shown.</summary>
    public const double SlipWidth = 17.5;

    /// <summary>The density of a slip in ln R.</summary>
    public const double SlipDensity = (1 - SlipZero - SlipOpen) / SlipWidth;

    /// <summary>A meter's scale, as a fraction (one sigma).</summary>
    public const double MeterScale = 0.006;

    /// <summary>What each reading has of its own, as a fraction (one sigma).</summary>
    public const double OwnFraction = 0.0015;

    /// <summary>What each reading has of its own, in ohms (one sigma).</summary>
    public const double OwnOhms = 0.4;

    /// <summary>How far the bench is from 20 °C, in kelvin (one sigma).</summary>
    public const double Kelvin = 5;

    /// <summary>How far a hand and a taper are off where a dial stands between its ends, in ln of its parts (one sigma).</summary>
    public const double Hand = 0.35;

    /// <summary>How far a coil's resistance may be off that nobody gave, as a fraction.</summary>
    public const double AssumedTolerance = 0.30;

    /// <summary>A group is the answer from this share on.</summary>
    public const double Sure = 0.95;

    /// <summary>A fault this far below the best, in nats, is not looked at again.</summary>
    public const double Dropped = 16;

    /// <summary>How often the ear is wrong about which coils sound.</summary>
    public const double CoilsWrong = 0.04;

    /// <summary>How often it is wrong about silence and hum alone.</summary>
    public const double SilenceWrong = 0.10;

    public const double ThinWrong = 0.10;

    public const double HumWrong = 0.15;

    public const double DarkWrong = 0.10;

    public const double WeakWrong = 0.20;

    public const double BuzzWrong = 0.15;

    /// <summary>How often a lead, a battery or a capacitor alone is judged wrongly.</summary>
    public const double LabelWrong = 0.02;

    /// <summary>A battery under this part of what it should have is flat.</summary>
    public const double FlatFraction = 0.8;
}
