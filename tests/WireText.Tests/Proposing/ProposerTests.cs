using WireText.Proposing;
using WireText.Testing;
using WireText.Text;

namespace WireText.Tests.Proposing;

public class ProposerTests
{
    private static string Wish => File.ReadAllText(Repository.PathOf("examples", "propose", "wish.wiring"));

    public static TheoryData<string> AllExamples => Rows.Of(Repository.RightAndWrongExamples);

    [Fact]
    public void TooFewThrows_AreImpossible_AndSwitchesThatDoAreNamed()
    {
        var proposal = Of(ProposalCases.TooFewThrows);

        Assert.Equal(ProposalOutcome.Impossible, proposal.Outcome);
        Assert.Equal("sel=bridge sel=both", string.Join(' ', proposal.Excluding));
        Assert.Contains(new OtherSwitch("toggle-3way", 4, 5), proposal.WouldDo);
        Assert.Contains(new OtherSwitch("lever-3way", 6, 8), proposal.WouldDo);
    }

    /// <summary>Those that are named do it with so many joints; those that are not do not.</summary>
    [Theory]
    [InlineData("toggle-3way")]
    [InlineData("lever-3way")]
    [InlineData("lever-5way")]
    [InlineData("dpdt-on-off-on")]
    [InlineData("rotary-1x6")]
    public void ASwitch_IsNamedWhereItDoes(string model)
    {
        var named = Of(ProposalCases.TooFewThrows).WouldDo.FirstOrDefault(one => one.Model == model);
        var stops = model switch
        {
            "lever-5way" => " four five",
            "rotary-1x6" => " four five six",
            _ => "",
        };
        var text = ProposalCases
            .TooFewThrows.Replace("spdt-on-off-on", model, StringComparison.Ordinal)
            .Replace("bridge both neck", "bridge both neck" + stops, StringComparison.Ordinal);

        // Of a switch with more stops those that are left over need a claim here.
        text += string.Concat(
            stops
                .Split(' ', StringSplitOptions.RemoveEmptyEntries)
                .Select(stop => $"allow dead-position at sel \"{stop} is not used\"\n")
        );
        text += model == "toggle-3way" ? "wire sel.case to vol.case black\n" : "";
        var own = Of(text);

        Assert.Equal(named is not null, own.Outcome == ProposalOutcome.Found);
        Assert.True(named is null || stops.Length > 0 || own.Joints == named.Joints, $"{own.Joints}");
    }

    [Fact]
    public void OnePole_CannotDoSeries()
    {
        var proposal = Of(ProposalCases.TooFewPoles);

        Assert.Equal(ProposalOutcome.Impossible, proposal.Outcome);
        Assert.Equal(3, proposal.Excluding.Length);
        Assert.Equal(["lever-4way", "rotary-2x6", "lever-5way-4pole"], proposal.WouldDo.Select(one => one.Model));
        Every.Item(proposal.WouldDo, one => Assert.Equal(9, one.Joints));
    }

    /// <summary>At a bound nothing is called impossible, and no more joints are called needed than are.</summary>
    [Theory]
    [InlineData(10)]
    [InlineData(100)]
    [InlineData(2_000)]
    [InlineData(20_000)]
    public void AtABound_NothingIsCalledProven(int steps)
    {
        var proposal = Of(ProposalCases.TwoOnOnOn, new ProposalRequest { MostSteps = steps });

        Assert.Equal(ProposalOutcome.Undecided, proposal.Outcome);
        Assert.InRange(proposal.AtLeast, 0, 10);
        Assert.True(proposal.Completed is null || proposal.Joints >= 10, $"{proposal.Joints} joints");
    }

    [Fact]
    public void FewerJointsThanTheLeast_AreImpossible()
    {
        Assert.Equal(ProposalOutcome.Impossible, Of(Wish, new ProposalRequest(MostJoints: 6)).Outcome);
        Assert.Equal(ProposalOutcome.Found, Of(Wish, new ProposalRequest(MostJoints: 7)).Outcome);
    }

    /// <summary>What is soldered on an open lug already stays, and costs nothing.</summary>
    [Fact]
    public void WiresThatAreThere_Stay()
    {
        var text = Wish.Replace("find", "wire bridge.hot to sel.A1 to sel.A2 yellow\nfind", StringComparison.Ordinal);

        var proposal = Of(text);

        Assert.Equal(ProposalOutcome.Found, proposal.Outcome);
        Assert.Contains(
            "wire bridge.hot to sel.A1 to sel.A2 yellow\n",
            proposal.Completed!.Content,
            StringComparison.Ordinal
        );
        Assert.Equal(5, proposal.Joints);
    }

    /// <summary>What is the same circuit takes as many joints.</summary>
    [Theory]
    [InlineData("neck", "forward")]
    [InlineData("sel", "a-lever")]
    [InlineData("vol", "zebra")]
    public void APartByAnotherName_TakesAsManyJoints(string name, string other) =>
        Assert.Equal(7, Of(RenamedIn(Wish, name, other)).Joints);

    [Fact]
    public void ClaimsInAnotherOrder_TakeAsManyJoints()
    {
        var lines = Wish.TrimEnd('\n').Split('\n');
        var claims = lines.Where(line => line.StartsWith("expect", StringComparison.Ordinal)).Reverse();
        var others = lines.Where(line => !line.StartsWith("expect", StringComparison.Ordinal));

        Assert.Equal(7, Of(string.Join('\n', others.Concat(claims)) + "\n").Joints);
    }

    [Fact]
    public void TwoRuns_GiveTheSameLines() =>
        Assert.Equal(string.Join('\n', Of(Wish).Lines), string.Join('\n', Of(Wish).Lines));

    [Theory]
    [InlineData("find    sel at tone.1", "", "nothing is to be found")]
    [InlineData("expect", "# expect", "nothing is claimed")]
    [InlineData("find    sel", "find    sle", "cannot be read")]
    [InlineData("neck.ground ", "neck.grund ", "cannot be read")]
    [InlineData("jack    out     mono", "", "cannot be read")]
    [InlineData("mono", "stereo\nfind out", "is a plug")]
    public void WhatCannotBeLookedFor_IsRefused(string was, string now, string why)
    {
        var proposal = Of(Wish.Replace(was, now, StringComparison.Ordinal));

        Assert.Equal(ProposalOutcome.Refused, proposal.Outcome);
        Assert.Contains(why, proposal.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void TooManyNets_AreRefused()
    {
        var pickups = string.Concat(Enumerable.Range(1, 8).Select(i => $"pickup p{i} single-coil\n"));

        var proposal = Of(pickups + Wish);

        Assert.Equal(ProposalOutcome.Refused, proposal.Outcome);
        Assert.Contains("nets", proposal.Why, StringComparison.Ordinal);
    }

    /// <summary>A coil that no joining lets be heard as it is claimed.</summary>
    [Fact]
    public void WhatIsSolderedInTheWay_IsSaid()
    {
        var proposal = Of(
            Wish.Replace(
                "sel=both:          bridge parallel neck",
                "sel=both:          bridge series neck",
                StringComparison.Ordinal
            )
        );

        Assert.Equal(ProposalOutcome.Impossible, proposal.Outcome);
        Assert.Contains("sel=both", proposal.Why, StringComparison.Ordinal);
    }

    /// <summary>Also where wires are there already, and where the circuit is wrong: an answer, or why there is none.</summary>
    [Theory]
    [MemberData(nameof(AllExamples))]
    public void EveryControlOfEveryExample_GivesAnAnswer(string path)
    {
        var text = File.ReadAllText(path);
        var circuit = Compilation.Of(new SourceText("whole.wiring", text), NoSources.Instance).Circuit;
        foreach (var control in circuit?.Controls ?? [])
        {
            var proposal = Of($"{text}\nfind {control.Name}\n", new ProposalRequest { MostSteps = 2_000 });

            Assert.True(
                (proposal.Outcome == ProposalOutcome.Found)
                    == (proposal.Completed is not null && proposal.AtLeast == proposal.Joints),
                control.Name
            );
            Assert.True(proposal.Outcome != ProposalOutcome.Refused || proposal.Why is not null, control.Name);
        }
    }

    /// <summary>Until the wires are there, claims are neither proved nor refuted.</summary>
    [Fact]
    public void Check_OfOpenLugs_SaysWhatIsToBeFound()
    {
        var compiled = Compilation.Of(new SourceText("wish.wiring", Wish), NoSources.Instance);

        var finding = Assert.Single(compiled.Findings);
        Assert.Equal(("to-be-found", Severity.Note), (finding.Id, finding.Severity));
    }

    private static Proposal Of(string text, ProposalRequest? request = null) =>
        Proposer.Of(
            Compilation.Of(new SourceText("open.wiring", text), NoSources.Instance),
            request ?? new ProposalRequest()
        );

    private static string RenamedIn(string text, string name, string other) =>
        System.Text.RegularExpressions.Regex.Replace(
            text,
            $@"(?<![\w-]){name}(?![\w-])",
            other,
            System.Text.RegularExpressions.RegexOptions.None,
            TimeSpan.FromSeconds(2)
        );
}
