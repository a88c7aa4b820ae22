using WireText.Text;

namespace WireText.Checks;

/// <summary>One thing that can be wrong with a circuit, and how to see it.</summary>
public interface ICheck
{
    CheckDescription Description { get; }

    /// <summary>What is wrong, one finding for each cause, in the order of declaration.</summary>
    IEnumerable<Finding> Find(CheckContext context);
}

/// <summary>A check that needs what the electrical stage found out: it is silent where there is no output jack to look from.</summary>
public interface IStudyCheck : ICheck
{
    IEnumerable<Finding> ICheck.Find(CheckContext context) => context is StudyContext studied ? Find(studied) : [];

    IEnumerable<Finding> Find(StudyContext context);
}

/// <summary>A check of what comes to a jack: where several are wired it looks from each, and what is wrong at one is wrong.</summary>
public interface IJackCheck : IStudyCheck
{
    IEnumerable<Finding> ICheck.Find(CheckContext context) =>
        context is StudyContext studied ? JackFindings.AtEach(studied, jack => Find(jack)) : [];
}

/// <summary>A check of what comes to no jack: where several are wired, only what is so at each of them is wrong.</summary>
public interface IEveryJackCheck : IStudyCheck
{
    IEnumerable<Finding> ICheck.Find(CheckContext context) =>
        context is StudyContext studied ? JackFindings.AtAll(studied, jack => Find(jack)) : [];
}
