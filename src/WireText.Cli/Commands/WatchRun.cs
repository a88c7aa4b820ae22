using WireText.Cli.Hosting;
using WireText.Cli.Serving;
using WireText.Cli.Storage;

namespace WireText.Cli.Commands;

/// <summary>Tells the pages of each save, until it is told to end.</summary>
internal sealed class WatchRun(WatchedSource source, FileFollower follower, LiveFeed feed)
{
    private const string Picture = "picture";
    private const string Figures = "figures";

    /// <summary>An editor may take a file away before it puts the new one there. Chosen: nobody sees it, and no editor takes as long.</summary>
    private const int GraceMilliseconds = 150;

    private const int AsLongAsItTakes = -1;

    public void Follow(LiveWiring wiring, CancellationToken ending)
    {
        try
        {
            while (!ending.IsCancellationRequested)
            {
                var changed = follower.Begin();
                if (ShowPicture(wiring, ending))
                {
                    ShowFigures(wiring, changed, ending);
                    follower.WaitForChange(AsLongAsItTakes, ending);
                }
            }
        }
        catch (OperationCanceledException) when (ending.IsCancellationRequested)
        {
            // It was told to end in the middle of its work.
        }
    }

    /// <returns>False where the file is to be read once more first.</returns>
    private bool ShowPicture(LiveWiring wiring, CancellationToken ending)
    {
        try
        {
            var told = wiring.Show(source.Read().Text, ending);
            feed.Publish(Picture, told, ends: wiring.AwaitsFigures ? Figures : null);
            return true;
        }
        catch (CannotException e)
        {
            if (follower.WaitForChange(GraceMilliseconds, ending))
            {
                return false;
            }

            feed.Publish(Picture, wiring.Keep(source.Path, e.Message));
            return true;
        }
    }

    /// <summary>A save meanwhile makes them worthless: they are given up.</summary>
    private void ShowFigures(LiveWiring wiring, CancellationToken changed, CancellationToken ending)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(changed, ending);
        try
        {
            if (wiring.AwaitsFigures)
            {
                feed.Publish(Figures, wiring.TellFigures(either.Token));
            }
        }
        catch (OperationCanceledException) when (changed.IsCancellationRequested && !ending.IsCancellationRequested)
        {
            // The next picture comes with its own.
        }
    }
}
