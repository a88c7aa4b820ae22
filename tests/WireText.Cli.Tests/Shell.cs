using System.Diagnostics;

namespace WireText.Cli.Tests;

/// <summary>Runs commands in a shell of POSIX; what they call wiretext is the program that the tests are built with.</summary>
internal sealed class Shell : IDisposable
{
    /// <summary>What takes longer waits for something that never comes.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(1);

    private readonly TestFolder tools = new();

    public Shell()
    {
        var program = tools.Put(
            "wiretext",
            $"#!/bin/sh\nexec dotnet '{typeof(CliProgram).Assembly.Location}' \"$@\"\n"
        );
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        }
    }

    /// <summary>Runs a command to its end.</summary>
    public ShellRan Run(string command, TestFolder folder, string within = ".")
    {
        Directory.CreateDirectory(folder[within]);
        using var process = Start(command, folder[within]);
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Longest))
        {
            process.Kill(entireProcessTree: true);
            Assert.Fail($"'{command}' did not end");
        }

        process.WaitForExit();
        return new ShellRan(process.ExitCode, output.Result, errors.Result);
    }

    /// <summary>Starts a command and leaves it running.</summary>
    public Process Start(string command, string workingFolder)
    {
        Skip.If(OperatingSystem.IsWindows(), "the commands are for a shell of POSIX");
        var start = new ProcessStartInfo("sh", ["-c", command])
        {
            WorkingDirectory = workingFolder,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["PATH"] = $"{tools.Root}:{Environment.GetEnvironmentVariable("PATH")}";
        return Process.Start(start) ?? throw new InvalidOperationException("The shell did not start.");
    }

    public void Dispose() => tools.Dispose();
}

/// <summary>What a command in a shell came to.</summary>
internal sealed record ShellRan(int Code, string Output, string Error);
