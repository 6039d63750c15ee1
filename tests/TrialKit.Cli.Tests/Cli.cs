using TrialKit.Cli.Output;

namespace TrialKit.Cli.Tests;

/// <summary>Runs the program in this process, as a pipe would see it.</summary>
internal static class Cli
{
    /// <summary>The exit code and what was printed.</summary>
    public static (int Exit, string Out, string Error) Run(params string[] args) => Run(input: null, args);

    /// <summary>The same with someone who answers.</summary>
    public static (int Exit, string Out, string Error) Run(TextReader? input, params string[] args)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        using var terminal = Terminal.To(output, error, input);
        var exit = CommandLine.Run(args, terminal);
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString());
    }
}
