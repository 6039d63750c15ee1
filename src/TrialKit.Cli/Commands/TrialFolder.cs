using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Ingest;
using TrialKit.Reporting.Report;
using TrialKit.Trials;

namespace TrialKit.Cli.Commands;

/// <summary>The FOLDER argument that commands share, and the reading of it.</summary>
internal static class TrialFolder
{
    /// <summary>The argument.</summary>
    public static Argument<string> Argument() => new("FOLDER") { Description = "The trial folder: trial.toml and its tables." };

    /// <summary>The argument of commands that take several.</summary>
    public static Argument<string[]> Arguments() => new("FOLDER") { Description = "The trial folder: trial.toml and its tables. Several may be named, or a folder that holds trial folders.", Arity = ArgumentArity.OneOrMore };

    /// <summary>Reads the folder and prints its problems on standard error, in file order.</summary>
    /// <exception cref="UsageException">There is no such folder.</exception>
    public static TrialReading Read(string folder, Terminal terminal, bool eachWarning)
    {
        if (!Directory.Exists(folder))
        {
            throw new UsageException($"there is no folder '{folder}'; the folder that holds trial.toml was expected.");
        }

        terminal.Step($"Reading {folder}");
        var reading = TrialReader.Read(folder);
        ProblemPrinter.Print(reading, terminal.Error, eachWarning);
        return reading;
    }

    /// <summary>The trial, when there is something in it to analyse; else null, and it is said that there is not.</summary>
    public static StripTrial? ToAnalyse(TrialReading reading, Terminal terminal)
    {
        if (reading.Trial is { IsPlan: true })
        {
            terminal.Error.WriteLine($"trialkit: {reading.Folder} is a plan: nothing has been measured on its strips yet, so there is nothing to analyse. Fill in at least one of stand-counts, emergence, plants, harvest and measures.");
            return null;
        }

        if (reading.Trial is { HasResults: false })
        {
            terminal.Error.WriteLine($"trialkit: each spot of {reading.Folder} was visited once; timing begins with the second visit, so there is nothing to analyse yet.");
            return null;
        }

        return reading.Trial;
    }

    /// <summary>The files that were read, with their marks.</summary>
    public static IReadOnlyList<ReportInput> Inputs(TrialReading reading) =>
        [.. InputFile.Of(reading).Select(file => new ReportInput(file.Name, file.Sha256, file.Rows))];

    /// <summary>Writes each table as a CSV file of its own name into a folder.</summary>
    public static void WriteTables(IEnumerable<ResultTable> tables, string output)
    {
        foreach (var table in tables)
        {
            WholeFile.Write(Path.Combine(output, table.Name + ".csv"), stream => CsvTables.Write(table, stream));
        }
    }

    /// <summary>Refuses an output folder that holds a trial: its tables could take the place of the owner's files.</summary>
    /// <exception cref="UsageException">The folder holds <c>trial.toml</c>.</exception>
    public static void KeepTrials(params IEnumerable<string> outputs)
    {
        foreach (var output in outputs.Where(output => File.Exists(Path.Combine(output, "trial.toml"))))
        {
            throw new UsageException($"'{output}' holds a trial; name a folder of its own for the output, such as '{Path.Combine(output, "results")}'.");
        }
    }
}
