using System.CommandLine;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Ingest;
using TrialKit.Planning;
using TrialKit.Reporting.Figures;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Sheets;
using TrialKit.Trials;
using UnitSystem = TrialKit.Quantities.UnitSystem;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit plan</c>: draws strips and spots by lot and writes them with a map.</summary>
internal static class PlanCommand
{
    // A seed that is easy to read out and to type again.
    private const int LargestDrawnSeed = 1_000_000;
    private const double PixelsPerPoint = 3;
    private const int IdLength = 16;

    public static Command Create(Terminal terminal)
    {
        var folder = TrialFolder.Argument();
        var seed = new Option<long?>("--seed") { Description = "The seed of the lottery; the same seed gives the same plan. Drawn and printed when not given.", HelpName = "N" };
        var replace = new Option<bool>("--replace") { Description = "Draw anew although strips were drawn before. Refused once anything has been measured on them." };
        var paper = CommonOptions.Paper();
        var quiet = CommonOptions.Quiet();
        var command = new Command("plan", "Draw strips and places for counting by lot, from the section [field] of trial.toml; write strips.csv, spots.csv, plan.toml and a map.")
        {
            folder,
            seed,
            replace,
            paper,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folder), parsed.GetValue(seed), parsed.GetValue(replace), parsed.GetValue(paper), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string folder, long? seed, bool replace, string? paper, bool quiet, Terminal terminal)
    {
        if (seed is < 0 or >= 1L << 53)
        {
            throw new UsageException(string.Create(CultureInfo.InvariantCulture, $"--seed is {seed}; a whole number from 0 to {(1L << 53) - 1} was expected."));
        }

        var reading = TrialFolder.Read(folder, terminal, eachWarning: false);
        if (reading.Trial is not { } trial)
        {
            return ExitCode.DataErrors;
        }

        var kept = seed ?? (replace ? null : trial.PlanSeed) ?? RandomNumberGenerator.GetInt32(LargestDrawnSeed);
        TrialPlan plan;
        try
        {
            plan = FieldPlan.Draw(trial, kept);
        }
        catch (PlanRefusedException refused)
        {
            foreach (var reason in refused.Reasons)
            {
                terminal.Error.WriteLine($"trialkit: {reason.Message}");
            }

            terminal.Error.WriteLine("Nothing was drawn.");
            return ExitCode.DataErrors;
        }

        if (!MayWrite(folder, reading, trial, plan, replace, terminal))
        {
            return ExitCode.DataErrors;
        }

        terminal.Step($"Writing {folder}");
        Write(folder, trial, plan, paper, reading);
        if (!quiet)
        {
            Print(folder, trial, plan, terminal);
        }

        return ExitCode.Done;
    }

    /// <summary>Whether strips may be written: there are none yet, they are the same, or they may be replaced and nothing was measured on them.</summary>
    private static bool MayWrite(string folder, TrialReading reading, StripTrial trial, TrialPlan plan, bool replace, Terminal terminal)
    {
        if (trial.Strips.IsEmpty)
        {
            return !InWorkbook(reading, terminal);
        }

        if (IsDrawn(folder, plan, trial.Units))
        {
            return true;
        }

        if (!trial.IsPlan)
        {
            terminal.Error.WriteLine($"trialkit: {folder} has strips, and counts or weights that belong to them; drawing anew would put every one of them on the wrong strip. Nothing was changed.");
            return false;
        }

        if (!replace)
        {
            var seed = trial.PlanSeed is { } earlier ? string.Create(CultureInfo.InvariantCulture, $" (drawn with seed {earlier})") : string.Empty;
            terminal.Error.WriteLine($"trialkit: {folder} has strips already{seed}, and they or their spots differ from what would be drawn now. If they have not been planted, say --replace. Nothing was changed.");
            return false;
        }

        return !InWorkbook(reading, terminal);
    }

    private static bool InWorkbook(TrialReading reading, Terminal terminal)
    {
        if (reading.Tables.FirstOrDefault(table => table.Table is "strips" or "spots" && !table.File.EndsWith(".csv", StringComparison.Ordinal)) is not { } sheet)
        {
            return false;
        }

        terminal.Error.WriteLine($"trialkit: the table {sheet.Table} stands in {sheet.File}; remove that sheet to have it drawn. Nothing was changed.");
        return true;
    }

    private static void Write(string folder, StripTrial trial, TrialPlan plan, string? paper, TrialReading reading)
    {
        // A plan that stands keeps its mark, and a page on a phone its entries; another plan gets another.
        var id = trial.PlanId is { } kept && IsDrawn(folder, plan, trial.Units) ? kept : RandomNumberGenerator.GetHexString(IdLength, lowercase: true);
        var settings = string.Create(CultureInfo.InvariantCulture, $"# Written by 'trialkit plan'. With this seed and the same trial.toml it draws the same plan.\nseed = {plan.Seed}\nid = \"{id}\"          # tells this plan from any other\nprogram = \"TrialKit {Library.Version}\"\n");
        WholeFile.Write(Path.Combine(folder, "plan.toml"), stream => stream.Write(Encoding.UTF8.GetBytes(settings)));
        TrialFolder.WriteTables([PlanTables.Strips(plan, trial.Units), PlanTables.Spots(plan, trial.Units)], folder);
        var page = PdfReport.Render(FieldMap.Page(trial, plan, CommonOptions.PaperOf(paper, trial.Units), [.. TrialFolder.Inputs(reading).Where(input => input.Rows is null)]));
        WholeFile.Write(Path.Combine(folder, "map.pdf"), stream => stream.Write(page));
        WholeFile.Write(Path.Combine(folder, "map.png"), stream => FigureFiles.WritePng(FieldMap.Figure(trial, plan), stream, pixelsPerPoint: PixelsPerPoint));
        if (FieldCorner.Of(plan.Field) is { } corner)
        {
            WholeFile.Write(Path.Combine(folder, "map.geojson"), stream => PlanGeoJson.Write(plan, corner, stream));
        }
    }

    private static bool IsDrawn(string folder, TrialPlan plan, UnitSystem units) =>
        Stands(folder, PlanTables.Strips(plan, units), mayBeAbsent: false) && Stands(folder, PlanTables.Spots(plan, units), mayBeAbsent: true);

    /// <summary>Whether a table of the folder is byte for byte what would be written.</summary>
    private static bool Stands(string folder, ResultTable table, bool mayBeAbsent)
    {
        var file = Path.Combine(folder, table.Name + ".csv");
        if (!File.Exists(file))
        {
            return mayBeAbsent;
        }

        using var stream = new MemoryStream();
        CsvTables.Write(table, stream);
        return File.ReadAllBytes(file).AsSpan().SequenceEqual(stream.ToArray());
    }

    private static void Print(string folder, StripTrial trial, TrialPlan plan, Terminal terminal)
    {
        terminal.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Seed {plan.Seed}: the same seed gives the same plan."));
        terminal.Out.WriteLine();
        ConsoleTable.Print(
            terminal,
            "Strips across the field",
            [new("Strip"), new("Block"), new("Treatment"), new("Planter"), new("Spots, from the near end")],
            plan.Strips.Select(strip => (string[])
            [
                strip.Strip.Name,
                strip.Strip.Block,
                strip.Strip.Treatment.Label,
                strip.Strip.Note ?? string.Empty,
                PlaceText.Of(plan, strip, trial.Units),
            ]));
        foreach (var finding in plan.Findings)
        {
            terminal.WriteWrapped(finding.Message, indent: 0);
        }

        var map = FieldCorner.Of(plan.Field) is null ? "map.pdf and map.png" : "map.pdf, map.png and map.geojson";
        terminal.Out.WriteLine($"Wrote strips.csv, spots.csv, plan.toml, {map} into {folder}.");
        terminal.Out.WriteLine($"Next: trialkit sheets {folder}");
    }
}
