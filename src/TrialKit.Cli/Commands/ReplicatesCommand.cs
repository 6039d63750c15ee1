using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using TrialKit.Analysis;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Planning;
using TrialKit.Quantities;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Figures;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit replicates</c>: how many pairs or blocks, and how many spots in a strip.</summary>
internal sealed class ReplicatesCommand
{
    private const double DefaultPower = 0.8;
    private const double DefaultAlpha = 0.10;
    private const int DefaultLast = 12;
    private const int FewestTreatments = 2;
    private const int FigurePoints = 60;

    private readonly Option<double?> cv = new("--cv") { Description = "Spread of strips within a block, percent of the mean.", HelpName = "PERCENT" };
    private readonly Option<string[]> from = new("--from") { Description = "An earlier trial to take the spread from; may be given several times.", HelpName = "FOLDER" };
    private readonly Option<string> measure = new("--measure") { Description = "The measure of earlier trials.", HelpName = "ID", DefaultValueFactory = _ => "stand" };
    private readonly Option<int?> treatments = new("--treatments") { Description = "Treatments; 2 are pairs. Those of the trials under --from when not given, else 2.", HelpName = "N" };
    private readonly Option<double?> difference = new("--difference") { Description = "A true difference to ask about, percent of the mean.", HelpName = "PERCENT" };
    private readonly Option<double> alpha = new("--alpha") { Description = "Level of the test.", HelpName = "P", DefaultValueFactory = _ => DefaultAlpha };
    private readonly Option<double> power = new("--power") { Description = "Chance to show the difference.", HelpName = "P", DefaultValueFactory = _ => DefaultPower };
    private readonly Option<int> last = new("--most") { Description = "The last number of pairs or blocks listed.", HelpName = "N", DefaultValueFactory = _ => DefaultLast };
    private readonly Option<double?> stripVariance = new("--strip-variance") { Description = "Variance between strips beyond that of their spots.", HelpName = "V" };
    private readonly Option<double?> spotVariance = new("--spot-variance") { Description = "Variance between spots of a strip.", HelpName = "V" };
    private readonly Option<double?> stripCost = new("--strip-cost") { Description = "Cost of one more strip, in money or minutes.", HelpName = "COST" };
    private readonly Option<double?> spotCost = new("--spot-cost") { Description = "Cost of one more spot, in the same.", HelpName = "COST" };
    private readonly Option<string?> output = new("--output", "-o") { Description = "Also write replicates.csv and power.png into this folder.", HelpName = "DIR" };
    private readonly Option<bool> quiet = CommonOptions.Quiet();
    private readonly Terminal terminal;

    private ReplicatesCommand(Terminal terminal) => this.terminal = terminal;

    public static Command Create(Terminal terminal)
    {
        var made = new ReplicatesCommand(terminal);
        var command = new Command("replicates", "Tell how many pairs or blocks a trial needs, from the spread of strips: what each number can show, and how many spots in a strip repay the walk.")
        {
            made.cv, made.from, made.measure, made.treatments, made.difference, made.alpha, made.power, made.last,
            made.stripVariance, made.spotVariance, made.stripCost, made.spotCost, made.output, made.quiet,
        };
        command.SetAction(made.Run);
        return command;
    }

    private int Run(ParseResult parsed)
    {
        Check(parsed);
        if (parsed.GetValue(output) is { } target)
        {
            TrialFolder.KeepTrials(target);
        }

        var id = parsed.GetRequiredValue(measure);
        var earlier = new List<EarlierVariation>();
        var before = FewestTreatments;
        foreach (var folder in parsed.GetValue(from) ?? [])
        {
            if (TrialFolder.ToAnalyse(TrialFolder.Read(folder, terminal, eachWarning: false), terminal) is not { } trial)
            {
                return ExitCode.DataErrors;
            }

            if (EarlierVariation.Of(TrialAnalysis.Of(trial), id) is not { } variation)
            {
                terminal.Error.WriteLine($"trialkit: {folder} cannot tell how much '{id}' varies between strips of a block: two treatments in two blocks or more, with that measure, were expected.");
                return ExitCode.DataErrors;
            }

            earlier.Add(variation);
            before = Math.Max(before, trial.Treatments.Length);
        }

        var pooled = EarlierVariation.Pool(earlier);
        if ((parsed.GetValue(cv) ?? pooled?.Cv) is not { } spread)
        {
            throw new UsageException("the spread of strips is not known; --cv PERCENT or --from FOLDER was expected.");
        }

        var table = new ReplicateTable(spread, parsed.GetValue(treatments) ?? before, ConfidenceLevel.FromAlpha(parsed.GetValue(alpha)), parsed.GetValue(power));
        var asked = parsed.GetValue(difference);
        var rows = table.Rows(parsed.GetValue(last), asked);
        if (!parsed.GetValue(quiet))
        {
            Print(table, rows, asked, pooled, id);
            PrintSpots(parsed, pooled);
        }

        if (parsed.GetValue(output) is { } folderOut)
        {
            TrialFolder.WriteTables([ReplicateTables.Of(rows)], folderOut);
            WholeFile.Write(Path.Combine(folderOut, "power.png"), stream => FigureFiles.WritePng(Figure(table, rows, asked), stream));
            if (!parsed.GetValue(quiet))
            {
                terminal.Out.WriteLine($"Wrote replicates.csv and power.png into {folderOut}.");
            }
        }

        return ExitCode.Done;
    }

    private void Check(ParseResult parsed)
    {
        Within(parsed.GetValue(cv) is not { } spread || (spread > 0 && double.IsFinite(spread)), cv, "a percentage above 0");
        Within(parsed.GetValue(difference) is not { } asked || (asked != 0 && double.IsFinite(asked)), difference, "a percentage other than 0");
        Within(parsed.GetValue(treatments) is null or (>= FewestTreatments and <= 50), treatments, "a whole number from 2 to 50");
        Within(parsed.GetValue(last) is >= 2 and <= 100, last, "a whole number from 2 to 100");
        Within(parsed.GetValue(alpha) is > 0 and < 0.5, alpha, "a number above 0 and below 0.5");
        Within(parsed.GetValue(power) is >= 0.5 and < 1, power, "a number from 0.5 to below 1");
        Within(parsed.GetValue(stripVariance) is not { } strips || (strips >= 0 && double.IsFinite(strips)), stripVariance, "a variance of 0 or more");
        Within(parsed.GetValue(spotVariance) is not { } spots || (spots >= 0 && double.IsFinite(spots)), spotVariance, "a variance of 0 or more");
        Within(parsed.GetValue(stripCost) is not { } dear || (dear > 0 && double.IsFinite(dear)), stripCost, "a cost above 0");
        Within(parsed.GetValue(spotCost) is not { } cheap || (cheap > 0 && double.IsFinite(cheap)), spotCost, "a cost above 0");

        if (parsed.GetValue(cv) is not null && parsed.GetValue(from) is { Length: > 0 })
        {
            throw new UsageException("--cv and --from both give the spread of strips; one of them was expected.");
        }

        if (parsed.GetValue(stripCost) is null != parsed.GetValue(spotCost) is null)
        {
            throw new UsageException("of --strip-cost and --spot-cost only one was given; both were expected, in the same money or minutes.");
        }

        static void Within(bool holds, Option option, string expected)
        {
            if (!holds)
            {
                throw new UsageException($"{option.Name} is out of its range; {expected} was expected.");
            }
        }
    }

    private void Print(ReplicateTable table, ImmutableArray<ReplicateRow> rows, double? asked, EarlierVariation? pooled, string id)
    {
        var replicates = Word(table);
        if (pooled is not null)
        {
            terminal.WriteWrapped($"Strips of a block varied by {NumberText.Number(pooled.Cv, 1)} % of the mean in {id}, on {NumberText.Count(pooled.DegreesOfFreedom)} degrees of freedom.", indent: 0);
        }

        if (asked is { } difference)
        {
            terminal.WriteWrapped(
                table.Required(difference) is { } enough
                    ? $"To show a true difference of {Percent(Math.Abs(difference))} with a chance of {NumberText.Percent(table.Power)} at the {NumberText.Percent(table.Level.Alpha)} level takes {NumberText.Count(enough)} {replicates}."
                    : $"A true difference of {Percent(Math.Abs(difference))} is out of reach: more than {NumberText.Count(ReplicateTable.Most)} {replicates} would be needed.",
                indent: 0);
        }

        terminal.Out.WriteLine();
        ConsoleTable.Print(
            terminal,
            $"Strips varying by {NumberText.Number(table.Cv, 1)} % of the mean, {NumberText.Count(table.Treatments)} treatments",
            [
                new(char.ToUpperInvariant(replicates[0]) + replicates[1..], IsNumber: true),
                new("df", IsNumber: true),
                new($"Shown {NumberText.Percent(table.Power)} of times", IsNumber: true),
                .. asked is { } column ? [new ConsoleColumn($"Chance for {Percent(Math.Abs(column))}", IsNumber: true)] : Array.Empty<ConsoleColumn>(),
                .. asked is not null && table.Treatments > 2 ? [new ConsoleColumn("F test", IsNumber: true)] : Array.Empty<ConsoleColumn>(),
                new("Least exact p", IsNumber: true),
            ],
            rows.Select(row => (string[])
            [
                NumberText.Count(row.Replicates),
                NumberText.Count(row.DegreesOfFreedom),
                Percent(row.Detectable),
                .. row.Power is { } chance ? [NumberText.Percent(chance)] : Array.Empty<string>(),
                .. row.FPower is { } all ? [NumberText.Percent(all)] : Array.Empty<string>(),
                NumberText.PValue(row.SmallestExactP),
            ]));
        terminal.WriteWrapped($"A difference is {(table.Treatments == 2 ? "between the two treatments" : "between a treatment and the control, judged together with the others (Dunnett)")}, in percent of the mean. The exact test can give no p below the last column: where that is above {table.Level.Alpha.ToString("0.##", CultureInfo.InvariantCulture)}, it cannot show anything. It counts every layout; 'trialkit plan' draws again when all {replicates} have one order, so that against its own lottery the least p is somewhat larger (docs/methods/planning.md).", indent: 0);
    }

    private void PrintSpots(ParseResult parsed, EarlierVariation? pooled)
    {
        if (parsed.GetValue(stripCost) is not { } dear || parsed.GetValue(spotCost) is not { } cheap)
        {
            return;
        }

        if ((parsed.GetValue(stripVariance) ?? pooled?.StripVariance) is not { } strips || (parsed.GetValue(spotVariance) ?? pooled?.SpotVariance) is not { } spots)
        {
            throw new UsageException("the variances of strips and spots are not known; --strip-variance and --spot-variance, or --from FOLDER with several stand counts in a strip, were expected.");
        }

        terminal.Out.WriteLine();
        terminal.WriteWrapped(
            SpotBudget.Optimum(strips, spots, dear, cheap) is { } optimum
                ? $"Spots in a strip that give the most for the cost: {NumberText.Number(optimum, 1)}. More spots never replace strips."
                : "Strips did not vary beyond their spots: the variances give no best number of spots.",
            indent: 0);
    }

    private static PowerFigure Figure(ReplicateTable table, ImmutableArray<ReplicateRow> rows, double? asked)
    {
        var enough = asked is { } difference ? table.Required(difference) : null;
        var numbers = rows.Select(row => row.Replicates).Where(number => number is 3 or 4 or 5 or 6 or 8 or 12 || number == enough).ToArray();
        numbers = numbers.Length == 0 ? [rows[^1].Replicates] : numbers;
        var widest = table.Row(numbers[0]).Detectable;
        var reach = asked is { } shown ? Math.Max(Math.Min(widest, 4 * table.Cv), 1.5 * Math.Abs(shown)) : Math.Min(widest, 4 * table.Cv);
        return new(
            [.. numbers.Select(number => new PowerLine(
                NumberText.Count(number),
                [.. Enumerable.Range(0, FigurePoints + 1).Select(i => reach * i / FigurePoints).Select(at => (at, table.PowerAt(number, at)))],
                number == (enough ?? numbers[^1])))],
            Word(table),
            table.Power,
            $"The chance to show a true difference between two treatments, for {string.Join(", ", numbers.Select(NumberText.Count))} {Word(table)}: {string.Join("; ", numbers.Select(number => $"{NumberText.Count(number)} show {Percent(table.Row(number).Detectable)} in {NumberText.Percent(table.Power)} of trials"))}.");
    }

    private static string Word(ReplicateTable table) => table.Treatments == 2 ? "pairs" : "blocks";

    private static string Percent(double percent) => $"{NumberText.Number(percent, 1)}\u00A0%";
}
