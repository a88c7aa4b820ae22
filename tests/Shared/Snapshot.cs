using Snapshooter.Xunit;

namespace WireText.Testing;

/// <summary>The one place that knows the snapshot library.</summary>
internal static class Snap
{
    /// <summary>Compares a text with <c>__snapshots__/NAME</c> beside the test; accept a change with <c>.ci/accept</c>.</summary>
    public static void Match(string actual, string name) => Snapshot.Match(actual, name);
}
