using System.CommandLine;
using System.Globalization;
using TrialKit.Cli.Output;
using TrialKit.Quantities;
using TrialKit.Stand;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit replant</c>: keep the stand that is left or replant, by a published table.</summary>
internal static class ReplantCommand
{
    private const string ExpectedStand = "30000 plants/ac";

    public static Command Create(Terminal terminal)
    {
        var folder = new Argument<string?>("FOLDER") { Description = "A trial folder: the stand of each treatment and the planting date are taken from it.", Arity = ArgumentArity.ZeroOrOne };
        var stand = new Option<string?>("--stand") { Description = "The stand left, such as \"20000 plants/ac\" or \"49000 plants/ha\"; without a FOLDER.", HelpName = "STAND" };
        var planted = new Option<string?>("--planted") { Description = "When it was planted, such as 2026-04-25; without a FOLDER.", HelpName = "DATE" };
        var replant = new Option<string>("--replant") { Description = "When it would be replanted, such as 2026-05-25.", HelpName = "DATE", Required = true };
        var replantStand = new Option<string>("--replant-stand") { Description = $"The stand expected after replanting; {ExpectedStand} when not given.", HelpName = "STAND", DefaultValueFactory = _ => ExpectedStand };
        var command = new Command("replant", "Compare keeping a corn stand with replanting it, by a published table of yield by stand and planting date.")
        {
            folder,
            stand,
            planted,
            replant,
            replantStand,
        };
        command.SetAction(parsed =>
        {
            var later = (Date: Date(parsed.GetRequiredValue(replant), "--replant"), Stand: StandOf(parsed.GetRequiredValue(replantStand), "--replant-stand"));
            if (parsed.GetValue(folder) is { } path)
            {
                return parsed.GetValue(stand) is null && parsed.GetValue(planted) is null
                    ? OfTrial(path, later, terminal)
                    : throw new UsageException("a FOLDER brings its own stand and planting date; leave out --stand and --planted.");
            }

            var left = StandOf(parsed.GetValue(stand) ?? throw new UsageException("--stand was expected, such as --stand \"20000 plants/ac\", or a FOLDER."), "--stand");
            var since = Date(parsed.GetValue(planted) ?? throw new UsageException("--planted was expected, such as --planted 2026-04-25, or a FOLDER."), "--planted");
            ReplantPrinter.Print([("stand left", Compare(left, since, later))], UnitsOf(parsed.GetValue(stand)!), terminal);
            return ExitCode.Done;
        });
        return command;
    }

    private static int OfTrial(string folder, (DateOnly Date, PlantDensity Stand) later, Terminal terminal)
    {
        if (TrialFolder.Read(folder, terminal, eachWarning: false).Trial is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        if (!Identifier.Same(trial.Crop.Name, "corn"))
        {
            throw new UsageException($"the table is of corn; the crop of '{folder}' is {trial.Crop.Name}.");
        }

        var stands = StandCounts.Of(trial).Where(strip => strip.Strip.IsAnalysed).ToArray();
        if (stands.Length == 0)
        {
            throw new UsageException($"'{folder}' has no stand count; give --stand and --planted instead of the folder.");
        }

        var rows =
            from treatment in trial.Treatments
            let own = stands.Where(strip => Identifier.Same(strip.Strip.Treatment.Name, treatment.Name)).ToArray()
            where own.Length > 0
            select (treatment.Label, Compare(PlantDensity.FromPerHectare(own.Average(strip => strip.Mean.PerHectare)), own.Min(strip => strip.Strip.Planted), later));
        ReplantPrinter.Print([.. rows], trial.Units, terminal);
        return ExitCode.Done;
    }

    private static KeepOrReplant Compare(PlantDensity stand, DateOnly planted, (DateOnly Date, PlantDensity Stand) later) => KeepOrReplant.IsReplantOf(later.Date, planted)
        ? new(stand, planted, later.Stand, later.Date)
        : throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"--replant was {later.Date:yyyy-MM-dd}; a date after the planting on {planted:yyyy-MM-dd} and in its year was expected."));

    private static DateOnly Date(string text, string option) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)
            ? date
            : throw new UsageException($"{option} was '{text}'; a date was expected, such as 2026-04-25.");

    private static PlantDensity StandOf(string text, string option)
    {
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 2
            && double.TryParse(parts[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            && double.IsFinite(number))
        {
            switch (parts[1])
            {
                case "plants/ac":
                    return PlantDensity.FromPerAcre(number);
                case "plants/ha":
                    return PlantDensity.FromPerHectare(number);
            }
        }

        throw new UsageException($"{option} was '{text}'; a number with its unit was expected, such as \"20000 plants/ac\" or \"49000 plants/ha\".");
    }

    private static UnitSystem UnitsOf(string stand) => stand.EndsWith("/ha", StringComparison.Ordinal) ? UnitSystem.Metric : UnitSystem.Us;
}
