using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Ingest;
using TrialKit.Planning;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit new</c>: a folder with a commented <c>trial.toml</c> and empty tables.</summary>
internal sealed class NewCommand
{
    private readonly Argument<string> folder = new("FOLDER") { Description = "The folder to make; it must not hold a trial yet." };
    private readonly Option<string?> title = new("--title") { Description = "The trial's title.", HelpName = "TEXT" };
    private readonly Option<string?> crop = new("--crop") { Description = "The crop.", HelpName = "NAME" };
    private readonly Option<string?> question = new("--question") { Description = "The question it asks.", HelpName = "TEXT" };
    private readonly Option<string?> treatments = new("--treatments") { Description = "The treatments, the control first, such as none,chains.", HelpName = "A,B" };
    private readonly Option<string?> planted = new("--planted") { Description = "The planting date.", HelpName = "DATE" };
    private readonly Option<string?> spacing = new("--row-spacing") { Description = "Distance between rows, such as \"30 in\".", HelpName = "LENGTH" };
    private readonly Option<string?> rate = new("--seeding-rate") { Description = "Seeds dropped, such as \"34000 seeds/ac\".", HelpName = "RATE" };
    private readonly Option<string?> rows = new("--planter-rows") { Description = "Rows of the planter.", HelpName = "N" };
    private readonly Option<string?> length = new("--length") { Description = "Length of the strips, such as \"1180 ft\".", HelpName = "LENGTH" };
    private readonly Option<string?> replicates = new("--replicates") { Description = "Pairs or blocks.", HelpName = "N" };
    private readonly Option<string?> units = new("--units") { Description = "Units printed: us or metric; us when not given.", HelpName = "UNITS" };
    private readonly Option<bool> quiet = CommonOptions.Quiet();
    private readonly Terminal terminal;

    private NewCommand(Terminal terminal) => this.terminal = terminal;

    public static Command Create(Terminal terminal)
    {
        var made = new NewCommand(terminal);
        made.units.AcceptOnlyFromAmong("us", "metric");
        var command = new Command("new", "Make a trial folder: a trial.toml with comments and empty tables. What no option says is asked.")
        {
            made.folder, made.title, made.crop, made.question, made.treatments, made.planted, made.spacing, made.rate, made.rows, made.length, made.replicates, made.units, made.quiet,
        };
        command.SetAction(made.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(folder);
        var metric = parsed.GetValue(units) == "metric";
        var trial = new NewTrial
        {
            Title = Answer(parsed, title, "Title of the trial", "Drag chains, north field"),
            Crop = Answer(parsed, crop, "Crop", "corn"),
            Question = Answer(parsed, question, "The question it asks", "Do chains bring the stand up sooner?"),
            Treatments = Names(Answer(parsed, treatments, "Treatments, the control first, with commas", "none,chains")),
            Planted = Date(Answer(parsed, planted, "Planting date", "2026-05-04")),
            RowSpacing = Answer(parsed, spacing, "Row spacing", metric ? "75 cm" : "30 in"),
            SeedingRate = Answer(parsed, rate, "Seeding rate", metric ? "80000 seeds/ha" : "34000 seeds/ac"),
            PlanterRows = Whole(Answer(parsed, rows, "Rows of the planter", "8"), rows.Name),
            StripLength = Answer(parsed, length, "Length of the strips", metric ? "360 m" : "1180 ft"),
            Replicates = Whole(Answer(parsed, replicates, "Pairs or blocks", "6"), replicates.Name),
            Units = metric ? UnitSystem.Metric : UnitSystem.Us,
        };
        var files = trial.Files().ToArray();
        if (files.FirstOrDefault(file => File.Exists(Path.Combine(path, file.File))) is { File: { } taken })
        {
            throw new UsageException($"'{Path.Combine(path, taken)}' is there already; a folder without a trial was expected.");
        }

        foreach (var problem in Problems(files))
        {
            throw new UsageException($"{problem.Found}; {problem.Expected}");
        }

        foreach (var (file, text) in files)
        {
            WholeFile.Write(Path.Combine(path, file), stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(text)));
        }

        if (!parsed.GetValue(quiet))
        {
            terminal.Out.WriteLine($"Wrote {files.Length.ToString(CultureInfo.InvariantCulture)} files into {path}. Read trial.toml, then: trialkit plan {path}");
        }

        return ExitCode.Done;
    }

    /// <summary>What a reading of the files would say against them: an answer that is none is refused before anything is written.</summary>
    private static IEnumerable<Problem> Problems((string File, string Text)[] files)
    {
        var trial = Directory.CreateTempSubdirectory("trialkit-new-");
        try
        {
            foreach (var (file, text) in files)
            {
                File.WriteAllText(Path.Combine(trial.FullName, file), text);
            }

            return [.. TrialReader.Read(trial.FullName).Errors];
        }
        finally
        {
            trial.Delete(recursive: true);
        }
    }

    private string Answer(ParseResult parsed, Option<string?> option, string prompt, string example)
    {
        if (parsed.GetValue(option) is { } given)
        {
            return given.Trim().Length > 0 ? given.Trim() : throw new UsageException($"{option.Name} is empty; something such as '{example}' was expected.");
        }

        if (terminal.In is null)
        {
            throw new UsageException($"{option.Name} is missing, and nobody can be asked; something such as {option.Name} \"{example}\" was expected.");
        }

        while (true)
        {
            terminal.Out.Write($"{prompt} (such as {example}): ");
            terminal.Out.Flush();
            var line = terminal.In.ReadLine() ?? throw new UsageException($"the answers ended before '{prompt}'.");
            if (line.Trim().Length > 0)
            {
                return line.Trim();
            }
        }
    }

    private static string[] Names(string text)
    {
        var names = text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return names.Length >= 2 && names.Distinct(Identifier.Comparer).Count() == names.Length
            ? names
            : throw new UsageException($"'{text}' names no two treatments; two or more different names with commas between them were expected, such as none,chains.");
    }

    private static DateOnly Date(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
        ? date
        : throw new UsageException($"'{text}' is no date; one such as 2026-05-04 was expected.");

    private static int Whole(string text, string option) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number > 0
        ? number
        : throw new UsageException($"{option} is '{text}'; a whole number above 0 was expected.");
}
