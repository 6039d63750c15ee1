using System.CommandLine;
using System.Globalization;
using System.Text;
using TrialKit.Cli.Output;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Sheets.Teaching;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit teach</c>: a sheet for the class, its key, and the data as a trial folder.</summary>
internal sealed class TeachCommand
{
    private const string First = "first";
    private const string Second = "second";

    private readonly Argument<string?> topic = new("TOPIC") { Description = "What the sheet is about; without it the topics are listed.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<ulong> seed = new("--seed") { Description = "The seed its numbers are drawn with; the same seed gives the same sheet. 1 when not given.", HelpName = "N", DefaultValueFactory = _ => 1 };
    private readonly Option<string> level = new("--level") { Description = "first: few data and a table that leads through the working; second: more data, or questions further on. The list of topics says which.", HelpName = "LEVEL", DefaultValueFactory = _ => First };
    private readonly Option<string?> output = new("--output", "-o") { Description = "The folder to write student.pdf, key.pdf, the same as .html, and the trial folder 'trial' into; TOPIC-SEED when not given.", HelpName = "DIR" };
    private readonly Option<string?> paper = CommonOptions.Paper();
    private readonly Option<bool> quiet = CommonOptions.Quiet();
    private readonly Terminal terminal;

    private TeachCommand(Terminal terminal) => this.terminal = terminal;

    public static Command Create(Terminal terminal)
    {
        var made = new TeachCommand(terminal);
        made.level.AcceptOnlyFromAmong(First, Second);
        var command = new Command("teach", "Write a teaching sheet with a worked key, from data whose truth is known: student.pdf, key.pdf, the same as HTML, and the data as a trial folder.")
        {
            made.topic, made.seed, made.level, made.output, made.paper, made.quiet,
        };
        command.SetAction(made.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        if (parsed.GetValue(topic) is not { } name)
        {
            List();
            return ExitCode.Done;
        }

        var found = ExerciseTopics.Find(name) ?? throw new UsageException($"there is no topic '{name}'; one of {string.Join(", ", ExerciseTopics.All.Select(each => each.Id))} was expected.");
        var drawn = parsed.GetValue(seed);
        var exercise = found.Make(drawn, parsed.GetValue(level) == Second ? ExerciseLevel.Second : ExerciseLevel.First);
        var folder = parsed.GetValue(output) ?? string.Create(CultureInfo.InvariantCulture, $"{found.Id}-{drawn}");
        TrialFolder.KeepTrials(folder);
        var trial = Path.Combine(folder, "trial");
        KeepOthers(trial, exercise);
        terminal.Step($"Writing {folder}");
        var size = CommonOptions.PaperOf(parsed.GetValue(paper), UnitSystem.Us);
        Write(Path.Combine(folder, "student"), exercise.Student(size));
        Write(Path.Combine(folder, "key"), exercise.Key(size));
        foreach (var file in exercise.Paper.Files)
        {
            WholeFile.Write(Path.Combine(trial, file.Name), stream => stream.Write(Encoding.UTF8.GetBytes(file.Text)));
        }

        if (!parsed.GetValue(quiet))
        {
            terminal.Out.WriteLine($"Wrote student.pdf, key.pdf, the same as .html, and the trial folder {trial}.");
        }

        return ExitCode.Done;
    }

    private void List()
    {
        foreach (var each in ExerciseTopics.All)
        {
            terminal.WriteHeading(each.Id);
            terminal.WriteWrapped(string.Create(CultureInfo.InvariantCulture, $"{each.Title}; about {each.Minutes} minutes."), indent: 2);
            terminal.WriteWrapped($"first: {each.First}", indent: 2);
            terminal.WriteWrapped($"second: {each.Second}", indent: 2);
        }
    }

    /// <summary>Refuses to write over a trial that is not this exercise's.</summary>
    private static void KeepOthers(string trial, Exercise exercise)
    {
        foreach (var file in exercise.Paper.Files.Select(file => (Path: Path.Combine(trial, file.Name), file.Text)))
        {
            if (File.Exists(file.Path) && File.ReadAllText(file.Path) != file.Text)
            {
                throw new UsageException($"'{file.Path}' is there already and holds something else; name another folder for the output.");
            }
        }
    }

    private static void Write(string path, ReportDocument document)
    {
        var pdf = PdfReport.Render(document);
        WholeFile.Write(path + ".pdf", stream => stream.Write(pdf));
        var html = HtmlReport.Render(document);
        WholeFile.Write(path + ".html", stream => stream.Write(html));
    }
}
