using System.Collections.Immutable;
using WireText.Circuits;
using WireText.Electrical.Expectations;
using WireText.Electrical.Grounds;
using WireText.Electrical.Mutes;
using WireText.Electrical.Networks;
using WireText.Electrical.Positions;
using WireText.Electrical.Roles;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;
using WireText.Steps;

namespace WireText.Electrical.Studies;

/// <summary>
/// What the electrical stage finds out about a circuit, seen from its first output jack. Each value is worked out when it is first
/// asked for, once, and kept; it is safe to ask from several threads.
/// </summary>
/// <remarks>
/// Nothing in it depends on what else was asked, or in what order. A study speaks of its own <see cref="Circuit"/>: circuits
/// that differ only in places, notes, colours or where they are written have one study between them, see
/// <see cref="ElectricalTwins"/>.
/// </remarks>
public sealed class Study
{
    private readonly Values values;
    private readonly CancellationToken cancellation;

    private Study(Values values, CancellationToken cancellation) =>
        (this.values, this.cancellation) = (values, cancellation);

    public Circuit Circuit => Network.Circuit;

    public Network Network => values.Network;

    /// <summary>Which states share a live part.</summary>
    public SituationTree Situations => values.Situations.Get(cancellation);

    /// <summary>What every situation comes to by its structure; null when there are too many to list.</summary>
    public SituationOutcomes? Outcomes => values.Outcomes.Get(cancellation);

    /// <summary>The controls that do nothing but silence the jack.</summary>
    public ImmutableArray<Mute> Mutes => values.Mutes.Get(cancellation);

    /// <summary>How bare metal comes to the sleeve, net by net.</summary>
    public ImmutableArray<MetalNet> Metal => values.Metal.Get(cancellation);

    /// <summary>What is heard in any state.</summary>
    public SoundMemo Sounds => values.Analyst.Sounds;

    /// <summary>What is heard in every situation that no mute silences; empty when there are too many.</summary>
    public SituationSounds Heard => values.Heard.Get(cancellation);

    /// <summary>What every dial does; null when there are too many situations to list.</summary>
    public DialRoles? Roles => values.Roles.Get(cancellation);

    /// <summary>Everything that is told about any state.</summary>
    public Analyst Analyst => values.Analyst;

    /// <summary>Proves and refutes what is expected at this jack.</summary>
    public ExpectationJudge Judge => values.Judge;

    /// <summary>What every position does.</summary>
    public PositionTable Positions => values.Positions.Get(cancellation);

    /// <summary>This study and that of each other jack in use, in the order of the jacks. What one has solved is known to all.</summary>
    public ImmutableArray<Study> Jacks => [.. Circuit.UsedJacks().Select(jack => At(jack.Part))];

    /// <summary>
    /// The same circuit with values in place of those that nobody knows, spread over all that they may be, see
    /// <see cref="DoubtVariants"/>; empty where all are known.
    /// </summary>
    public ImmutableArray<Study> Doubted =>
        [.. values.Doubted.Get(cancellation).Select(variant => new Study(variant, cancellation))];

    /// <summary>What every position does at every jack: <see cref="Positions"/> where there is but one.</summary>
    public PositionTable PositionsAtJacks => PositionTable.Of([.. Jacks.Select(jack => jack.Positions)]);

    /// <summary>The mute that a control is; null when it is none.</summary>
    public Mute? MuteOf(int control) => Mutes.FirstOrDefault(mute => mute.Control == control);

    /// <summary>Null for a circuit that has no output jack to look from.</summary>
    public static Study? Of(Circuit circuit) => Network.Of(circuit) is { } network ? Of(network) : null;

    public static Study Of(Network network) => new(new Values(new Analyst(network)), CancellationToken.None);

    /// <summary>The same study, whose work ends with an <see cref="OperationCanceledException"/> when the token says so.</summary>
    public Study Until(CancellationToken token) => new(values, token);

    /// <summary>
    /// The study of the same parts and surroundings with other wires or other names of positions: what was solved for either
    /// is known to both.
    /// </summary>
    /// <param name="circuit">It has an output jack, as this one.</param>
    public Study Rewired(Circuit circuit) => new(values.ForRewired(NetworkOf(circuit)), cancellation);

    /// <summary>The study of the same instrument with other values: nothing that was solved holds there.</summary>
    /// <param name="circuit">It has an output jack, as this one.</param>
    public Study Beside(Circuit circuit) => new(new Values(new Analyst(NetworkOf(circuit))), cancellation);

    /// <summary>The study of the same circuit seen from another jack.</summary>
    /// <param name="jack">The part of one of its output jacks; null for the one that this study looks from.</param>
    public Study At(int? jack) =>
        jack is null || jack == Circuit.Outputs[0].Part
            ? this
            : new Study(
                values.Others.Get(cancellation).First(other => other.Network.Circuit.Outputs[0].Part == jack),
                cancellation
            );

    /// <summary>Proves and refutes what is expected at the jack of a line.</summary>
    public ExpectationJudge JudgeOf(Expectation expectation) => At(expectation.Jack).Judge;

    public StateAnalysis Analyse(State state) => Analyst.Analyse(state);

    private static Network NetworkOf(Circuit circuit) =>
        Network.Of(circuit) ?? throw new ArgumentException("the circuit has no output jack", nameof(circuit));

    private sealed class Values
    {
        public Values(Analyst analyst)
            : this(analyst, new ExpectationJudge(analyst)) { }

        private Values(Analyst analyst, ExpectationJudge judge)
        {
            Analyst = analyst;
            Network = analyst.Network;
            Judge = judge;
            Situations = new(cancel => SituationTree.Of(Network, cancel));
            Outcomes = new(cancel =>
                Situations.Get(cancel) is { IsComplete: true } tree
                    ? new SituationOutcomes(Network, tree, cancel)
                    : null
            );
            Mutes = new(cancel => MuteFinder.Find(Network, Outcomes.Get(cancel)));
            Metal = new(cancel => MetalNetFinder.Find(Network, Outcomes.Get(cancel), cancel));
            Heard = new(cancel =>
                Outcomes.Get(cancel) is { } outcomes
                    ? SituationSounds.Of(analyst.Sounds, outcomes.Situations, Mutes.Get(cancel), cancel)
                    : new SituationSounds([])
            );
            Roles = new(cancel =>
                Outcomes.Get(cancel) is { } outcomes
                    ? DialRoles.Of(analyst.Sounds, outcomes.Situations, Mutes.Get(cancel), cancel)
                    : null
            );
            Doubted = new(_ =>
                [.. DoubtVariants.Of(Network.Circuit).Select(circuit => new Values(new Analyst(NetworkOf(circuit))))]
            );
            Positions = new(cancel =>
                PositionTable.Of(
                    analyst,
                    Situations.Get(cancel),
                    [.. Doubted.Get(cancel).Select(variant => variant.Analyst)],
                    cancel
                )
            );
            Others = new(_ =>
                [
                    .. Network
                        .Circuit.Outputs.Skip(1)
                        .Select(jack => ForRewired(NetworkOf(Network.Circuit.SeenFrom(jack)))),
                ]
            );
        }

        public Network Network { get; }

        public Analyst Analyst { get; }

        public ExpectationJudge Judge { get; }

        public Step<SituationTree> Situations { get; }

        public Step<SituationOutcomes?> Outcomes { get; }

        public Step<ImmutableArray<Mute>> Mutes { get; }

        public Step<ImmutableArray<MetalNet>> Metal { get; }

        public Step<SituationSounds> Heard { get; }

        public Step<DialRoles?> Roles { get; }

        public Step<PositionTable> Positions { get; }

        /// <summary>Of the same circuit with values in place of those that nobody knows.</summary>
        public Step<ImmutableArray<Values>> Doubted { get; }

        /// <summary>Of each further jack.</summary>
        public Step<ImmutableArray<Values>> Others { get; }

        public Values ForRewired(Network network)
        {
            var analyst = Analyst.ForRewired(network);
            return new Values(analyst, Judge.ForRewired(analyst));
        }
    }
}
