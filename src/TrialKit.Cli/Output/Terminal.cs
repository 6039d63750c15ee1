using System.Text;
using Spectre.Console;

namespace TrialKit.Cli.Output;

/// <summary>Where a command prints: results to one writer, problems and progress to the other.</summary>
internal sealed class Terminal : IDisposable
{
    /// <summary>Columns assumed when the output is not a screen.</summary>
    public const int PlainWidth = 80;

    private const int MinimumWidth = 20;
    private readonly Progress progress;

    private Terminal(TextWriter output, TextWriter error, IAnsiConsole console, bool showsProgress)
    {
        Out = output;
        Error = error;
        Console = console;
        progress = new Progress(showsProgress ? error : TextWriter.Null);
    }

    /// <summary>Where answers come from; null where nobody can be asked.</summary>
    public TextReader? In { get; private init; }

    /// <summary>Standard output.</summary>
    public TextWriter Out { get; }

    /// <summary>Standard error.</summary>
    public TextWriter Error { get; }

    /// <summary>Standard output for tables; tones are dropped where the screen has none, NO_COLOR is set or the output is a pipe.</summary>
    public IAnsiConsole Console { get; }

    /// <summary>The terminal of this process.</summary>
    public static Terminal OfProcess()
    {
        var redirected = System.Console.IsOutputRedirected;
        var console = Create(System.Console.Out, redirected ? AnsiSupport.No : AnsiSupport.Detect);
        if (redirected)
        {
            console.Profile.Width = PlainWidth;
        }

        return new(System.Console.Out, System.Console.Error, console, showsProgress: !System.Console.IsErrorRedirected)
        {
            In = System.Console.IsInputRedirected ? null : System.Console.In,
        };
    }

    /// <summary>A terminal that prints to two writers, as a pipe would take it.</summary>
    public static Terminal To(TextWriter output, TextWriter error, TextReader? input = null)
    {
        var console = Create(output, AnsiSupport.No);
        console.Profile.Width = PlainWidth;
        return new(output, error, console, showsProgress: false) { In = input };
    }

    /// <summary>Prints a line that stands out.</summary>
    public void WriteHeading(string text) => Console.Write(new Text(text + Environment.NewLine, new Style(decoration: Decoration.Bold)));

    /// <summary>Prints a text broken at its breaking spaces to the screen's width, set in by some columns.</summary>
    public void WriteWrapped(string text, int indent)
    {
        var width = Math.Max(MinimumWidth, Console.Profile.Width - indent);
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.Replace('\u00A0', ' ')))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                Out.WriteLine(new string(' ', indent) + line);
                line.Clear();
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        Out.WriteLine(new string(' ', indent) + line);
    }

    /// <summary>Says on a screen what is being done, once it has taken more than a second.</summary>
    public void Step(string doing) => progress.Step(doing);

    /// <summary>Says on a screen how many trials are done, every other second.</summary>
    public void Step(int done, int all) => progress.Step(done, all);

    /// <inheritdoc/>
    public void Dispose() => progress.Dispose();

    private static IAnsiConsole Create(TextWriter output, AnsiSupport ansi) =>
        AnsiConsole.Create(new AnsiConsoleSettings { Out = new AnsiConsoleOutput(output), Ansi = ansi, Interactive = InteractionSupport.No });
}
