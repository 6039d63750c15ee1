using System.Diagnostics;
using TrialKit.Cli.Output;

namespace TrialKit.Cli.Tests;

/// <summary>Runs the program as a pipe would see it: in this process, or the published program that the environment variable TRIALKIT_PROGRAM names.</summary>
internal static class Cli
{
    private static readonly string? Published = Environment.GetEnvironmentVariable("TRIALKIT_PROGRAM");

    /// <summary>The exit code and what was printed.</summary>
    public static (int Exit, string Out, string Error) Run(params string[] args) => Run(input: null, args);

    /// <summary>The same with someone who answers.</summary>
    public static (int Exit, string Out, string Error) Run(TextReader? input, params string[] args) =>
        Published is { Length: > 0 } && input is null ? OfProgram(Published, args) : InProcess(input, args);

    // Questions are asked at a terminal only; a program started here has none.
    private static (int Exit, string Out, string Error) InProcess(TextReader? input, string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var terminal = Terminal.To(output, error, input);
        var exit = CommandLine.Run(args, terminal);
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString());
    }

    private static (int Exit, string Out, string Error) OfProgram(string program, string[] args)
    {
        using var process = Process.Start(new ProcessStartInfo(program, args)
        {
            UseShellExecute = false,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.ReplaceLineEndings("\n"), error.GetAwaiter().GetResult().ReplaceLineEndings("\n"));
    }
}
