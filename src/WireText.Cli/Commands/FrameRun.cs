using System.Globalization;
using System.Text;
using WireText.Building;
using WireText.Circuits;
using WireText.Cli.Arguments;
using WireText.Cli.Hosting;
using WireText.Cli.Running;
using WireText.Cli.Settings;
using WireText.Cli.Storage;
using WireText.Drawing.Layout;
using WireText.Drawing.Lettering;
using WireText.Frames;
using WireText.Output;
using WireText.Raster;

namespace WireText.Cli.Commands;

/// <summary>Draws the frames of a video into a folder.</summary>
internal sealed class FrameRun(CliContext context, FrameRequest request, LayoutEffort effort, Theme theme)
{
    /// <param name="png">What of it is for frames: whether they have a background.</param>
    public int Of(string file, FolderSources sources, PngOptions png)
    {
        var source = context.Sources.Read(file, SourceRole.Wiring);
        var settings = new SettingsFiles(context.Host, context.Sources).For(file);
        var compiled = Compilation.Of(source.Text, sources, settings: settings);
        var findings = compiled.Findings.AddRange(compiled.DrawingFindings);
        FindingText.Write(findings, context.Error);
        if (compiled.Circuit is not { Parts.IsEmpty: false } circuit || compiled.HasErrors)
        {
            throw new CannotException("a video is made of a right circuit: mend what is found first");
        }

        var plan = compiled.PlanFor(effort) ?? throw new CannotException("the circuit is too large to draw");
        Write(SequenceOf(compiled, circuit, plan), circuit, png);
        return ExitCode.For(findings, isStrict: false);
    }

    private FrameSequence SequenceOf(Compilation compiled, Circuit circuit, Plan plan)
    {
        if (request.Kind == FrameKind.Positions)
        {
            var study = compiled.Study ?? throw new CannotException("the circuit has no output jack to listen at");
            var positions = PositionViews.Of(circuit, study);
            Refuse(positions.Length, "positions");
            return FrameSequence.OfPositions(circuit, positions, plan.Faces, plan.Layout, theme, request.Size);
        }

        var order = compiled.BaseCircuit is { } stock ? WorkOrder.Between(stock, circuit) : WorkOrder.Of(circuit);
        Refuse(order.Steps.Length, "steps");
        return FrameSequence.OfSteps(circuit, order, plan.Faces, plan.Layout, theme, request.Size);
    }

    private static void Refuse(int count, string what)
    {
        if (count is 0 or > FrameSequence.Most)
        {
            throw new CannotException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"the circuit has {count} {what}; a video has from 1 to {FrameSequence.Most} frames"
                )
            );
        }
    }

    /// <summary>The list first: it tells which files are ours if the run is stopped.</summary>
    private void Write(FrameSequence sequence, Circuit circuit, PngOptions png)
    {
        var folder = new FrameFolder(context.Sources, request.Folder);
        var left = folder.Prepare(sequence.Frames.Select(frame => frame.FileName));
        context.Results.Write(
            folder.PathOf(FrameFolder.ListName),
            Encoding.UTF8.GetBytes(FramesJson.Write(sequence, circuit.Title))
        );
        var options = png with { WidthPixels = request.Size.Width };
        var drawn = sequence
            .Frames.AsParallel()
            .AsOrdered()
            .Select(frame => (frame.FileName, Bytes: PngRenderer.Render(SvgWriter.Write(frame.Picture), options)));
        foreach (var (name, bytes) in drawn)
        {
            context.Results.Write(folder.PathOf(name), bytes);
        }

        foreach (var name in left)
        {
            context.Error.WriteLine($"{folder.PathOf(name)} is of an earlier run, and no frame of this one");
        }

        var seconds = sequence.Frames.Sum(frame => frame.Seconds);
        context.Error.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{request.Folder}: {sequence.Frames.Length} frames and {FrameFolder.ListName} are written, {seconds:0.#} s if each stands as long as it says"
            )
        );
    }
}
