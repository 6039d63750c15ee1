using System.CommandLine;
using System.Globalization;
using System.Text;
using TrialKit.Cli.Output;
using TrialKit.Comparison;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Html;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.PlainText;
using TrialKit.Reporting.Sheets.Teaching;
using TrialKit.Reporting.Sheets.Teaching.Explained;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit teach</c>: a sheet for the class, its key, and the data as a trial folder.</summary>
internal sealed class TeachCommand
{
    private const string First = "first";
    private const string Second = "second";

    private readonly Argument<string?> topic = new("TOPIC") { Description = "What the sheet is about; without it the topics are listed.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<ulong> seed = new("--seed") { Description = "The seed its numbers are drawn with; the same seed gives the same sheet. 1 when not given.", HelpName = "N", DefaultValueFactory = _ => 1 };
    private readonly Option<string> level = new("--level") { Description = "first: few data and a table that leads through the working; second: more data, or questions further on. The list of topics says which.", HelpName = "LEVEL", DefaultValueFactory = _ => First };
    private readonly Option<string?> output = new("--output", "-o") { Description = "The folder to write student.pdf, key.pdf, the same as .html, and the trial folder 'trial' into; TOPIC-SEED when not given. With --explain a file: its ending, .pdf, .html or .txt, says what it becomes.", HelpName = "DIR" };
    private readonly Option<string?> explain = new("--explain") { Description = "In place of a sheet: work the comparison of the real trial in this folder step by step, from strip values to interval and p.", HelpName = "FOLDER" };
    private readonly Option<string?> measure = new("--measure") { Description = "With --explain, the measure, by its name in the table 'comparisons', such as stand; the trial's first when not given.", HelpName = "NAME" };
    private readonly Option<string?> paper = CommonOptions.Paper();
    private readonly Option<bool> quiet = CommonOptions.Quiet();
    private readonly Terminal terminal;

    private TeachCommand(Terminal terminal) => this.terminal = terminal;

    public static Command Create(Terminal terminal)
    {
        var made = new TeachCommand(terminal);
        made.level.AcceptOnlyFromAmong(First, Second);
        var command = new Command("teach", "Write a teaching sheet with a worked key, from data whose truth is known: student.pdf, key.pdf, the same as HTML, and the data as a trial folder; or, with --explain, a real trial's comparison worked step by step.")
        {
            made.topic, made.seed, made.level, made.output, made.explain, made.measure, made.paper, made.quiet,
        };
        command.SetAction(made.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var name = parsed.GetValue(topic);
        if (parsed.GetValue(explain) is { } real)
        {
            return name is null ? Explain(parsed, real) : throw new UsageException($"--explain works a trial, and '{name}' asks for a sheet; one of the two was expected.");
        }

        if (parsed.GetValue(measure) is not null)
        {
            throw new UsageException("--measure goes with --explain FOLDER.");
        }

        if (name is null)
        {
            List();
            return ExitCode.Done;
        }

        return Sheet(parsed, name);
    }

    private int Sheet(ParseResult parsed, string name)
    {
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

    private int Explain(ParseResult parsed, string folder)
    {
        var target = parsed.GetValue(output);
        var render = target is null ? null : Renderer(target);
        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (TrialFolder.ToAnalyse(reading, terminal) is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Analysing {folder}");
        var analysis = TrialAnalysis.Of(trial);
        var document = WorkedComparison.Of(analysis, Measure(analysis, parsed.GetValue(measure)), CommonOptions.PaperOf(parsed.GetValue(paper), trial.Units), TrialFolder.Inputs(reading));
        if (target is null || render is null)
        {
            terminal.Out.Write(TextReport.Render(document));
            return ExitCode.Done;
        }

        terminal.Step($"Writing {target}");
        var bytes = render(document);
        WholeFile.Write(target, stream => stream.Write(bytes));
        if (!parsed.GetValue(quiet))
        {
            terminal.Out.WriteLine($"Wrote {target}");
        }

        return ExitCode.Done;
    }

    private static MeasureComparison Measure(TrialAnalysis analysis, string? id)
    {
        var known = string.Join(", ", analysis.Measures.Select(each => each.Measure.Id));
        return id is null
            ? analysis.Measures.FirstOrDefault(each => each.Contrasts.Any(contrast => contrast.P is not null)) ?? analysis.Measures.FirstOrDefault() ?? throw new UsageException("the trial has no measure that could be compared.")
            : analysis.Measures.FirstOrDefault(each => Identifier.Same(each.Measure.Id, id)) ?? throw new UsageException($"the trial has no measure '{id}'; one of {known} was expected.");
    }

    private static Func<ReportDocument, byte[]> Renderer(string file) => Path.GetExtension(file).ToUpperInvariant() switch
    {
        ".PDF" => document => PdfReport.Render(document),
        ".HTML" or ".HTM" => HtmlReport.Render,
        ".TXT" => document => Encoding.UTF8.GetBytes(TextReport.Render(document)),
        _ => throw new UsageException($"'{file}' is no name of a PDF, HTML or text file; a name that ends in .pdf, .html or .txt was expected."),
    };

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
