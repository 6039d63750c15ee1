using TrialKit.Ingest.Messages;
using TrialKit.Ingest.Records;
using TrialKit.Ingest.Settings;
using TrialKit.Ingest.Tables;
using TrialKit.Ingest.Workbooks;
using TrialKit.Trials;

namespace TrialKit.Ingest;

/// <summary>Reads a trial folder.</summary>
public static class TrialReader
{
    /// <summary>Reads <c>trial.toml</c> and every table of a folder, as CSV files or as sheets of <c>trial.xlsx</c>.</summary>
    /// <param name="folder">The path of the folder.</param>
    /// <returns>The trial with its warnings, or every error and warning found in one run.</returns>
    /// <remarks>No file is changed. Bad input never throws; it is reported with its place.</remarks>
    /// <exception cref="ArgumentException">The path is null or empty.</exception>
    public static TrialReading Read(string folder)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        var problems = new ProblemList();
        if (!Directory.Exists(folder))
        {
            problems.Add(FileProblems.NoFolder(folder));
            return new TrialReading(folder, Trial: null, problems.InFileOrder(), []);
        }

        var ranks = new FileRanks(problems);
        ranks.Begin(SettingsReader.FileName);
        var settings = SettingsReader.Read(folder, problems);
        ranks.Begin(PlanReader.FileName);
        var (seed, id) = PlanReader.Read(folder, problems);
        settings = settings with { PlanSeed = seed, PlanId = id };
        ranks.Begin(Workbook.FileName);
        UnusedFiles.Report(folder, settings.WeatherFile, problems);
        var source = new TableSource(folder, problems) { Units = settings.ColumnUnits, Dates = settings.Dates };
        var tables = TrialTables.Read(settings, source, ranks, problems);
        var draft = DraftBuilder.Build(settings, tables);
        new RuleReport(settings, tables, ranks, problems).Add(DesignRules.Check(draft));
        RepeatedWarnings.Fold(problems);
        var trial = problems.Errors == 0 ? StripTrial.FromChecked(draft) : null;
        return new TrialReading(folder, trial, problems.InFileOrder(), tables.Rows);
    }
}
