using System.Collections.Immutable;
using System.CommandLine;

namespace WireText.Cli.Describing;

/// <summary>Commands that serve one part of the job, in the order in which the help lists them.</summary>
/// <param name="Heading">What they are for.</param>
internal sealed record CommandGroup(string Heading, ImmutableArray<Command> Commands);
