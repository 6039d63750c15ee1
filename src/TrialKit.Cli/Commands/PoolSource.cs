using System.Security.Cryptography;
using TrialKit.Cli.Batch;
using TrialKit.Cli.Output;
using TrialKit.Reporting.Report;
using TrialKit.Season;

namespace TrialKit.Cli.Commands;

/// <summary>The trials to put together, from their folders or from a season table.</summary>
/// <param name="Sites">The trials.</param>
/// <param name="Inputs">The files they come from.</param>
/// <param name="Warnings">What a reader of the results should know of them.</param>
internal sealed record PoolSource(IReadOnlyList<PooledSite> Sites, IReadOnlyList<ReportInput> Inputs, IReadOnlyList<string> Warnings)
{
    /// <summary>Reads the trials; null after errors, which were printed.</summary>
    /// <param name="named">Folders, or one season table.</param>
    /// <param name="measures">Ids of the measures wanted; empty for all.</param>
    /// <param name="terminal">Where problems go.</param>
    /// <exception cref="UsageException">A folder or file is not there, or no trial has a measure that was asked for.</exception>
    public static PoolSource? Of(string[] named, HashSet<string> measures, Terminal terminal) =>
        named.Length == 1 && File.Exists(named[0]) ? OfSeason(named[0], measures, terminal) : OfFolders(named, measures, terminal);

    private static PoolSource? OfFolders(string[] named, HashSet<string> measures, Terminal terminal)
    {
        var (sites, inputs, warnings) = (new List<PooledSite>(), new List<ReportInput>(), new List<string>());
        var known = new SortedSet<string>(StringComparer.Ordinal);
        var lines = BatchRun.Run(
            TrialFolders.Of(named).Trials,
            (trial, reading, analysis) => (
                Site: PooledSite.Of(trial.Name, analysis),
                Inputs: TrialFolder.Inputs(reading).Select(file => file with { Name = $"{trial.Name}/{file.Name}" }).ToArray(),
                Warnings: reading.Warnings.Select(warning => $"{trial.Name}/{warning}").ToArray()),
            (_, read) =>
            {
                known.UnionWith(read.Site.Measures.Select(measure => measure.Measure.Id));
                sites.Add(measures.Count == 0 ? read.Site : read.Site with { Measures = [.. read.Site.Measures.Where(measure => measures.Contains(measure.Measure.Id))] });
                inputs.AddRange(read.Inputs);
                warnings.AddRange(read.Warnings);
            },
            terminal,
            withWarnings: true);
        if (BatchSummary.ExitCodeOf(lines) != ExitCode.Done)
        {
            terminal.Error.WriteLine("trialkit: a trial with errors cannot be put together with others.");
            return null;
        }

        RequireKnown(measures, known);
        return new(sites, inputs, warnings);
    }

    private static PoolSource? OfSeason(string path, HashSet<string> measures, Terminal terminal)
    {
        if (!path.EndsWith(".parquet", StringComparison.OrdinalIgnoreCase))
        {
            throw new UsageException($"'{path}' is neither a folder nor a season table in Parquet; a name that ends in .parquet was expected.");
        }

        terminal.Step($"Reading {path}");
        var reading = SeasonReader.Read(path, measures.Count == 0 ? null : measures);
        ProblemPrinter.Print(reading.Problems, terminal.Error, eachWarning: true);
        if (!reading.IsSound)
        {
            return null;
        }

        if (!reading.HasStrips)
        {
            terminal.Error.WriteLine($"trialkit: {SeasonReader.StripsOf(path)} is not there, so the model of all strips is left out.");
        }

        RequireKnown(measures, reading.Measures);
        string[] files = reading.HasStrips ? [path, SeasonReader.StripsOf(path)] : [path];
        return new(reading.Sites, [.. files.Select(Input)], [.. reading.Problems.Select(problem => problem.ToString())]);
    }

    private static ReportInput Input(string file)
    {
        using var stream = File.OpenRead(file);
        return new(Path.GetFileName(file), Convert.ToHexStringLower(SHA256.HashData(stream)), Rows: null);
    }

    private static void RequireKnown(HashSet<string> measures, IEnumerable<string> known)
    {
        var unknown = measures.Except(known, StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        if (unknown.Length > 0)
        {
            throw new UsageException($"no trial has the measure '{unknown[0]}'; one of {string.Join(", ", known)} was expected.");
        }
    }
}
