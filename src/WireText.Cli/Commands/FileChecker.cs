using System.Collections.Immutable;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Output;
using WireText.Text;

namespace WireText.Cli.Commands;

/// <summary>Checks files, several at once; the outcomes come in the order of the files, whichever was done first.</summary>
/// <param name="withHarmless">Also what does no harm.</param>
/// <param name="isMending">Whether what is certain is mended in the files.</param>
internal sealed class FileChecker(CliContext context, FolderSources sources, bool withHarmless, bool isMending)
{
    private readonly SettingsFiles settings = new(context.Host, context.Sources);

    /// <param name="jobs">How many files are checked at once.</param>
    public FileOutcome[] Check(ImmutableArray<FoundFile> files, int jobs)
    {
        var outcomes = new FileOutcome[files.Length];
        var progress = new Progress(context, files.Length);
        // Standard input has one reader, and a file that is given twice must not be written by two.
        if (jobs == 1 || files.Length == 1 || isMending || files.Any(file => file.Path == StandardStream.Name))
        {
            for (var i = 0; i < files.Length; i++)
            {
                CheckAt(i);
            }
        }
        else
        {
            Parallel.For(0, files.Length, new ParallelOptions { MaxDegreeOfParallelism = jobs }, CheckAt);
        }

        progress.Clear();
        return outcomes;

        void CheckAt(int i)
        {
            outcomes[i] = CheckOne(files[i]);
            progress.CountOne();
        }
    }

    private FileOutcome CheckOne(FoundFile file)
    {
        try
        {
            return isMending ? Mend(file) : Look(file);
        }
        catch (CannotException e)
        {
            return new FileRefused(e.Message);
        }
    }

    private FileChecked Look(FoundFile file)
    {
        var source = context.Sources.Read(file.Path, file.Role);
        return Outcome(source.Text.Path, Compile(source.Text, file), mended: 0);
    }

    private FileChecked Mend(FoundFile file)
    {
        if (file.Path == StandardStream.Name)
        {
            throw new CannotException("standard input cannot be mended: there is no file to write");
        }

        var source = context.Sources.Read(file.Path, file.Role);
        var result = Mender.Mend(Compile(source.Text, file));
        if (!result.Mended.IsEmpty)
        {
            context.Results.Replace(source, result.Source.Content);
        }

        return Outcome(source.Text.Path, result.Left, result.Mended.Length);
    }

    private Compilation Compile(SourceText text, FoundFile file) =>
        Compilation.Of(text, sources, withHarmless, settings.For(file.Path));

    private static FileChecked Outcome(string path, Compilation result, int mended) =>
        new(
            new CheckedFile(path, result.Findings) { Allowed = result.Allowed, Waiting = result.Waiting },
            mended,
            IsUnpinned: !result.HasErrors
                && result.Circuit is { Expectations.IsEmpty: true } circuit
                && !circuit.Outputs.IsEmpty
        );
}
