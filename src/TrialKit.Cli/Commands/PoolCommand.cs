using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Ingest;
using TrialKit.Reporting.Document;
using TrialKit.Reporting.Pdf;
using TrialKit.Reporting.Report;

namespace TrialKit.Cli.Commands;

/// <summary><c>trialkit pool</c>: the same comparison at several sites or in several years, put together.</summary>
internal static class PoolCommand
{
    private const string Settings = "trial.toml";

    public static Command Create(Terminal terminal)
    {
        var folders = new Argument<string[]>("FOLDER") { Description = "The trial folders, or a folder that holds trial folders.", Arity = ArgumentArity.OneOrMore };
        var output = new Option<string?>("--output", "-o") { Description = "Also write a report (FILE.pdf), one document (FILE.json), or a folder with a CSV file per table and pool.json.", HelpName = "FILE.pdf|FILE.json|DIR" };
        var quiet = CommonOptions.Quiet();
        var command = new Command("pool", "Put the same comparison at several sites or in several years together: each site, the mean over sites, how sites differ, and what to expect at another.")
        {
            folders,
            output,
            quiet,
        };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(folders), parsed.GetValue(output), parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string[] named, string? output, bool quiet, Terminal terminal)
    {
        string[] folders = [.. named.SelectMany(Expand)];
        if (output is not null)
        {
            TrialFolder.KeepTrials(output);
        }

        var readings = folders.Select(folder => TrialFolder.Read(folder, terminal, eachWarning: false)).ToArray();
        if (readings.Any(reading => TrialFolder.ToAnalyse(reading, terminal) is null))
        {
            terminal.Error.WriteLine("trialkit: a trial with errors cannot be put together with others.");
            return ExitCode.DataErrors;
        }

        var names = Names(folders);
        var sites = new List<PooledSite>();
        foreach (var (reading, index) in readings.Select((reading, index) => (reading, index)))
        {
            terminal.Step($"Analysing {folders[index]}");
            sites.Add(new(names[index], TrialAnalysis.Of(reading.Trial!)));
        }

        var mismatches = PooledTrials.Mismatches(sites).ToArray();
        if (mismatches.Length > 0)
        {
            foreach (var mismatch in mismatches)
            {
                terminal.Error.WriteLine($"trialkit: {mismatch}.");
            }

            return ExitCode.DataErrors;
        }

        var pooled = PooledTrials.Of(sites);
        if (!quiet)
        {
            PoolPrinter.Print(pooled, terminal);
        }

        if (output is not null)
        {
            terminal.Step($"Writing {output}");
            Write(pooled, readings, names, output);
            if (!quiet)
            {
                terminal.Out.WriteLine($"Wrote {output}");
            }
        }

        return ExitCode.Done;
    }

    private static IEnumerable<string> Expand(string folder)
    {
        if (!Directory.Exists(folder) || File.Exists(Path.Combine(folder, Settings)))
        {
            return [folder];
        }

        var inner = Directory.EnumerateDirectories(folder).Where(each => File.Exists(Path.Combine(each, Settings))).Order(StringComparer.Ordinal).ToArray();
        return inner.Length > 0 ? inner : throw new UsageException($"'{folder}' holds no {Settings} and no folder with one; a trial folder, or a folder of trial folders, was expected.");
    }

    // A folder's own name where that tells it from the others, else as it was given.
    private static string[] Names(string[] folders)
    {
        string[] names = [.. folders.Select(folder => Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder))))];
        return names.Distinct(StringComparer.Ordinal).Count() == names.Length ? names : folders;
    }

    private static void Write(PooledTrials pooled, TrialReading[] readings, string[] names, string output)
    {
        var inputs = readings.SelectMany((reading, index) => InputFile.Of(reading).Select(file => new ReportInput($"{names[index]}/{file.Name}", file.Sha256, file.Rows))).ToArray();
        if (output.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
        {
            var size = pooled.Sites[0].Analysis.Trial.Units == Quantities.UnitSystem.Us ? PageSize.Letter : PageSize.A4;
            var warnings = readings.SelectMany((reading, index) => reading.Warnings.Select(warning => $"{names[index]}/{warning}"));
            var bytes = PdfReport.Render(PoolReport.Of(pooled, new ReportSettings(size, inputs, [.. warnings])));
            WholeFile.Write(output, stream => stream.Write(bytes));
            return;
        }

        var json = output.EndsWith(".json", StringComparison.OrdinalIgnoreCase) ? output : Path.Combine(output, "pool.json");
        WholeFile.Write(json, stream => JsonResult.Write(pooled, inputs.Select(file => (file.Name, file.Sha256)), stream));
        if (json == output)
        {
            return;
        }

        foreach (var table in PoolTables.Of(pooled))
        {
            WholeFile.Write(Path.Combine(output, table.Name + ".csv"), stream => CsvTables.Write(table, stream));
        }
    }
}
