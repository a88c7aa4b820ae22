using System.Collections.Immutable;
using WireText.Checks;
using WireText.Checks.Repairs;
using WireText.Circuits;
using WireText.Electrical.Studies;
using WireText.Text;

namespace WireText.Tests.Checks;

/// <summary>What the checks make of a circuit that has no text of its own.</summary>
internal static class Checked
{
    public static CheckContext Context(Circuit circuit) => CheckContext.Of(circuit, Study.Of(circuit));

    /// <summary>What stands, and no repair looked for.</summary>
    public static CheckReport Report(Circuit circuit) => Report(circuit, CheckList.Usual);

    /// <param name="study">Of the circuit or a twin of it.</param>
    public static CheckReport Report(Circuit circuit, Study study) =>
        Checker.Examine(circuit, study, new CheckRequest(CheckList.Usual, CheckSettings.Standard));

    public static CheckReport Report(Circuit circuit, ImmutableArray<ICheck> checks) =>
        Checker.Examine(circuit, Study.Of(circuit), new CheckRequest(checks, CheckSettings.Standard));

    /// <summary>What stands, with the repair told.</summary>
    public static CheckReport Advised(Circuit circuit, bool withHarmless = false)
    {
        var study = Study.Of(circuit);
        var report = Checker.Examine(circuit, study, CheckRequest.Of(withHarmless, settings: null));
        var repairs = study is null ? null : RepairAdvice.Search(circuit, study, report, CheckSettings.Standard);
        return RepairAdvice.AddTo(report, circuit, repairs);
    }

    public static ImmutableArray<Finding> Findings(Circuit circuit, bool withHarmless = false) =>
        Advised(circuit, withHarmless).Findings;
}
