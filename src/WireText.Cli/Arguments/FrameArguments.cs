using System.CommandLine;
using WireText.Cli.Hosting;
using WireText.Frames;

namespace WireText.Cli.Arguments;

/// <summary>What frames are made of.</summary>
internal enum FrameKind
{
    Steps,
    Positions,
}

/// <summary>The folder, the kind and the size of the frames that were asked for.</summary>
internal sealed record FrameRequest(string Folder, FrameKind Kind, FrameSize Size);

/// <summary><c>--frames</c> and what goes with it: a picture for each step of the work, or for each position.</summary>
internal sealed class FrameArguments
{
    private readonly Option<string?> folder = new("--frames")
    {
        Description = "Write a PNG for each step of the work into a folder, for a video, and their list as frames.json",
        HelpName = "DIR",
    };
    private readonly ChoiceOption<FrameKind> kind = new(
        "--frames-of",
        "What the frames show: each step, or what is live in each position",
        ("steps", FrameKind.Steps),
        ("positions", FrameKind.Positions)
    );
    private readonly Option<string?> size = new("--frame-size")
    {
        Description = $"How large a frame is, in pixels ({FrameSize.FullHd})",
        HelpName = "WxH",
    };

    public void AddTo(Command command)
    {
        command.Add(folder);
        command.Add(kind);
        command.Add(size);
    }

    /// <summary>What was asked for; null for no frames.</summary>
    /// <param name="others">Options that have no meaning for frames.</param>
    /// <exception cref="CannotException">One of those is given too, or the size is none.</exception>
    public FrameRequest? In(ParseResult parsed, params ReadOnlySpan<Option> others)
    {
        if (parsed.GetValue(folder) is not { } path)
        {
            RefuseWithout(parsed);
            return null;
        }

        foreach (var other in others)
        {
            if (IsGiven(parsed, other))
            {
                throw new CannotException($"{other.Name} has no meaning for --frames; leave one of them out");
            }
        }

        return new FrameRequest(path, kind.In(parsed), SizeIn(parsed));
    }

    private void RefuseWithout(ParseResult parsed)
    {
        foreach (var option in new Option[] { kind, size })
        {
            if (IsGiven(parsed, option))
            {
                throw new CannotException($"{option.Name} is for --frames; name a folder with it");
            }
        }
    }

    private FrameSize SizeIn(ParseResult parsed)
    {
        if (parsed.GetValue(size) is not { } text)
        {
            return FrameSize.FullHd;
        }

        var read = FrameSize.Read(text);
        return read.Value ?? throw new CannotException($"--frame-size {text}: {read.Problem}");
    }

    private static bool IsGiven(ParseResult parsed, Option option) => parsed.GetResult(option) is { Implicit: false };
}
