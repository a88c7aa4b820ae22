using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Batteries;
using WireText.Checks.Connections;
using WireText.Checks.Controls;
using WireText.Checks.Repairs;
using WireText.Checks.Switching;
using WireText.Circuits;
using WireText.Circuits.Binding;
using WireText.Diagnosing;
using WireText.Drawing.Layout;
using WireText.Drawing.Layout.Finishing;
using WireText.Drawing.Layout.Placement;
using WireText.Drawing.Layout.Routing;
using WireText.Drawing.Pictures;
using WireText.Editing;
using WireText.Electrical.BenchPlans;
using WireText.Electrical.Expectations;
using WireText.Electrical.Forms;
using WireText.Electrical.Grounds;
using WireText.Electrical.Positions;
using WireText.Electrical.Responses;
using WireText.Electrical.Roles;
using WireText.Electrical.Situations;
using WireText.Electrical.Solving;
using WireText.Electrical.Sound;
using WireText.Electrical.Tolerances;
using WireText.Frames;
using WireText.Listening;
using WireText.Matching;
using WireText.Measuring;
using WireText.Mods;
using WireText.Pages;
using WireText.Proposing;
using WireText.Quantities;
using WireText.Syntax.Parsing;
using WireText.Text;

namespace WireText;

/// <summary>The most that is read, or looked at in a search: a count and never a clock, so that every machine stops at the same place.</summary>
/// <param name="Stage">Whose it is.</param>
/// <param name="Counted">What is counted.</param>
/// <param name="Beyond">What is done past it.</param>
public sealed record Bound(string Stage, string Counted, long Most, string Beyond);

/// <summary>Every bound on work and memory, in the order of the stages.</summary>
public static class Bounds
{
    public static ImmutableArray<Bound> All { get; } =
    [
        new("reading", "characters of a file", WiringParser.MaxLength, "the finding too-large; nothing is read"),
        new("reading", "lines of a file", WiringParser.MaxLines, "the finding too-large; nothing is read"),
        new("reading", "brackets in one another in a claim", BracketDepth.Max, "the line cannot be read"),
        new("reading", "files that include files", DefinitionGatherer.MaxDepth, "the finding include-too-deep"),
        new("reading", "parts and splices of a circuit", CircuitLimits.MaxParts, "the finding too-large"),
        new("reading", "stretches of wire of a circuit", CircuitLimits.MaxWires, "the finding too-large"),
        new(
            "reading",
            "lugs of a circuit, leads and points inside with them",
            CircuitLimits.MaxLugs,
            "the finding too-large"
        ),
        new("reading", "elements inside the parts of a circuit", CircuitLimits.MaxElements, "the finding too-large"),
        new("reading", "contacts of a circuit, in each position", CircuitLimits.MaxContacts, "the finding too-large"),
        new("reading", "colours that a circuit names for itself", CircuitLimits.MaxColours, "the finding too-large"),
        new("reading", "findings kept of a file", FindingLimit.MostKept, "the finding too-many-findings"),
        new("reading", "letters of a value", ValueReader.LongestValue, "it is no value"),
        new(
            "reading",
            "letters of a word for which a near one is looked for",
            DidYouMean.LongestWord,
            "none is offered"
        ),
        new("reading", "mods that stand on mods", ModResolver.MaxDepth, "the finding base-too-deep"),
        new("reading", "names of lugs guessed in a file", LugResolver.MostGuesses, "no more are offered"),
        new(
            "electrical",
            "situations of a circuit",
            SituationTree.Limit,
            "the finding too-many-situations; what positions do is not checked"
        ),
        new(
            "electrical",
            "branches in the way of the signal",
            SituationTree.MostLive,
            "the same finding; a track is two of them"
        ),
        new(
            "electrical",
            "steps of the search for situations",
            ContactSearch.WorkLimit,
            "the same finding as for too many situations"
        ),
        new(
            "electrical",
            "states in which two nets are compared",
            ContactReport.Limit,
            "how contacts join them is left open"
        ),
        new(
            "electrical",
            "steps of the search for ungrounded metal",
            MetalNetFinder.WorkLimit,
            "the rest is not looked at"
        ),
        new("electrical", "multiply-adds of one solution", Elimination.MaxUpdates, "the row says not computed"),
        new(
            "electrical",
            "nodes of a network that is solved with pivots",
            DenseSolver.MaxSize,
            "the row says not computed"
        ),
        new("electrical", "live parts that one search solves", SolveBudget.Limit, "the rest is not told"),
        new(
            "electrical",
            "branches of which a form is sought",
            FormFinder.MaxBranches,
            "the coils are listed as a bridge"
        ),
        new("electrical", "branches in a bridge", FormFinder.MaxKernel, "the coils are listed as a bridge"),
        new("electrical", "solved states kept from one edit to the next", Analyst.MostShared, "they are solved anew"),
        new(
            "electrical",
            "lines of the table of positions in a bench plan",
            BenchSettings.MostPositions,
            "each control is moved alone"
        ),
        new("electrical", "readings of a bench plan", ReadingList.MostReadings, "the plan says that there are more"),
        new(
            "electrical",
            "dials turned in the positions of a bench plan",
            ReadingList.MostTurns,
            "the plan says that there are more"
        ),
        new("electrical", "faults of a bench plan", FaultTable.MostFaults, "the plan says that there are more"),
        new(
            "electrical",
            "nets and elements looked at for the faults of a bench plan",
            FaultTable.WorkLimit,
            "the plan says that there are more"
        ),
        new(
            "electrical",
            "circuits tried for values that nobody knows",
            DoubtVariants.Most,
            "each value is tried by itself"
        ),
        new("electrical", "instruments of one run", RunOptions.MostInstruments, "the command says so and ends"),
        new(
            "electrical",
            "instruments of a run by states of its table",
            SpreadTable.MostSolved,
            "the command says so and ends"
        ),
        new("matching", "letters of a bin", BinReader.MostLetters, "the command says so and ends"),
        new("matching", "parts of a bin", BinReader.MostParts, "the command says so and ends"),
        new("matching", "instruments of a batch", Matcher.MostInstruments, "the command says so and ends"),
        new(
            "matching",
            "looks at figures, in readings of a meter",
            MatchSearch.MostLooks,
            "the best so far, with its gap"
        ),
        new(
            "matching",
            "instruments that are listed",
            InstrumentList.MostInstruments,
            "the best so far, with no bound"
        ),
        new("matching", "steps through sets of instruments", InstrumentList.MostSteps, "the best so far, with its gap"),
        new(
            "claims",
            "instruments drawn for a claim over a run, in one state",
            RunJudge.MostInstruments,
            "it is judged by those, within the error that is told"
        ),
        new("listening", "samples of a sound", HeardSequence.MostSamples, "an error"),
        new("listening", "passages of a sound", ResponseStudy.MostCurves, "an error"),
        new("listening", "bytes of a recording", WaveReader.MostBytes, "it is refused"),
        new("claims", "states of one claim about a battery", MeantStates.BatteryLimit, "the finding expect-not-judged"),
        new(
            "claims",
            "pairs of claims compared with each other",
            ExpectationConflict.PairLimit,
            "the rest is not compared"
        ),
        new(
            "checks",
            "dials whose work is told",
            DialRoles.MostDials,
            "the finding too-many-situations; what dials do is not checked"
        ),
        new(
            "checks",
            "situations in which a control's positions are compared",
            ControlEffects.SituationLimit,
            "it is taken to do something"
        ),
        new("checks", "situations between which passages are looked at", Passage.SituationLimit, "none are looked at"),
        new(
            "checks",
            "situations in which supplies are looked at",
            SuppliedAmplifier.SituationLimit,
            "the rest is not looked at"
        ),
        new(
            "checks",
            "situations in which direct current is looked for",
            DirectCurrentAtJack.SituationLimit,
            "the rest is not looked at"
        ),
        new(
            "checks",
            "situations in which the sides of electrolytics are looked at, one electrolytic each",
            ElectrolyticReversed.SituationLimit,
            "the rest is not looked at"
        ),
        new(
            "checks",
            "settings tried to name silent positions",
            SilentPositions.TriedLimit,
            "no shorter words for them are looked for"
        ),
        new("checks", "pots told apart by where their lugs lead", LugPlaces.MostPots, "volumes are not compared"),
        new("checks", "wires blamed for a join", JoinBlame.MaxWires, "no more are named"),
        new("repairs", "circuits tried", RepairSearch.Bound, "no repair is offered"),
        new("repairs", "lugs looked at", RepairSearch.LugBound, "no repair is offered"),
        new("repairs", "lugs looked at for a likely mend", LikelyMend.LugBound, "none is offered"),
        new(
            "repairs",
            "states in which two mends are compared",
            Behaviour.MaxStates,
            "situations are compared instead"
        ),
        new(
            "repairs",
            "lines checked anew by check --fix, in all texts tried",
            Mender.MostLines,
            "the rest is not mended"
        ),
        new(
            "proposing",
            "nets that wires on open lugs may lead to",
            HarnessSearch.MostNets,
            "nothing is looked for; it says why"
        ),
        new("proposing", "states of all controls together", HarnessStates.Limit, "nothing is looked for; it says why"),
        new("proposing", "positions of an open control", OpenLugs.MostPositions, "nothing is looked for; it says why"),
        new(
            "proposing",
            "contacts of an open control that close together",
            HarnessSearch.MostContacts,
            "nothing is looked for; it says why"
        ),
        new(
            "proposing",
            "steps of a search for wires, at the usual effort",
            HarnessBudget.MostNodes,
            "the best so far is told, and how many joints are needed at least"
        ),
        new(
            "proposing",
            "joinings judged in a search for wires, at the usual effort",
            HarnessBudget.MostJudged,
            "the same"
        ),
        new("proposing", "nets of lugs alone in a harness", HarnessSearch.MostJumpers, "no harness has more"),
        new(
            "proposing",
            "harnesses of the least joints that are compared",
            HarnessSearch.MostKept,
            "the rest is not compared"
        ),
        new("proposing", "completed texts that are checked", HarnessTrials.MostChecked, "nothing is proposed"),
        new(
            "diagnosing",
            "single faults of an instrument",
            Electrical.Faults.FaultList.MostFaults,
            "the rest is not tried"
        ),
        new("diagnosing", "facts that were found", Diagnostician.MostFindings, "the rest is not taken in"),
        new(
            "diagnosing",
            "networks that are solved",
            Diagnostician.MostNetworks,
            "what is not solved by then is no measurement that is advised"
        ),
        new(
            "diagnosing",
            "explanations that are told apart",
            Diagnostician.MostLooked,
            "the others have less than any of these"
        ),
        new("diagnosing", "measurements that are weighed", MeasurementList.Most, "the rest is not advised"),
        new(
            "diagnosing",
            "single faults that are combined to pairs",
            PairSearch.MostSingles,
            "the rest is not combined"
        ),
        new("drawing", "stretches of wire", CircuitLimits.MaxDrawnWires, "the finding too-large-to-draw"),
        new("drawing", "wires laid at full effort", LayoutEngine.MostWiresAtFullEffort, "the quick effort is taken"),
        new(
            "drawing",
            "big parts whose places are searched",
            SlotSearch.MostSearched,
            "they are brought near each other"
        ),
        new("drawing", "trials for each part beyond them", SlotSpread.TrialsAPart, "the best so far stands"),
        new("drawing", "nodes of the lattice", LatticeBuilder.MostNodes, "parts are drawn, wires are listed"),
        new(
            "drawing",
            "nodes of a lattice kept for the picture after it",
            LayoutFinisher.MostNodesKept,
            "that picture is laid as if it were alone"
        ),
        new(
            "drawing",
            "rounds in which wires compete for lanes",
            LaneNegotiation.MostRounds,
            "wires in conflict are taken out and tried once more"
        ),
        new(
            "drawing",
            "states of a whole layout, other work told in as many",
            LayoutEngine.MostStates,
            "the best so far stands, wires without a path are listed"
        ),
        new("drawing", "states of a routing at quick effort", SearchBudget.Quick, "wires without a path are listed"),
        new(
            "drawing",
            "states of each start at full effort",
            SearchBudget.FullStart,
            "wires without a path are listed"
        ),
        new("drawing", "states of a routing that compares places", SearchBudget.Trial, "the score so far counts"),
        new("drawing", "times that channels are widened", LayoutEngine.MostWidenings, "the best so far stands"),
        new(
            "drawing",
            "places tried for the name of a lug",
            LugLabels.MostCandidates,
            "the places that are liked least are not tried"
        ),
        new(
            "drawing",
            "surroundings of the lug names of a part kept from one picture to the next",
            KnownLugLabels.MostKept,
            "the places are found anew"
        ),
        new("drawing", "frames of a video", FrameSequence.Most, "an error"),
        new(
            "pages",
            "states of a page",
            PageStates.MostStates,
            "knobs turn by two marks, then one at a time, then not at all; past that no page is written"
        ),
        new(
            "pages",
            "lugs and wires of a page, in each of its states",
            PageStates.MostMarks,
            "it has fewer states: the same"
        ),
        new("watching", "places at which a page is open at once", LivePage.MostReaders, "the next is refused"),
        new("watching", "connections at once", LivePage.MostConnections, "the next is closed"),
        new("watching", "bytes of a request", LivePage.MostRequestBytes, "it is refused"),
        new("watching", "findings that a page lists", LivePage.MostFindings, "it says how many more there are"),
        new("watching", "files that are followed", LivePage.MostFiles, "changes of the rest are not seen"),
        new(
            "watching",
            "folders of which the system is asked to tell",
            LivePage.MostFolders,
            "the files of the rest are looked at by turns"
        ),
        new("answering an editor", "bytes of a message", EditorLimits.MostMessageBytes, "it is skipped and refused"),
        new(
            "answering an editor",
            "files in which a name is looked for",
            EditorLimits.MostFiles,
            "those in folders further up are not looked at"
        ),
        new("measuring", "characters of an SVG", SvgPictureReader.MostCharacters, "an error"),
        new("measuring", "elements of an SVG", SvgPictureReader.MostElements, "an error"),
        new("measuring", "elements in one another", SvgPictureReader.MostDepth, "an error"),
        new("measuring", "steps of one measurement", WorkLimit.Most, "an error"),
    ];
}
