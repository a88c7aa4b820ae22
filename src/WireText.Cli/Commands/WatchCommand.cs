using System.CommandLine;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Serving;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Drawing.Layout;

namespace WireText.Cli.Commands;

/// <summary><c>wiretext watch</c></summary>
internal sealed class WatchCommand : Command
{
    private readonly Argument<string> file = new("FILE") { Description = "A wiring file" };
    private readonly Option<bool> open = new("--open") { Description = "Open the address in the browser" };
    private readonly ChoiceOption<LayoutEffort> effort = CommonOptions.Effort();
    private readonly PartsOption parts = new();

    public WatchCommand(CliContext context)
        : base(
            "watch",
            """
            Shows a wiring in the browser while its text is written: the picture, what is found and what each position does
            follow each save, of the files that it includes and stands on too. Prints the address, which this machine alone
            can open. Ends with Ctrl-C.

            Example: wiretext watch guitar.wiring --open
            """
        )
    {
        Add(file);
        Add(open);
        Add(effort);
        Add(parts);
        SetAction(parsed => Run(context, parsed));
    }

    private int Run(CliContext context, ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(file);
        if (path == StandardStream.Name)
        {
            throw new CannotException("standard input cannot be watched: name a file");
        }

        using var follower = new FileFollower();
        var source = new WatchedSource(path, context.Sources, follower);
        var name = source.Read().Name;
        var settings = new SettingsFiles(context.Host, context.Sources).For(path);
        var sources = parts.In(parsed, context.Sources).FollowedBy(follower);
        var feed = new LiveFeed();
        var ending = context.Host.Ending;
        using var server = new PageServer(feed, ending);
        Tell(context, path, server.Address, parsed.GetValue(open));
        new WatchRun(source, follower, feed).Follow(new LiveWiring(sources, settings, effort.In(parsed), name), ending);
        return ExitCode.Right;
    }

    private static void Tell(CliContext context, string path, string address, bool opens)
    {
        context.Output.WriteLine(address);
        context.Output.Flush();
        context.Tell(
            opens
                ? $"watching {path}; Ctrl-C ends it"
                : $"watching {path}; open the address in a browser on this machine; Ctrl-C ends it"
        );
        context.Error.Flush();
        if (!opens)
        {
            return;
        }

        try
        {
            context.Host.OpenInBrowser(address);
        }
        catch (IOException e)
        {
            context.Tell($"{e.Message}; open the address yourself");
            context.Error.Flush();
        }
    }
}
