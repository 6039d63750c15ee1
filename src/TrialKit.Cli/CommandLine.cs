using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using TrialKit.Cli.Commands;
using TrialKit.Cli.Output;

namespace TrialKit.Cli;

/// <summary>Turns arguments into a command's run and whatever goes wrong into an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    /// <param name="args">The arguments.</param>
    /// <param name="terminal">Where to print.</param>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        var parsed = Root(terminal).Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                terminal.Error.WriteLine($"trialkit: {Words(error)}");
            }

            terminal.Error.WriteLine($"Run '{Words(parsed.CommandResult.Command)} --help' to see what it takes.");
            return ExitCode.Usage;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = terminal.Out, Error = terminal.Error });
        }
        catch (UsageException usage)
        {
            terminal.Error.WriteLine($"trialkit: {usage.Message}");
            return ExitCode.Usage;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            terminal.Error.WriteLine($"trialkit: {failure.Message}");
            return ExitCode.Failure;
        }
#pragma warning disable CA1031 // The last line of defence: whatever else goes wrong is a defect and is said to be one.
        catch (Exception defect)
#pragma warning restore CA1031
        {
            terminal.Error.WriteLine($"trialkit: this is a defect of the program, not of the data: {defect}");
            return ExitCode.Failure;
        }
    }

    // A plain command, since the root's name would be that of the assembly.
    private static Command Root(Terminal terminal) =>
        new("trialkit", "Analyses side-by-side strip trials of crop emergence: did the stand come up sooner and more evenly? Exit codes of every command: 0 done, 1 the data have errors (all listed on standard error), 2 the command line is wrong, 3 the program failed.")
        {
            new HelpOption(),
            new VersionOption(),
            NewCommand.Create(terminal),
            PlanCommand.Create(terminal),
            ReplicatesCommand.Create(terminal),
            SheetsCommand.Create(terminal),
            CheckCommand.Create(terminal),
            AnalyzeCommand.Create(terminal),
            ReportCommand.Create(terminal),
            FiguresCommand.Create(terminal),
            ReplantCommand.Create(terminal),
            CollectCommand.Create(terminal),
            PoolCommand.Create(terminal),
            ForecastCommand.Create(terminal),
            HeatCommand.Create(terminal),
            StarterCommand.Create(terminal),
            TeachCommand.Create(terminal),
        };

    // The parser names the type of a value it cannot read as the runtime does.
    private static string Words(ParseError error)
    {
        if (error.SymbolResult is not OptionResult { Option: var option, Tokens: [var token, ..] } || !error.Message.Contains("type 'System.", StringComparison.Ordinal))
        {
            return error.Message;
        }

        var expected = Nullable.GetUnderlyingType(option.ValueType) ?? option.ValueType;
        return $"{option.Name} is '{token.Value}'; {(expected == typeof(double) ? "a number" : expected == typeof(int) || expected == typeof(long) ? "a whole number" : "another value")} was expected.";
    }

    private static string Words(Command command) => command.Name == "trialkit" ? command.Name : $"trialkit {command.Name}";
}
