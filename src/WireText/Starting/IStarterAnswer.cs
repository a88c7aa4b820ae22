namespace WireText.Starting;

/// <summary>One of the answers to what is asked before a wiring is begun.</summary>
public interface IStarterAnswer
{
    /// <summary>How it is given.</summary>
    string Word { get; }

    /// <summary>What comes of it.</summary>
    string Meaning { get; }
}
