using System.Collections.Immutable;

namespace WireText.Checks;

/// <summary>How near a finding must be to be taken for the shadow of another.</summary>
public enum SilenceReach
{
    /// <summary>It marks one of the same parts.</summary>
    SamePart,

    /// <summary>It marks one of the same parts or nets; the output's own two nets do not count.</summary>
    SamePartOrNet,

    Anywhere,
}

/// <summary>Findings that are dropped while another stands: one cause, one finding.</summary>
/// <param name="Check">The id of the check whose findings are dropped; null for every check.</param>
/// <param name="Except">Ids that are kept all the same, when <paramref name="Check"/> is null.</param>
public sealed record Silence(string? Check, SilenceReach Reach, params string[] Except)
{
    /// <summary>True when only a finding that is an error drops them.</summary>
    public bool OnlyByErrors { get; init; }

    /// <summary>What is read off the finished circuit: each of these can be the shadow of a wrong wire.</summary>
    private static readonly ImmutableArray<string> Readings =
    [
        "no-sound",
        "never-heard",
        "dead-position",
        "hanging-coil",
        "pickup-shorted",
        "position-name",
        "join-name",
        "out-of-phase",
        "hum-partner",
        "tone-without-capacitor",
        "backwards-control",
        "volume-not-silent",
        "volumes-linked",
        "fed-on-the-wiper",
        "controls-unlike",
        "blend-end",
        "tone-for-some",
        "inert-control",
        "part-idle",
        "shorts-while-switching",
        "gap",
        "bleed-misplaced",
        "bleed-behind-contact",
        "bleed-unlike",
        "capacitor-out-of-row",
        "heavy-load",
        "capacitor-magnitude",
        "colour-habit",
    ];

    /// <summary>What is read off the circuit on the same part or net, and all of it while an error stands.</summary>
    public static IEnumerable<Silence> WhatIsRead() =>
        Readings.Select(Of).Concat(AllThatIsRead().Select(silence => silence with { OnlyByErrors = true }));

    /// <summary>What is read off the circuit, wherever it is. A refuted claim is not: it may know the mend, and is a witness else.</summary>
    public static IEnumerable<Silence> AllThatIsRead(params IReadOnlyList<string> but) =>
        Readings.Where(check => !but.Contains(check)).Select(Everywhere);

    /// <summary>What is read off how pots and switches work, wherever they are: a wrong wire before them changes it.</summary>
    public static IEnumerable<Silence> WhatDialsDo() =>
        new[]
        {
            "tone-without-capacitor",
            "backwards-control",
            "volume-not-silent",
            "volumes-linked",
            "fed-on-the-wiper",
            "controls-unlike",
            "inert-control",
            "bleed-misplaced",
        }.Select(Everywhere);

    /// <summary>Findings of a check on the same part or net.</summary>
    public static Silence Of(string check) => new(check, SilenceReach.SamePartOrNet);

    /// <summary>Findings of a check wherever they are.</summary>
    public static Silence Everywhere(string check) => new(check, SilenceReach.Anywhere);

    /// <summary>Every other finding of the same part.</summary>
    public static Silence OthersOfThePart() => new(null, SilenceReach.SamePart);

    /// <summary>Every other finding but those of the checks named.</summary>
    public static Silence EverythingBut(params string[] kept) => new(null, SilenceReach.Anywhere, kept);

    public bool Names(string check) => Check is null ? !Except.Contains(check) : Check == check;
}
