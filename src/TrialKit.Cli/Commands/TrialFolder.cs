using System.CommandLine;
using TrialKit.Cli.Output;
using TrialKit.Export;
using TrialKit.Ingest;

namespace TrialKit.Cli.Commands;

/// <summary>The FOLDER argument that commands share, and the reading of it.</summary>
internal static class TrialFolder
{
    /// <summary>The argument.</summary>
    public static Argument<string> Argument() => new("FOLDER") { Description = "The trial folder: trial.toml and its tables." };

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

    /// <summary>Writes each table as a CSV file of its own name into a folder.</summary>
    public static void WriteTables(IEnumerable<ResultTable> tables, string output)
    {
        foreach (var table in tables)
        {
            WholeFile.Write(Path.Combine(output, table.Name + ".csv"), stream => CsvTables.Write(table, stream));
        }
    }

    /// <summary>Refuses an output that would overwrite the trial's own files.</summary>
    /// <exception cref="UsageException">The output is a file the folder's owner wrote.</exception>
    public static void KeepInputs(string folder, string output)
    {
        var inside = Path.GetRelativePath(Path.GetFullPath(folder), Path.GetFullPath(output));
        var name = Path.GetFileName(output);
        if (inside == name && (name.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".xlsx", StringComparison.OrdinalIgnoreCase)))
        {
            throw new UsageException($"'{output}' may be one of the trial's own files; name another output.");
        }

        if (inside == ".")
        {
            throw new UsageException($"'{output}' is the trial folder itself; name a folder of its own for the output, such as '{Path.Combine(output, "results")}'.");
        }
    }
}
