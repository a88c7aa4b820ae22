using WireText.Text;

namespace WireText.Checks;

/// <summary>One thing that can be wrong with a circuit, and how to see it.</summary>
public interface ICheck
{
    CheckDescription Description { get; }

    /// <summary>What is wrong, one finding for each cause, in the order of declaration.</summary>
    IEnumerable<Finding> Find(CheckContext context);
}
